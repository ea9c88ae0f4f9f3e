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
        .contains("16 rod shells, 0.010 in under (ten under)\tbuy 1 set of 16");
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
  void oneIsMeasuredAndJudgedAndAWrongBoxDoesNotCount() {
    right("shop add JOB --visit 1 --work grind-rods --count 1 --size 2.2300");
    right("shop count JOB --visit 1 --line 1 --pieces 1 --size 2.2299");
    right("limit size JOB --plan rod-journal --size 2.2400 --source manual");
    right("tool add JOB --name ball --step 0.0001 --error 0.0001 --repeat 0.0001");
    right("buy number JOB --what rod_shells --number RS_4421-10");
    String wall = " --by wall --standard 0.0725 --tool ball";
    assertThat(call("buy arrived JOB --number RS4421-20 --pieces 16 --right yes").err())
        .contains("Wrong: no line has number RS4421-20");
    assertThat(right("buy arrived JOB --number rs442110 --pieces 16 --reading 0.0825" + wall).out())
        .contains("Wrong: wall at the crown 0.0825 in, wanted 0.0775 in, within 0.001 in")
        .contains("It measures like 0.020 in under.", "not counted");
    assertThat(call("buy arrived JOB --number RS442110 --pieces 16 --reading 0.0785" + wall).err())
        .contains("Undecided", "--right yes or no");
    assertThat(right("buy arrived JOB --number RS442110 --pieces 16 --reading 0.0776" + wall).out())
        .contains("Right: wall", "16 of 16 here");
    // What was measured and what came are one act.
    right("undo JOB");
    assertThat(right("buy list JOB").out()).contains("0 of 16 here");
    assertThat(
            right(
                    "buy arrived JOB --number RS442110 --pieces 2 --right yes --reading 0.0785"
                        + wall)
                .out())
        .contains("Undecided", "2 of 16 here");
    assertThat(
            call("buy arrived JOB --number RS442110 --pieces 2 --reading 2.23 --by diameter"
                    + " --standard 2.24")
                .err())
        .contains("does not show in its diameter");
  }

  @Test
  void aNoHoldsWhateverWasMeasuredAndHalfAReadingIsRefused() {
    bothToReplace();
    String lifters = "buy arrived JOB --what lifters --pieces 4 ";
    String reading = "--reading 0.842 --standard 0.842 --tolerance 0.003";
    assertThat(right(lifters + "--by diameter --right no " + reading).out())
        .contains("Right: diameter", "not counted");
    assertThat(right("buy list JOB").out()).contains("0 of 16 here");
    assertThat(call(lifters + "--by diameter --right perhaps " + reading).err())
        .contains("yes or no");
    assertThat(call(lifters + "--right yes --reading 0.842").err()).contains("Give --by with");
    assertThat(call(lifters + "--measured fine --by diameter " + reading).err())
        .contains("not both");
    assertThat(call("buy set JOB --holds 3").err()).contains("say of what with --what");
    assertThat(right("buy list JOB").out()).contains("0 of 16 here");
  }

  @Test
  void aNumberIsOfOneLineAndTellsItAgain() {
    bothToReplace();
    right("buy number JOB --what lifters --number 0044-21");
    assertThat(call("buy number JOB --what pushrods --number 4421").err())
        .contains("4421 is the number of 16 lifters already");
    assertThat(right("buy arrived JOB --number 004421 --pieces 16 --right yes").out())
        .contains("16 lifters: 16 of 16 here");
    assertThat(right("buy list JOB --json").out()).contains("\"numbers\":[\"0044-21\"]");
  }

  @Test
  void aPaidGasketSetCoversWhatItHolds() {
    right("big add JOB");
    right("money price JOB --what front_crank_seal --amount 9");
    right("money price JOB --what front_cover_gasket --amount 4");
    openTheFrontCover();
    right("big buy JOB");
    assertThat(right("buy set JOB --what front_crank_seal --holds 1").lines())
        .contains("front crank seal\t1 of 1 in the set", "front cover gasket\t0 of 1 in the set");
    assertThat(right("money list JOB").out()).contains("front crank seal, 9.00");
    assertThat(right("buy list JOB").out()).contains("1 gasket set\t", "1 front crank seal\tbuy 1");
    right("money note JOB --what gasket_set --state paid --amount 60");
    assertThat(right("money list JOB").out())
        .contains("1 × front cover gasket, 4.00")
        .doesNotContain("front crank seal");
    assertThat(right("buy list JOB").out())
        .contains("1 front crank seal\tall here\t0 of 1 here, 1 in the gasket set");
    assertThat(call("buy set JOB --what left_sock --holds 1").err()).contains("No such gasket");
  }

  private void openTheFrontCover() {
    String cover =
        right("big list JOB").rows().stream()
            .filter(row -> row[2].equals("front cover"))
            .map(row -> row[1])
            .findFirst()
            .orElseThrow();
    right("big off JOB --note test " + cover);
  }

  /** A bore that was cut nobody says how far, and seven as they were: two lines without a size. */
  @Test
  void whatComesFillsOneLineAfterTheOther() {
    job = shop.path("pistons");
    shop.right(
        "job",
        "new",
        "--folder",
        job,
        "--layout",
        "v8-odd-even",
        "--name",
        "P",
        "--track",
        "piston");
    right("limit size JOB --plan bore --size 3.8700 --source manual");
    right("plan change JOB bored --where B1");
    right("plan made JOB 1");
    right("decide set JOB piston --as replace --reason scored");
    assertThat(right("buy list JOB").out()).contains("1 piston\tbuy 1", "7 pistons\tbuy 7");
    right("buy arrived JOB --what pistons --pieces 4 --right yes");
    assertThat(right("buy list JOB").out())
        .contains("1 piston\tall here\t1 of 1 here", "7 pistons\tbuy 4\t3 of 7 here");
    right("buy arrived JOB --what pistons --pieces 5 --right yes");
    assertThat(right("buy list JOB").out()).contains("1 of 1 here", "all here\t8 of 7 here");
  }

  @Test
  void sparesAreBoughtOnTop() {
    right("decide set JOB lifter --as replace --reason worn");
    assertThat(right("buy list JOB").out()).doesNotContain("spare");
    right("bag fill JOB --what bolts --count 4 1");
    assertThat(right("buy list JOB").out())
        .contains(
            "cover bolts and washers, each size, to spare\tbuy 2, 2 to spare"
                + " (common practice, no source)");
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
