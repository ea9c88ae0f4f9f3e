package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.job.change.Planning;
import wherefrom.rules.VerdictName;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;

/** Every verdict that a call can be answered with. */
class FitVerdictsTest {
  private static final String PUSHROD = "cylinder 3, exhaust, pushrod";
  private static final String OTHER = "cylinder 5, exhaust, pushrod";

  @TempDir Path folder;
  private Shop shop;
  private String job;

  @BeforeEach
  void takeApart() {
    shop = new Shop(folder);
    job = shop.begin("engine");
    shop.takeApart(job);
  }

  private String tag(String place) {
    return shop.codes(job, place).tag();
  }

  private String card(String place) {
    return shop.codes(job, place).card();
  }

  private Shop.Outcome fit(String part, String place, String... more) {
    String[] words = new String[5 + more.length];
    System.arraycopy(new String[] {"fit", "--job", job, part, place}, 0, words, 0, 5);
    System.arraycopy(more, 0, words, 5, more.length);
    return shop.run(words);
  }

  private static void assertVerdict(Shop.Outcome outcome, String word, int status) {
    assertThat(outcome.lines().get(0)).isEqualTo(word);
    assertThat(outcome.lines().get(1)).endsWith(".");
    assertThat(outcome.status()).isEqualTo(status);
  }

  private void assertStopped(Shop.Outcome outcome, String word) {
    assertVerdict(outcome, word, 1);
  }

  @Test
  void rightPlace() {
    assertVerdict(fit(tag(PUSHROD), card(PUSHROD)), "right place", 0);
    assertThat(shop.state(job, PUSHROD)).isEqualTo("fitted");
  }

  @Test
  void theCardMayComeFirst() {
    assertVerdict(fit(card(PUSHROD), tag(PUSHROD)), "right place", 0);
  }

  @Test
  void typedCodesServeToo() {
    String part = tag(PUSHROD).substring(8, 12) + " " + tag(PUSHROD).substring(14);
    String place = card(PUSHROD).substring(8, 12) + card(PUSHROD).substring(14);
    assertVerdict(fit(part, place), "right place", 0);
  }

  @Test
  void otherPlace() {
    Shop.Outcome stopped = fit(tag(OTHER), card(PUSHROD));
    assertStopped(stopped, "wrong place");
    assertThat(stopped.lines().get(1))
        .isEqualTo(
            "This came from cylinder 5, exhaust, pushrod. You are at cylinder 3, exhaust, pushrod."
                + " The right part is "
                + tag(PUSHROD).substring(8, 12)
                + " "
                + tag(PUSHROD).substring(14)
                + ". Or put this one at 5 EX: scan that card.");
    assertThat(shop.state(job, PUSHROD)).isEqualTo("out");
  }

  @Test
  void wrongKind() {
    assertStopped(fit(tag("rod 3, upper shell"), card("main 2, upper shell")), "wrong kind");
  }

  @Test
  void wrongHalf() {
    assertStopped(fit(tag("rod 3, upper shell"), card("rod 3, lower shell")), "wrong half");
  }

  @Test
  void wrongEnd() {
    assertStopped(fit(tag(PUSHROD), card(PUSHROD), "--turned"), "wrong end");
    assertThat(shop.state(job, PUSHROD)).isEqualTo("out");
  }

  @Test
  void placeTaken() {
    fit(tag(PUSHROD), card(PUSHROD));
    assertStopped(fit(tag(OTHER), card(PUSHROD)), "place taken");
  }

  @Test
  void alreadyFittedHereIsNoAlarmAndElsewhereIsAStop() {
    fit(tag(PUSHROD), card(PUSHROD));
    assertVerdict(fit(tag(PUSHROD), card(PUSHROD)), "already fitted", 0);
    assertStopped(fit(tag(PUSHROD), card(OTHER)), "already fitted");
  }

  @Test
  void notClearedWhileAway() {
    shop.right("wash", "--job", job, "--basket", "2", tag(PUSHROD));
    assertStopped(fit(tag(PUSHROD), card(PUSHROD)), "not cleared");
    shop.right("back", "--job", job, tag(PUSHROD));
    assertVerdict(fit(tag(PUSHROD), card(PUSHROD)), "right place", 0);
  }

  @Test
  void mustBeNew() {
    shop.change(job, open -> new Planning(open).make(Change.of(ChangeKind.NEW_FLAT_CAM)));
    String lifter = "cylinder 3, exhaust, lifter";
    assertStopped(fit(tag(lifter), card(lifter)), "must be new");
  }

  @Test
  void retiredAfterReplacingAndTheNewPartIsRight() {
    String old = tag(PUSHROD);
    shop.right("replace", "--job", job, "--reason", "worn out", old);
    assertStopped(fit(old, card(PUSHROD)), "retired");
    assertVerdict(fit(tag(PUSHROD), card(PUSHROD)), "right place", 0);
  }

  @Test
  void retiredWhenTheTagWasPrintedAnew() {
    String old = tag(PUSHROD);
    String fresh =
        shop.right("reprint", "--job", job, "--reason", "tag torn", old).rows().get(0)[0];
    assertStopped(fit(old, card(PUSHROD)), "retired");
    assertVerdict(fit(fresh, card(PUSHROD)), "right place", 0);
  }

  @Test
  void otherEngineByItsName() {
    String other = shop.begin("neighbor");
    Shop.Outcome stopped = fit(shop.codes(other, PUSHROD).tag(), card(PUSHROD));
    assertStopped(stopped, "wrong engine");
    assertThat(stopped.out()).contains("neighbor");
  }

  @Test
  void notOneOfOurs() {
    assertStopped(fit("https://example.org", card(PUSHROD)), "not one of ours");
  }

  @Test
  void digitsDoNotAgree() {
    String tag = tag(PUSHROD);
    char last = tag.charAt(15);
    String wrong = tag.substring(0, 15) + (last == '9' ? '0' : (char) (last + 1));
    assertStopped(fit(wrong, card(PUSHROD)), "digits do not agree");
  }

  @Test
  void onPurposeIsAlwaysPossibleAndRecorded() {
    Shop.Outcome fitted = fit(tag(OTHER), card(PUSHROD), "--on-purpose", "measured better here");
    assertVerdict(fitted, "fitted on purpose", 0);
    assertThat(shop.state(job, PUSHROD)).isEqualTo("other part fitted");
    shop.change(
        job,
        open ->
            assertThat(open.state().onPurpose())
                .singleElement()
                .satisfies(
                    fit -> {
                      assertThat(fit.onPurpose()).isEqualTo("measured better here");
                      assertThat(fit.against()).contains(VerdictName.WRONG_PLACE);
                    }));
  }

  @Test
  void onPurposeNamesTheMatesOfBothPlacesAndLeavesTheRobbedPlaceMissing() {
    Shop.Outcome fitted = fit(tag(OTHER), card(PUSHROD), "--on-purpose", "matched pair", "--json");
    assertThat(fitted.out())
        .contains("No longer mated at 3 EX and 5 EX: pushrod, rocker, lifter. 5 EX is open.")
        .contains("\"noLongerMated\"")
        .contains("\"cylinder 3, exhaust, rocker\"", "\"cylinder 5, exhaust, lifter\"")
        .doesNotContain("\"cylinder 3, intake, rocker\"");
    assertThat(shop.state(job, OTHER)).isEqualTo("open");
    assertThat(shop.right("to-fit", "--job", job).rows())
        .anySatisfy(row -> assertThat(row).startsWith(OTHER, "open"))
        .noneSatisfy(row -> assertThat(row[0]).isEqualTo(PUSHROD));
  }

  @Test
  void aPartOfAnotherKindCannotBeMeant() {
    Shop.Outcome refused = fit(tag("rod 3, upper shell"), card(PUSHROD), "--on-purpose", "just so");
    assertThat(refused.status()).isEqualTo(2);
    assertThat(refused.err()).contains("cannot be fitted at");
  }

  @Test
  void whatMustBeNewOrIsRetiredIsFittedForNoReason() {
    String old = tag(PUSHROD);
    shop.right("replace", "--job", job, "--reason", "bent", old);
    Shop.Outcome refused = fit(old, card(PUSHROD), "--on-purpose", "just so");
    assertThat(refused.status()).isEqualTo(2);
    assertThat(refused.err()).contains("never fitted on purpose");
    assertThat(shop.state(job, PUSHROD)).isEqualTo("out");
  }

  @Test
  void turnedOnPurposeItIsFittedButAndTheLogbookSaysSo() {
    Shop.Outcome fitted =
        fit(tag(PUSHROD), card(PUSHROD), "--turned", "--on-purpose", "both ends alike");
    assertVerdict(fitted, "fitted on purpose", 0);
    assertThat(shop.state(job, PUSHROD)).isEqualTo("fitted, but");
    shop.change(
        job,
        open ->
            assertThat(open.state().onPurpose())
                .singleElement()
                .satisfies(fit -> assertThat(fit.against()).contains(VerdictName.WRONG_END)));
  }

  @Test
  void aStopIsTakenBackBeforeAllElseAndThenTheFits() {
    fit(tag(PUSHROD), card(PUSHROD));
    fit(tag("rod 3, upper shell"), card("rod 3, lower shell"));
    assertThat(shop.right("undo", "--job", job).out()).contains("wrong half");
    assertThat(shop.right("undo", "--job", job).out()).contains("fitted at");
    assertThat(shop.state(job, PUSHROD)).isEqualTo("out");
  }

  @Test
  void swappedPartsAreLedHomeByTheShortestWay() {
    fit(tag(OTHER), card(PUSHROD), "--on-purpose", "by mistake");
    fit(tag(PUSHROD), card(OTHER), "--on-purpose", "by mistake");
    assertThat(shop.right("swaps", "--job", job).out())
        .contains("out of 3 EX: it belongs at 5 EX.", "out of 5 EX: it belongs at 3 EX.");
  }

  @Test
  void manyPairsAreJudgedInOneCall() {
    String pairs =
        shop.right("places", "--job", job).rows().stream()
            .map(row -> row[1] + "\t" + row[0])
            .collect(Collectors.joining("\n"));
    Shop.Outcome fitted = shop.runWith(pairs, "fit", "--job", job, "-");
    assertThat(fitted.status()).isZero();
    assertThat(fitted.lines()).filteredOn("right place"::equals).hasSize(74);
    assertThat(shop.right("to-fit", "--job", job).lines()).containsExactly("0 to fit");
  }

  @Test
  void oneStopAmongManyPairsStopsTheCallAndTheOthersAreFitted() {
    String pairs =
        String.join(
            "\n",
            tag(PUSHROD) + " " + card(PUSHROD),
            tag("rod 3, upper shell") + " " + card("rod 3, lower shell"),
            tag(OTHER) + " " + card(OTHER));
    assertThat(shop.runWith(pairs, "fit", "--job", job, "-").status()).isEqualTo(1);
    assertThat(shop.state(job, PUSHROD)).isEqualTo("fitted");
    assertThat(shop.state(job, OTHER)).isEqualTo("fitted");
    assertThat(shop.right("to-fit", "--job", job).lines()).last().isEqualTo("72 to fit");
  }

  @Test
  void aLineThatIsNoPairIsSaidByItsNumberAndTheOthersAreTaken() {
    String pairs = tag(PUSHROD) + "\n\n" + tag(OTHER) + " " + card(OTHER) + "\n";
    Shop.Outcome outcome = shop.runWith(pairs, "fit", "--job", job, "-");
    assertThat(outcome.status()).isEqualTo(2);
    assertThat(outcome.err()).startsWith("Line 1: ");
    assertThat(shop.state(job, OTHER)).isEqualTo("fitted");
  }
}
