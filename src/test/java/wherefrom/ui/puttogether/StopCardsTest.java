package wherefrom.ui.puttogether;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wherefrom.job.LoggedEntry;
import wherefrom.job.entry.PartFitted;
import wherefrom.parts.Action;
import wherefrom.ui.Toolkit;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/**
 * What the action cards do on a stop: they work its keys and nothing else, so that no stop is
 * overruled but by its own key, a reason that is led to, and a key to be held that is led to.
 */
class StopCardsTest {
  /** The tags by which what stands in the way is out. */
  private static final Set<String> OUT = Set.of("Taken out there", "That one is out");

  private static final List<Action> CARDS = List.of(Action.NEXT, Action.YES, Action.SKIP);
  private static final int LENGTH = 4;

  /** The shortest way: to the key, into the reasons, to one of them, to the key to be held. */
  private static final List<Action> SHORTEST =
      List.of(
          Action.NEXT,
          Action.NEXT,
          Action.YES,
          Action.NEXT,
          Action.YES,
          Action.NEXT,
          Action.NEXT,
          Action.YES,
          Action.YES);

  static Stream<EveryStopLeadsOutTest.Row> stops() {
    return Stream.concat(EveryStopLeadsOutTest.scans(), EveryStopLeadsOutTest.deeds());
  }

  /** All of four cards; a SKIP at either end is left out: what it leads to is the fresh stop. */
  private static List<List<Action>> sequences() {
    List<List<Action>> all = new ArrayList<>(List.of(List.of()));
    for (int at = 0; at < LENGTH; at++) {
      boolean end = at == 0 || at == LENGTH - 1;
      List<List<Action>> longer = new ArrayList<>();
      for (List<Action> begun : all) {
        CARDS.stream()
            .filter(card -> !end || card != Action.SKIP)
            .forEach(card -> longer.add(Stream.concat(begun.stream(), Stream.of(card)).toList()));
      }
      all = longer;
    }
    return all;
  }

  /** The shortest way with one card left out, or broken off. */
  private static List<List<Action>> tooShort() {
    List<List<Action>> all = new ArrayList<>();
    for (int at = 0; at < SHORTEST.size(); at++) {
      List<Action> without = new ArrayList<>(SHORTEST);
      without.remove(at);
      all.add(without);
      all.add(SHORTEST.subList(0, at));
    }
    return all;
  }

  private static void card(SampleWindow window, Action card) {
    window.moment();
    window.scan(card.code().digits());
    window.layOut();
  }

  private static List<PartFitted> fits(SampleJob sample, int since) {
    return sample.job.history().stream()
        .skip(since)
        .flatMap(LoggedEntry::each)
        .map(LoggedEntry::entry)
        .filter(PartFitted.class::isInstance)
        .map(PartFitted.class::cast)
        .toList();
  }

  /** A stop that can be stood before again and again, as long as nothing was written. */
  private static final class Bench {
    private final EveryStopLeadsOutTest.Row row;
    private SampleJob sample = SampleJob.apart();
    private SampleWindow window;
    private int before;

    Bench(EveryStopLeadsOutTest.Row row) {
      this.row = row;
      window = row.open(sample);
      before = sample.job.history().size();
    }

    void fresh() {
      if (sample.job.history().size() > before) {
        sample = SampleJob.apart();
        window = row.open(sample);
        before = sample.job.history().size();
      }
      window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
      window.layOut();
      assertThat(window.words()).contains("STOP");
    }

    /** What the cards fit, from the fresh stop on. */
    List<PartFitted> fits(List<Action> cards) {
      fresh();
      cards.forEach(card -> card(window, card));
      return StopCardsTest.fits(sample, before);
    }
  }

  /**
   * What was taken out there, or here, lets the part into its own place: that overrules nothing.
   */
  @ParameterizedTest
  @MethodSource("stops")
  void noFourCardsFitAPartAgainstAnyStop(EveryStopLeadsOutTest.Row row) {
    Toolkit.on(
        () -> {
          Bench bench = new Bench(row);
          for (List<Action> cards : sequences()) {
            List<PartFitted> fits = bench.fits(cards);
            assertThat(fits).as("%s", cards).allMatch(fit -> fit.onPurpose().isEmpty());
            if (!OUT.contains(row.tag())) {
              assertThat(fits).as("%s", cards).isEmpty();
            }
          }
          return 0;
        });
  }

  @Test
  void onPurposeByCardsAloneTakesNineAndNoFewer() {
    Toolkit.on(
        () -> {
          Bench bench = new Bench(stops().findFirst().orElseThrow());
          for (List<Action> cards : tooShort()) {
            assertThat(bench.fits(cards)).as("%s", cards).isEmpty();
          }
          assertThat(bench.fits(SHORTEST))
              .singleElement()
              .satisfies(fit -> assertThat(fit.onPurpose()).isEqualTo("measured better here"));
          return 0;
        });
  }

  @Test
  void onceItIsDoneNothingAsksForYesOnceMore() {
    Toolkit.on(
        () -> {
          SampleJob sample = SampleJob.apart();
          SampleWindow window = stops().findFirst().orElseThrow().open(sample);
          SHORTEST.forEach(each -> card(window, each));
          assertThat(fits(sample, 0)).hasSize(1);
          assertThat(window.shell.message()).isEmpty();
          return 0;
        });
  }

  @Test
  void theFirstNextMarksTheTagWhateverHadTheRingBefore() {
    Toolkit.on(
        () -> {
          SampleJob sample = SampleJob.apart();
          SampleWindow window = stops().findFirst().orElseThrow().open(sample);
          card(window, Action.NEXT);
          card(window, Action.NEXT);
          assertThat(window.words(window.scene.getFocusOwner())).startsWith("Fit it here");
          window.scan(sample.tag("pushrod@1EX"));
          window.layOut();
          card(window, Action.NEXT);
          assertThat(window.words(window.scene.getFocusOwner())).startsWith("Scan the right part");
          return 0;
        });
  }

  @Test
  void helpAndSkipPutTheRingAndTheReasonAway() {
    for (Action card : List.of(Action.HELP, Action.SKIP)) {
      Toolkit.on(
          () -> {
            SampleJob sample = SampleJob.apart();
            SampleWindow window = stops().findFirst().orElseThrow().open(sample);
            SHORTEST.subList(0, 8).forEach(each -> card(window, each));
            assertThat(window.shell.message()).startsWith("Scan YES once more");
            card(window, card);
            card(window, Action.SKIP);
            assertThat(window.words()).contains("STOP", "Fit it here").doesNotContain("Hold:");
            card(window, Action.YES);
            assertThat(fits(sample, 0)).isEmpty();
            return 0;
          });
    }
  }
}
