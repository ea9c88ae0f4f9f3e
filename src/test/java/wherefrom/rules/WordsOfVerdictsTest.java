package wherefrom.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Look;
import wherefrom.parts.Orientation;
import wherefrom.parts.Part;
import wherefrom.parts.Place;

/** What the person is told, and which of two findings counts. */
class WordsOfVerdictsTest {
  private static Place place(String key) {
    return Place.find(key).orElseThrow();
  }

  private static Part part(int item, String home, boolean fresh) {
    return new Part(item, place(home), 1, 1, fresh);
  }

  @Test
  void aTagThatIsNoneOfOursSaysWhatToScan() {
    CodeVerdict ours = new CodeVerdict.NotOneOfOurs("1123456701730142", true);
    CodeVerdict other = new CodeVerdict.NotOneOfOurs("5901234", false);
    assertThat(ours.sentence())
        .isEqualTo("The digits agree, but no such tag was issued for this job.");
    assertThat(ours.wayOut()).startsWith("Is the right job open?");
    assertThat(other.sentence()).isEqualTo("This is not one of our tags.");
    assertThat(other.wayOut()).isEqualTo("Scan the tag with the black frame.");
    assertThat(other.cue()).isEqualTo(Cue.ASK);
  }

  @Test
  void aTypedCodeThatFitsTwoEnginesShowsWhatItMeans() {
    Map<String, String> here = Map.of("1123456701730142", "pushrod from 3 EX");
    CodeVerdict two = new CodeVerdict.AlsoFits("0173 42", here, List.of("Barn V8", "Six"));
    assertThat(two.word()).isEqualTo("which engine");
    assertThat(two.sentence())
        .isEqualTo("Typed 0173 42 is pushrod from 3 EX; it also fits job Barn V8, Six.");
    assertThat(two.wayOut()).isEqualTo("Scan the tag, or confirm it is this engine's.");
    CodeVerdict one = new CodeVerdict.AlsoFits("0173 42", here, List.of());
    assertThat(one.sentence()).isEqualTo("Typed 0173 42 is pushrod from 3 EX.");
    assertThat(one.wayOut()).isEqualTo("Scan the tag, or type its sixteen digits.");
  }

  @Test
  void aWrongMateIsToldWhomItBelongsWithAndWhoIsHere() {
    Part cap = part(9, "rod-cap@R3L", false);
    Part own = part(3, "rod@R3U", false);
    Optional<Part> old = Optional.of(part(5, "rod@R5U", false));
    Optional<Part> fresh = Optional.of(part(80, "rod@R5U", true));
    Place at = place("rod-cap@R5L");
    assertThat(new Misplaced.WrongMate(cap, at, own, old, Optional.empty()).sentence())
        .endsWith("it belongs with the rod from cylinder 3. The rod from cylinder 5 is here.");
    assertThat(new Misplaced.WrongMate(cap, at, own, fresh, Optional.empty()).sentence())
        .endsWith("The new rod for cylinder 5 is here.");
    assertThat(new Misplaced.WrongMate(cap, at, own, Optional.empty(), Optional.empty()).sentence())
        .endsWith("it belongs with the rod from cylinder 3, which was replaced.");
  }

  @Test
  void alreadyFittedIsDoneHereAndAStopElsewhere() {
    Part pushrod = part(9, "pushrod@3EX", false);
    Verdict here = new Verdict.AlreadyFitted(pushrod, place("pushrod@3EX"), place("pushrod@3EX"));
    Verdict elsewhere =
        new Verdict.AlreadyFitted(pushrod, place("pushrod@5EX"), place("pushrod@3EX"));
    assertThat(here.sentence()).startsWith("Already done: ");
    assertThat(here.wayOut()).isEmpty();
    assertThat(here.stops()).isFalse();
    assertThat(elsewhere.sentence()).startsWith("It is already fitted at cylinder 3, exhaust");
    assertThat(elsewhere.wayOut()).isEqualTo("Take it out there first, then scan it again.");
    assertThat(elsewhere.stops()).isTrue();
  }

  /** The worse of two findings counts, whenever it was made; since the later of two doubts. */
  @Test
  void theWorseFindingCountsSinceTheLaterDoubt() {
    Evidence suspect = new Evidence(Look.SUSPECT, 5);
    Evidence failed = new Evidence(Look.FAIL, 3);
    Evidence again = new Evidence(Look.SUSPECT, 8);
    Evidence failedThenDoubted = new Evidence(Look.FAIL, 5);
    assertThat(suspect.or(failed)).isEqualTo(failedThenDoubted);
    assertThat(failed.or(suspect)).isEqualTo(failedThenDoubted);
    assertThat(failed.or(new Evidence(Look.PASS, 9))).isEqualTo(failed);
    assertThat(suspect.or(again)).isEqualTo(again);
    assertThat(again.or(suspect)).isEqualTo(again);
    assertThat(Evidence.NONE.or(suspect)).isEqualTo(suspect);
    assertThat(Look.values()).containsExactly(Look.NOT_LOOKED, Look.PASS, Look.SUSPECT, Look.FAIL);
    assertThat(new Evidence(Look.PASS, 9).isDoubtful()).isFalse();
    assertThat(suspect.isDoubtful()).isTrue();
  }

  @Test
  void everyStopSaysWhatIsWrongAndWhatToDo() {
    Part shell = part(60, "rod-shell@R3U", false);
    Part other = part(61, "rod-shell@R3L", false);
    Part pushrod = part(9, "pushrod@3EX", false);
    Place lower = place("rod-shell@R3L");
    Verdict kind =
        new Misplaced.WrongKind(pushrod, lower.spot(), Optional.empty(), Optional.empty());
    assertThat(kind.sentence())
        .isEqualTo("This is a pushrod from 3 EX. No pushrod belongs at rod 3, lower.");
    assertThat(kind.wayOut()).isEqualTo("It belongs at cylinder 3, exhaust, pushrod.");
    Verdict half = new Misplaced.WrongHalf(shell, lower, Optional.of(other));
    assertThat(half.sentence()).endsWith("Upper and lower shells are never exchanged.");
    assertThat(half.wayOut()).isEqualTo("The right part is number 0061.");
    Verdict end = new Misplaced.WrongEnd(pushrod, place("pushrod@3EX"), Orientation.TOP_END);
    assertThat(end.sentence()).endsWith("It is turned: " + Orientation.TOP_END.mark() + ".");
    assertThat(end.wayOut()).isEqualTo("Turn it round, then scan it again.");
    Ban ban = new Ban("R25", "Fit a new pushrod.", "common practice, no source", 7, "");
    StandsAgainst must = new Verdict.MustBeNew(pushrod, place("pushrod@3EX"), ban);
    assertThat(must.wayOut()).isEqualTo("Replace it with a new pushrod and print its tag.");
    Verdict but = new Verdict.FittedBut(pushrod, place("pushrod@3EX"), must, true);
    assertThat(but.sentence()).isEqualTo("It is fitted, but: " + must.sentence());
    assertThat(but.wayOut()).isEqualTo("Take it out, or say why it stays. " + must.wayOut());
    assertThat(new Verdict.FittedBut(pushrod, place("pushrod@3EX"), must, false).wayOut())
        .isEqualTo("Take it out. " + must.wayOut());
    assertThat(new Verdict.RightPlace(pushrod, place("pushrod@3EX"), "").sentence())
        .isEqualTo("Cylinder 3, exhaust, pushrod: this is where it belongs.");
  }

  /** A new part of the wrong size is no old one. */
  @Test
  void aNewPartThatDoesNotFitIsNotCalledTheOldOne() {
    Place here = place("rod-shell@R3U");
    Ban ban = new Ban("R16", "The journal is 0.010 under, the shell 0.020.", "own example", 7, "");
    Verdict old = new Verdict.MustBeNew(part(9, "rod-shell@R3U", false), here, ban);
    Verdict fresh = new Verdict.MustBeNew(part(80, "rod-shell@R3U", true), here, ban);
    assertThat(old.words(PartNames.NUMBERS).lines()).contains("You hold: the old one");
    assertThat(fresh.words(PartNames.NUMBERS).lines())
        .contains("You hold: a new rod shell", "Wanted: another one")
        .noneMatch(line -> line.contains("the old one"));
    assertThat(fresh.wayOut())
        .isEqualTo("Replace it with another new rod shell and print its tag.");
    assertThat(fresh.sentence())
        .isEqualTo("The journal is 0.010 under, the shell 0.020 (rule 16; own example).");
  }

  /** Where the one that sits there is at home, the part in the hand is the wrong one. */
  @Test
  void aTakenPlaceSaysWhichOfTheTwoIsWrong() {
    Place here = place("pushrod@3EX");
    Part home = part(9, "pushrod@3EX", false);
    Part other = part(11, "pushrod@5EX", false);
    assertThat(new Verdict.PlaceTaken(other, here, home).wayOut())
        .startsWith("Nothing is wrong with the one that is fitted.");
    assertThat(new Verdict.PlaceTaken(home, here, other).wayOut())
        .isEqualTo("Take out what is fitted here first.");
  }

  @Test
  void whatCannotBeReadIsNotGuessed() {
    CodeVerdict digits = new CodeVerdict.DigitsDisagree("1123456701730143");
    assertThat(digits.sentence()).isEqualTo("1123456701730143: check digits wrong.");
    assertThat(digits.wayOut()).startsWith("Scan it again");
  }
}
