package wherefrom.job.puttogether;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wherefrom.job.Benches.place;
import static wherefrom.job.Benches.spot;

import org.junit.jupiter.api.Test;
import wherefrom.engine.Section;
import wherefrom.inspection.Look;
import wherefrom.job.BenchJob;
import wherefrom.job.PlaceState;
import wherefrom.job.change.Planning;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.handling.Handling;
import wherefrom.parts.Part;
import wherefrom.rules.Verdict;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;

/** What must be new or is retired goes in for no reason, whatever else is said of it first. */
class NeverOnPurposeTest {
  private final BenchJob bench = BenchJob.v8().reuseAll();
  private final Fitting fitting = new Fitting(bench.job);

  private void newFlatCam() {
    new Planning(bench.job).make(Change.at(ChangeKind.NEW_FLAT_CAM, ""));
  }

  private void isRefused(Part part, String spot) {
    int before = bench.job.history().size();
    assertThatThrownBy(() -> fitting.fitOnPurpose(part, spot(spot), "measured better here"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("never fitted on purpose");
    assertThat(bench.job.history()).hasSize(before);
  }

  @Test
  void aUsedLifterDoesNotGoOnANewCam() {
    newFlatCam();
    assertThat(bench.word("lifter@3EX")).isEqualTo("must be new");
    isRefused(bench.part("lifter@3EX"), "3EX");
  }

  /** The place is said first; that it must be new is so all the same. */
  @Test
  void aUsedLifterGoesOnNoOtherLobeOfANewCamEither() {
    newFlatCam();
    Part lifter = bench.part("lifter@3EX");
    assertThat(fitting.judge(lifter, spot("5EX"), false).word()).isEqualTo("wrong place");
    isRefused(lifter, "5EX");
  }

  @Test
  void noneGoesWhereAnotherIsFitted() {
    fitting.fit(bench.part("lifter@5EX"), spot("5EX"), false);
    newFlatCam();
    Part lifter = bench.part("lifter@3EX");
    assertThat(fitting.judge(lifter, spot("5EX"), false).word()).isEqualTo("place taken");
    isRefused(lifter, "5EX");
  }

  @Test
  void aReplacedPartGoesInNoMore() {
    Part old = bench.part("pushrod@1EX");
    bench.replace("pushrod@1EX");
    isRefused(old, "1EX");
    isRefused(old, "3EX");
  }

  /** The reason was given for another lobe; that the cam is new outweighs it, then or later. */
  @Test
  void aReasonSettlesNoMustBeNew() {
    Part lifter = bench.part("lifter@3EX");
    fitting.fitOnPurpose(lifter, spot("5EX"), "measured better here");
    newFlatCam();
    bench.record(new PartFitted(lifter.item(), place("lifter@5EX"), "it is good", none()));
    assertThat(state("lifter@5EX")).isEqualTo(PlaceState.FITTED_BUT);
    isRefused(lifter, "5EX");
  }

  private static java.util.Optional<wherefrom.rules.VerdictName> none() {
    return java.util.Optional.empty();
  }

  private PlaceState state(String place) {
    return bench.job.state().state(place(place));
  }

  @Test
  void noReasonLeavesItWhereItSits() {
    fitting.fit(bench.part("lifter@3EX"), spot("3EX"), false);
    newFlatCam();
    assertThat(state("lifter@3EX")).isEqualTo(PlaceState.FITTED_BUT);
    assertThatThrownBy(() -> new ToFit(bench.job).leave(place("lifter@3EX"), "it is good"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("must be new");
    assertThat(fitting.judge(bench.part("lifter@3EX"), spot("3EX"), false).wayOut())
        .doesNotContain("say why it stays");
  }

  @Test
  void whatCanStayForAReasonIsStillAskedFor() {
    fitting.fit(bench.part("pushrod@3EX"), spot("3EX"), false);
    bench.look("pushrod@3EX", "pushrod-roll", Look.SUSPECT);
    assertThat(fitting.judge(bench.part("pushrod@3EX"), spot("3EX"), false).wayOut())
        .contains("say why it stays");
    new ToFit(bench.job).leave(place("pushrod@3EX"), "measured again");
    assertThat(state("pushrod@3EX")).isEqualTo(PlaceState.FITTED);
  }

  @Test
  void aPartThatIsInTurnedOnPurposeStaysFittedBut() {
    Part pushrod = bench.part("pushrod@3EX");
    Verdict against = fitting.fitOnPurpose(turned(pushrod), "both ends are alike");
    assertThat(against.word()).isEqualTo("wrong end");
    assertThat(bench.job.state().onPurpose())
        .singleElement()
        .satisfies(
            fit -> {
              assertThat(fit.onPurpose()).isEqualTo("both ends are alike");
              assertThat(fit.against()).contains(wherefrom.rules.VerdictName.WRONG_END);
            });
    assertThat(state("pushrod@3EX")).isEqualTo(PlaceState.FITTED_BUT);
    assertThat(fitting.judge(pushrod, spot("3EX"), false).sentence())
        .contains("It is fitted, but:", "It is turned");
  }

  private static wherefrom.rules.Attempt turned(Part pushrod) {
    return new wherefrom.rules.Attempt(pushrod, pushrod.home().spot(), true);
  }

  @Test
  void aSectionWaitsForAReasonThatIsGivenKnowingThatItIsInTurned() {
    Part pushrod = bench.part("pushrod@3EX");
    fitting.fitOnPurpose(turned(pushrod), "both ends are alike");
    ToFit toFit = new ToFit(bench.job);
    Section valvetrain = Section.of(bench.job.state().layout(), spot("3EX"));
    assertThat(toFit.fittedBut(valvetrain)).hasSize(1);
    toFit.leave(place("pushrod@3EX"), "the oil hole is free");
    assertThat(toFit.fittedBut(valvetrain)).isEmpty();
    assertThat(state("pushrod@3EX")).isEqualTo(PlaceState.FITTED);
  }

  @Test
  void takenOutAndFittedAnewItIsNoLongerTurned() {
    Part pushrod = bench.part("pushrod@3EX");
    fitting.fitOnPurpose(turned(pushrod), "both ends are alike");
    new Handling(bench.job).tookOut(pushrod.item(), "turned round");
    assertThat(fitting.fit(pushrod, spot("3EX"), false).word()).isEqualTo("right place");
    assertThat(state("pushrod@3EX")).isEqualTo(PlaceState.FITTED);
  }

  /** A reason for it to stay keeps what is known of it. */
  @Test
  void leftTurnedOnPurposeItCountsAsFitted() {
    Part pushrod = bench.part("pushrod@3EX");
    fitting.fitOnPurpose(turned(pushrod), "both ends are alike");
    fitting.fitOnPurpose(pushrod, spot("3EX"), "seen, it may stay");
    assertThat(state("pushrod@3EX")).isEqualTo(PlaceState.FITTED);
  }
}
