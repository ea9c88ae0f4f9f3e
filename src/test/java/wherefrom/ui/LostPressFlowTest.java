package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.Function;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wherefrom.engine.Spot;
import wherefrom.engine.Spots;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartFound;
import wherefrom.job.entry.PartUnfitted;
import wherefrom.job.entry.StopGiven;
import wherefrom.job.entry.TakenBack;
import wherefrom.job.handling.Handling;
import wherefrom.job.puttogether.FitOutcome;
import wherefrom.job.puttogether.PutTogether;
import wherefrom.job.tags.CodeLookup;
import wherefrom.parts.Action;
import wherefrom.parts.Whereabouts;
import wherefrom.rules.Verdict;
import wherefrom.rules.VerdictName;
import wherefrom.ui.sample.PaperLogbook.Away;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/**
 * The answer to an act of a press is lost, and the act was written: once the store is back the
 * press goes on from there by itself, and nothing is written twice.
 */
class LostPressFlowTest {
  private final SampleJob sample = SampleJob.apart();
  private final PutTogether together = new PutTogether(sample.job);
  private SampleWindow window;

  @BeforeEach
  void open() {
    window =
        Toolkit.on(
            () -> {
              SampleWindow opened = new SampleWindow(96, 100);
              opened.shell.context().open(sample.job);
              opened.layOut();
              return opened;
            });
  }

  private FitOutcome hold(String part) {
    return together.scan(new CodeLookup.APart(sample.record(part)));
  }

  private static Spot spot(String key) {
    return Spots.find(key).orElseThrow();
  }

  private void fit(String part, String spot) {
    hold(part);
    together.tap(spot(spot));
  }

  /** The store goes as the press is done, and comes back. */
  private void lost(Away how, Function<PutTogether, FitOutcome> press) {
    Toolkit.on(
        () -> {
          sample.logbook.away(how);
          window.shell.context().attempt(() -> press.apply(together));
          return 0;
        });
    Toolkit.on(
        () -> {
          sample.logbook.away(Away.NO);
          return 0;
        });
    Toolkit.on(() -> 0);
  }

  private long written(Class<?> kind) {
    return sample.logbook.entries().stream()
        .flatMap(logged -> logged.each())
        .filter(it -> kind.isInstance(it.entry()))
        .count();
  }

  private VerdictName stop() {
    return together.stop().map(Verdict::name).orElseThrow();
  }

  @Test
  void aStopThatWasGivenUnheardStandsAndIsGivenOnce() {
    hold("lifter@3EX");
    lost(Away.UNHEARD, it -> it.tap(spot("5EX")));
    assertThat(stop()).isEqualTo(VerdictName.WRONG_PLACE);
    assertThat(written(StopGiven.class)).isEqualTo(1);
    assertThat(sample.job.state().stops().waiting()).hasSize(1);
  }

  /** Else the next part would be judged at the place of this one. */
  @Test
  void aPartThatWasFittedUnheardIsOutOfTheHand() {
    hold("lifter@3EX");
    lost(Away.UNHEARD, it -> it.tap(spot("3EX")));
    assertThat(sample.record("lifter@3EX").where()).isEqualTo(Whereabouts.FITTED);
    assertThat(hold("lifter@5EX")).isInstanceOf(FitOutcome.WaitingForSpot.class);
    assertThat(written(PartFitted.class)).isEqualTo(1);
    assertThat(written(StopGiven.class)).isZero();
  }

  @Test
  void aFitThatIsTakenBackUnheardAsTurnedIsStopped() {
    fit("pushrod@3EX", "3EX");
    lost(Away.UNHEARD, PutTogether::turned);
    assertThat(stop()).isEqualTo(VerdictName.WRONG_END);
    assertThat(written(TakenBack.class)).isEqualTo(1);
    assertThat(written(StopGiven.class)).isEqualTo(1);
    assertThat(sample.record("pushrod@3EX").where()).isEqualTo(Whereabouts.OUT);
  }

  @Test
  void whatIsTakenOutUnheardLeadsToTheNextStop() {
    fit("lifter@3EX", "3EX");
    fit("lifter@5EX", "3EX");
    assertThat(stop()).isEqualTo(VerdictName.PLACE_TAKEN);
    lost(Away.UNHEARD, PutTogether::tookOut);
    assertThat(stop()).isEqualTo(VerdictName.WRONG_PLACE);
    assertThat(written(PartUnfitted.class)).isEqualTo(1);
    assertThat(sample.job.stops().findWaiting().map(StopGiven::word))
        .contains(VerdictName.WRONG_PLACE);
  }

  @Test
  void roomThatIsMadeUnheardWithTheFitIsMadeOnce() {
    fit("lifter@5EX", "5EX");
    new Handling(sample.job).tookOut(sample.part("lifter@5EX").item(), "to look at it");
    hold("lifter@3EX");
    together.tap(spot("5EX"));
    together.chooseReason("measured better here");
    together.fitOnPurpose("matched pair");
    fit("lifter@5EX", "5EX");
    assertThat(stop()).isEqualTo(VerdictName.PLACE_TAKEN);
    long fits = written(PartFitted.class);
    lost(Away.UNHEARD, PutTogether::tookOut);
    assertThat(together.stop()).isEmpty();
    assertThat(written(PartFitted.class)).isEqualTo(fits + 1);
    assertThat(sample.record("lifter@5EX").where()).isEqualTo(Whereabouts.FITTED);
    assertThat(sample.record("lifter@3EX").where()).isEqualTo(Whereabouts.OUT);
  }

  @Test
  void aPartThatIsFoundUnheardIsJudgedAgain() {
    int item = sample.part("lifter@3EX").item();
    new Handling(sample.job).lost(item, "");
    fit("lifter@3EX", "5EX");
    lost(Away.UNHEARD, it -> it.after(() -> new Handling(sample.job).found(item)));
    assertThat(written(PartFound.class)).isEqualTo(1);
    assertThat(stop()).isEqualTo(VerdictName.WRONG_PLACE);
  }

  /** To do UNDO again would take back one step more. */
  @Test
  void anUndoThatWasWrittenUnheardIsNotDoneAgain() {
    fit("lifter@3EX", "3EX");
    fit("lifter@5EX", "5EX");
    lost(Away.UNHEARD, it -> it.act(Action.UNDO));
    assertThat(written(TakenBack.class)).isEqualTo(1);
    assertThat(sample.record("lifter@3EX").where()).isEqualTo(Whereabouts.FITTED);
  }

  /** What was not written is done again whole; its first act, which was heard, is not. */
  @Test
  void aPressThatDidNotArriveIsDoneAgainOnce() {
    fit("pushrod@3EX", "3EX");
    lost(Away.UNSENT, PutTogether::turned);
    assertThat(stop()).isEqualTo(VerdictName.WRONG_END);
    assertThat(written(TakenBack.class)).isEqualTo(1);
    assertThat(written(StopGiven.class)).isEqualTo(1);
  }

  /** Whoever went on from there has other things in hand. */
  @Test
  void aPressIsLeftWhereAnotherBenchHasGoneOn() {
    fit("lifter@3EX", "3EX");
    fit("lifter@5EX", "3EX");
    long stops = written(StopGiven.class);
    Toolkit.on(
        () -> {
          sample.logbook.away(Away.UNHEARD);
          window.shell.context().attempt(together::tookOut);
          sample.logbook.away(Away.NO);
          int other = sample.part("lifter@7EX").item();
          sample.logbook.append(SampleJob.CLOCK.instant(), new NoteAdded(other, "worn"));
          return 0;
        });
    Toolkit.on(() -> 0);
    assertThat(written(PartUnfitted.class)).isEqualTo(1);
    assertThat(written(StopGiven.class)).isEqualTo(stops);
    assertThat(sample.job.isUnsettled()).isFalse();
  }
}
