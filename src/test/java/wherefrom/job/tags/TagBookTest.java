package wherefrom.job.tags;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wherefrom.job.BenchJob;
import wherefrom.job.Benches;
import wherefrom.job.JobPartNames;
import wherefrom.job.OpenJob;
import wherefrom.job.decide.Deciding;
import wherefrom.job.entry.OffForWashing;
import wherefrom.job.entry.TagReissued;
import wherefrom.job.handling.Handling;
import wherefrom.job.handling.HandlingOutcome;
import wherefrom.job.puttogether.Fitting;
import wherefrom.job.puttogether.WhereTo;
import wherefrom.parts.Action;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;
import wherefrom.rules.CodeVerdict;
import wherefrom.rules.Verdict;
import wherefrom.rules.VerdictWords;

/** What a code stands for, scanned or typed, and where a part is said to go. */
class TagBookTest {
  private final OpenJob job = Benches.apart();
  private final Part pushrod = Benches.part(job, "pushrod@3EX");

  /** Another job on the shelf that has every typed code, too. */
  private static final JobNames TWIN =
      new JobNames() {
        @Override
        public Optional<String> find(int engine) {
          return Optional.of("Six");
        }

        @Override
        public List<String> listTyped(String digits, int engine) {
          return List.of("Six");
        }
      };

  private TagBook book() {
    return new TagBook(job.state(), Benches.NO_NAMES);
  }

  private static Verdict refused(CodeLookup found) {
    return ((CodeLookup.Refused) found).verdict();
  }

  /** Baskets are numbered from 1: whatever its check digits, no typed code is of basket 0. */
  @Test
  void thereIsNoBasketZero() {
    TagBook book = book();
    for (int check = 0; check < 100; check++) {
      String typed = String.format(java.util.Locale.ROOT, "0000%02d", check);
      assertThat(book.find(typed)).as(typed).isInstanceOf(CodeLookup.Refused.class);
    }
    assertThat(book.find(book.basket(1).typed())).isEqualTo(new CodeLookup.ABasket(1));
  }

  /** A V8 of the usual kinds: 74 parts, 42 places, six actions, twenty baskets. */
  @Test
  void everythingThatCanHangOnTheBenchIsListed() {
    assertThat(book().issued()).hasSize(74 + 42 + 6 + 20).doesNotHaveDuplicates();
    job.record(new TagReissued(pushrod.item(), 2, "tag lost"));
    assertThat(book().issued()).hasSize(75 + 42 + 6 + 20);
    assertThat(book().spots()).hasSize(42);
  }

  @Test
  void whatIsTypedIsWhatIsScanned() {
    TagBook book = book();
    for (TagCode code : book.issued()) {
      CodeLookup typed = book.find(code.typed());
      if (code.type() == TagType.ACTION_CARD) {
        assertThat(refused(typed)).isInstanceOf(CodeVerdict.TypedCard.class);
      } else if (typed instanceof CodeLookup.Refused) {
        assertThat(code.type()).isNotEqualTo(TagType.PART);
        assertThat(((CodeVerdict.AlsoFits) refused(typed)).here()).containsOnlyKeys(code.digits());
      } else {
        assertThat(typed).as(code.digits()).isEqualTo(book.find(code.digits()));
      }
    }
    assertThat(book.find(book.basket(25).typed())).isEqualTo(new CodeLookup.ABasket(25));
    assertThat(book.find(book.of(Benches.spot("3EX")).typed()).words())
        .isEqualTo("place card: cylinder 3, exhaust");
  }

  @Test
  void whatNobodyIssuedIsNotTakenForTheNextThing() {
    TagBook book = book();
    String typed = book.of(pushrod).typed();
    String wrong = typed.substring(0, 5) + (typed.endsWith("00") ? "01" : "00");
    assertThat(refused(book.find(wrong))).isInstanceOf(CodeVerdict.DigitsDisagree.class);
    assertThat(refused(book.find("000000"))).isInstanceOf(CodeVerdict.DigitsDisagree.class);
    TagCode unknown = new TagCode(TagType.PART, Benches.ENGINE, 4000, 1);
    assertThat(refused(book.find(unknown))).isInstanceOf(CodeVerdict.NotOneOfOurs.class);
    TagCode later = new TagCode(TagType.PART, Benches.ENGINE, pushrod.item(), 2);
    assertThat(refused(book.find(later))).isInstanceOf(CodeVerdict.NotOneOfOurs.class);
    TagCode card = new TagCode(TagType.PLACE_CARD, Benches.ENGINE, 43 + 13, 1);
    assertThat(refused(book.find(card))).isInstanceOf(CodeVerdict.NotOneOfOurs.class);
    TagCode action = new TagCode(TagType.ACTION_CARD, Benches.ENGINE, 1, 1);
    assertThat(refused(book.find(action))).isInstanceOf(CodeVerdict.NotOneOfOurs.class);
    assertThat(book.find(Action.UNDO.code())).isEqualTo(new CodeLookup.AnAction(Action.UNDO));
  }

  @Test
  void aTypedCodeThatAnotherJobHasTooShowsWhatItMeansHereAndAsks() {
    TagBook twin = new TagBook(job.state(), TWIN);
    CodeVerdict.AlsoFits asks = (CodeVerdict.AlsoFits) refused(twin.find(twin.of(pushrod).typed()));
    assertThat(asks.others()).containsExactly("Six");
    assertThat(asks.here())
        .containsOnlyKeys(twin.of(pushrod).digits())
        .containsValue(pushrod.words());
    assertThat(twin.find(twin.of(pushrod).digits())).isInstanceOf(CodeLookup.APart.class);
  }

  /** What stands for nothing here is no question, whatever another job has. */
  @Test
  void anOldTagIsOldWhateverAnotherJobHas() {
    String old = book().of(pushrod).typed();
    job.record(new TagReissued(pushrod.item(), 2, "tag torn"));
    TagBook twin = new TagBook(job.state(), TWIN);
    assertThat(refused(twin.find(old))).isInstanceOf(Verdict.Retired.class);
    assertThat(refused(twin.find("000000"))).isInstanceOf(CodeVerdict.DigitsDisagree.class);
    VerdictWords words = refused(book().find(old)).words(new JobPartNames(job.state()));
    assertThat(words.advice()).contains(book().of(Benches.part(job, "pushrod@3EX")).typed());
  }

  @Test
  void theTypedCodesOfAJobAreThoseThatAreItsOwn() {
    Set<String> typed = book().typed();
    assertThat(typed)
        .contains(book().of(pushrod).typed().replace(" ", ""))
        .contains(book().basket(20).typed().replace(" ", ""))
        .allMatch(code -> code.matches("[0-9]{6}"))
        .doesNotContain(Action.UNDO.code().typed().replace(" ", ""));
  }

  @Test
  void aPartSaysWhereItBelongsAndWhereItIs() {
    assertThat(where("pushrod@3EX"))
        .isEqualTo("It belongs at cylinder 3, exhaust, pushrod. It is out, on the bench.");
    job.record(new OffForWashing(pushrod.item(), 4));
    assertThat(where("pushrod@3EX")).endsWith("It is off for washing (basket 4).");
    fit("pushrod@1IN", "1IN");
    assertThat(where("pushrod@1IN")).endsWith("It is fitted.");
    new Fitting(job).fitOnPurpose(Benches.part(job, "pushrod@5IN"), Benches.spot("7IN"), "better");
    assertThat(where("pushrod@5IN"))
        .endsWith("It is fitted elsewhere: cylinder 7, intake, pushrod.");
    new Handling(job).replace(Benches.part(job, "lifter@3EX").item(), "worn out");
    assertThat(where("lifter@3EX"))
        .startsWith("It is new, for cylinder 3, exhaust, lifter or another place that waits");
  }

  @Test
  void aCapSaysWithWhichRodItGoes() {
    OpenJob all = BenchJob.v8().job;
    new Fitting(all).fitOnPurpose(Benches.part(all, "rod@R3U"), Benches.spot("R5U"), "weight");
    assertThat(WhereTo.words(all.state(), Benches.part(all, "rod-cap@R3L")))
        .startsWith("It belongs at rod 5, cap, with rod 3.");
  }

  @Test
  void aSpotSaysWhatBelongsThereAndWhereThatIs() {
    fit("pushrod@3EX", "3EX");
    assertThat(WhereTo.words(job.state(), Benches.spot("3EX")))
        .matches(
            "cylinder 3, exhaust, rocker: number \\d{4}, out;"
                + " cylinder 3, exhaust, pushrod: number \\d{4}, fitted;"
                + " cylinder 3, exhaust, lifter: number \\d{4}, out\\.");
    assertThat(WhereTo.words(job.state(), Benches.spot("B3")))
        .startsWith("Nothing is tracked at cylinder 3");
  }

  private void fit(String part, String spot) {
    new Fitting(job).fit(Benches.part(job, part), Benches.spot(spot), false);
  }

  private String where(String place) {
    return WhereTo.words(job.state(), Benches.part(job, place));
  }

  @Test
  void theFirstAndTheLastOfWhatIsCountedAreTaken() {
    Handling handling = new Handling(job);
    int item = pushrod.item();
    for (int pieces : new int[] {1, 99}) {
      assertThat(handling.pieces(item, pieces)).isInstanceOf(HandlingOutcome.Logged.class);
    }
    for (int pieces : new int[] {0, 100}) {
      assertThat(handling.pieces(item, pieces)).isInstanceOf(HandlingOutcome.Refused.class);
    }
    assertThat(handling.offForWashing(item, 0)).isInstanceOf(HandlingOutcome.Refused.class);
    assertThat(handling.offForWashing(item, 10_000)).isInstanceOf(HandlingOutcome.Refused.class);
    assertThat(handling.offForWashing(item, 9_999)).isInstanceOf(HandlingOutcome.Logged.class);
    job.record(new TagReissued(item, 98, "tag torn"));
    assertThat(handling.reissue(item, "tag torn")).isInstanceOf(HandlingOutcome.Logged.class);
    assertThat(handling.reissue(item, "tag torn")).isInstanceOf(HandlingOutcome.Refused.class);
  }

  @Test
  void theUndecidedAreThoseThatSomethingSpeaksAgainst() {
    Deciding deciding = new Deciding(job);
    int used = job.state().parts().size();
    assertThat(deciding.listWithoutDecision()).hasSize(used);
    assertThat(deciding.isWanted(pushrod.item())).isFalse();
    deciding.askEveryPart(true);
    assertThat(deciding.isWanted(pushrod.item())).isTrue();
    deciding.decide(pushrod.item(), wherefrom.inspection.Decision.REUSE, "straight");
    new Handling(job).replace(Benches.part(job, "lifter@3EX").item(), "worn out");
    assertThat(deciding.isWanted(pushrod.item())).isFalse();
    assertThat(deciding.listWithoutDecision())
        .hasSize(used - 2)
        .noneMatch(Part::fresh)
        .noneMatch(part -> part.equals(pushrod));
    assertThat(job.state().kinds()).isEqualTo(PartKind.alwaysOn());
    assertThat(deciding.listUndecided()).extracting(Part::home).doesNotContain(place());
  }

  private static Place place() {
    return Benches.place("pushrod@3EX");
  }
}
