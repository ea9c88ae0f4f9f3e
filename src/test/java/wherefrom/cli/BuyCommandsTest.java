package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sets, spares, offers and what came, as a script sees them. */
class BuyCommandsTest {
  @TempDir Path folder;
  private Shop shop;
  private String job;

  @BeforeEach
  void begin() {
    shop = new Shop(folder);
    job = shop.begin("engine");
    right("money budget JOB --amount 500 --currency EUR");
  }

  private Shop.Outcome right(String words) {
    Shop.Outcome outcome = call(words);
    assertThat(outcome.status()).as(words + ": " + outcome.err()).isZero();
    return outcome;
  }

  private Shop.Outcome call(String words) {
    String[] each = words.replace("JOB", "--job " + job).split(" ");
    for (int at = 0; at < each.length; at++) {
      each[at] = each[at].replace('_', ' ');
    }
    return shop.run(each);
  }

  private void bothToReplace() {
    right("decide set JOB lifter --as replace --reason worn");
    right("decide set JOB pushrod --as replace --reason bent");
  }

  @Test
  void twoOffersAreSummedInWholePackagesAndSayWhatTheyLack() {
    bothToReplace();
    right("buy offer JOB --supplier Northside --what lifters --holds 12 --amount 60.50");
    right("buy offer JOB --supplier Harbor --what lifters --amount 6");
    right("buy offer JOB --supplier Harbor --what pushrods --holds 16 --amount 90");
    // 16 lifters in boxes of 12 are two boxes: 121.00; one by one 16 · 6 + 90 = 186.00
    assertThat(right("buy compare JOB --supplier northside").out())
        .contains("2 × 12", "121.00 EUR", "lacks\t16 pushrods");
    assertThat(right("buy compare JOB --supplier Harbor").out())
        .contains("sum\t\t\t186.00 EUR", "lacks\tnothing");
    right("buy offer JOB --supplier NORTHSIDE --what lifters --holds 16 --amount 70");
    assertThat(right("buy compare JOB --json").out())
        .contains("\"sum\":\"70.00\"", "\"sum\":\"186.00\"")
        .doesNotContain("121.00");
  }

  @Test
  void whatCameIsCountedAndWhatIsWrongIsNot() {
    bothToReplace();
    right("buy offer JOB --supplier Harbor --what lifters --amount 6");
    assertThat(right("buy arrived JOB --what lifters --pieces 4 --right no").out())
        .contains("not counted");
    assertThat(right("buy arrived JOB --what lifters --pieces 10 --right yes").out())
        .contains("10 of 16 here");
    assertThat(right("buy compare JOB").out()).contains("36.00 EUR");
    right("buy arrived JOB --what lifters --pieces 6 --right yes");
    assertThat(right("buy list JOB").out()).contains("16 lifters\tall here\t16 of 16 here");
    right("undo JOB");
    assertThat(right("buy list JOB").out()).contains("10 of 16 here");
  }

  @Test
  void shellsOfASizeAreMeasuredBeforeTheyCount() {
    right("shop add JOB --visit 1 --work grind-rods --count 1 --size 2.2300");
    right("shop count JOB --visit 1 --line 1 --pieces 1 --size 2.2299");
    right("limit size JOB --plan rod-journal --size 2.2400 --source manual");
    assertThat(right("buy list JOB").out())
        .contains("16 rod shells, 0.010 in under (ten under)\tbuy 1 × a set of 16");
    assertThat(call("buy arrived JOB --what rod_shells --pieces 16 --right yes").err())
        .contains("Measure one");
    assertThat(
            right("buy arrived JOB --what rod_shells --pieces 16 --measured ten --right yes").out())
        .contains("16 of 16 here");
    // Ground again, another size is asked for; what came no longer fits the list.
    right("shop add JOB --visit 1 --work grind-rods --count 1 --size 2.2200");
    right("shop count JOB --visit 1 --line 2 --pieces 1 --size 2.2199");
    assertThat(right("buy list JOB").out()).contains("0.020 in under").contains("0 of 16 here");
  }

  @Test
  void whatIsNotOnTheListOrNoAmountIsRefused() {
    assertThat(call("buy arrived JOB --what lifters --pieces 1 --right yes").err())
        .contains("not on the list");
    assertThat(call("buy offer JOB --supplier Harbor --what lifters --amount many").err())
        .contains("not an amount");
    bothToReplace();
    assertThat(call("buy arrived JOB --what lifters --pieces 1 --right perhaps").err())
        .contains("yes or no");
    assertThat(right("buy compare JOB").out()).isEmpty();
  }

  @Test
  void gasketsOnTheListAreInTheSumOnce() {
    right("big add JOB");
    right("money price JOB --what front_crank_seal --amount 9");
    right("money price JOB --what front_cover_gasket --amount 4");
    assertThat(right("money list JOB").out()).contains("Total 0.00 EUR");
    Shop.Outcome listed = right("big list JOB");
    String cover =
        listed.rows().stream()
            .filter(row -> row[2].equals("front cover"))
            .map(row -> row[1])
            .findFirst()
            .orElseThrow();
    right("big off JOB --note test " + cover);
    right("big buy JOB");
    assertThat(right("money list JOB").out())
        .contains("1 × front crank seal, 9.00 (always new)", "1 × front cover gasket, 4.00");
  }
}
