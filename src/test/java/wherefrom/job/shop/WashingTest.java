package wherefrom.job.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.job.BenchJob;
import wherefrom.job.entry.OffForWashing;
import wherefrom.job.entry.PartLost;
import wherefrom.job.handling.Handling;
import wherefrom.job.handling.HandlingOutcome;
import wherefrom.parts.Whereabouts;

/** Baskets hold parts without tags: a count proves that all came back, never which is which. */
class WashingTest {
  private final BenchJob bench = BenchJob.v8();
  private final Washing washing = new Washing(bench.job);

  private void basket(String... places) {
    for (String place : places) {
      bench.record(new OffForWashing(bench.item(place), 2));
    }
  }

  private Whereabouts where(String place) {
    return bench.job.state().whereabouts(bench.item(place));
  }

  @Test
  void aCountOfTwoPushrodsAsksWhetherTheTagsStayedOnAndRecordsNothing() {
    basket("pushrod@3EX", "pushrod@5EX");
    int entries = bench.job.history().size();
    assertThat(washing.backByCount(2, 2, Optional.empty()))
        .isEqualTo(
            new Washing.Answer.Asked(
                "Did the tags stay on in the wash? A count alone does not tell which pushrod is"
                    + " which."));
    assertThat(bench.job.history()).hasSize(entries);
  }

  @Test
  void withTheirTagsOnTheyAreBack() {
    basket("pushrod@3EX", "pushrod@5EX");
    assertThat(washing.backByCount(2, 2, Optional.of(true)))
        .isInstanceOf(Washing.Answer.Back.class);
    assertThat(where("pushrod@3EX")).isEqualTo(Whereabouts.OUT);
  }

  @Test
  void withoutTagsThoseOfAKindStayUntilTheyAreMeasuredAndTheOthersAreBack() {
    basket("pushrod@3EX", "pushrod@5EX", "rocker@3EX");
    assertThat(washing.backByCount(2, 3, Optional.of(false)).sentence())
        .isEqualTo(
            "All 3 are there, but 2 cannot be told apart without tags. Measure to tell which is"
                + " which.");
    assertThat(where("pushrod@3EX")).isEqualTo(Whereabouts.WASHING);
    assertThat(where("pushrod@5EX")).isEqualTo(Whereabouts.WASHING);
    assertThat(where("rocker@3EX")).isEqualTo(Whereabouts.OUT);
  }

  @Test
  void oneOfEachKindIsToldByItsKind() {
    basket("pushrod@3EX", "rocker@3EX");
    assertThat(washing.backByCount(2, 2, Optional.empty())).isInstanceOf(Washing.Answer.Back.class);
  }

  @Test
  void aWrongCountIsSaidBeforeTheTagsAreAskedFor() {
    basket("pushrod@3EX", "pushrod@5EX");
    assertThat(washing.backByCount(2, 1, Optional.of(true)).sentence())
        .isEqualTo(
            "2 went into basket 2; you counted 1. Count again, or scan each part back; the rest is"
                + " lost.");
  }

  @Test
  void aLostPartInTheHandIsToBeSaidFound() {
    bench.record(new PartLost(bench.item("pushrod@3EX"), ""));
    assertThat(bench.verdict("pushrod@3EX").wayOut()).containsIgnoringCase("say that it is found");
    HandlingOutcome washed = new Handling(bench.job).offForWashing(bench.item("pushrod@3EX"), 1);
    assertThat(((HandlingOutcome.Refused) washed).sentence()).endsWith("say that it is found.");
  }
}
