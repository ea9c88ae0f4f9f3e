package wherefrom.ui.drawn;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.drawing.DrawnAs;
import wherefrom.drawing.PartState;
import wherefrom.drawing.Sign;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.job.PlaceState;
import wherefrom.job.entry.DecisionMade;
import wherefrom.job.entry.LookRecorded;
import wherefrom.job.pages.RecordEngine;
import wherefrom.parts.Part;
import wherefrom.ui.sample.SampleJob;

class PartStatesTest {
  @Test
  void noTwoStatesLookAlike() {
    List<String> looks =
        Arrays.stream(PlaceState.values())
            .map(PartStates::of)
            .map(state -> state.look() + " " + state.sign())
            .toList();
    assertThat(looks).doesNotHaveDuplicates();
  }

  @Test
  void whatSitsInTheEngineIsDrawnSolid() {
    assertThat(PartStates.of(PlaceState.FITTED_BUT))
        .extracting(PartState::look, PartState::sign)
        .containsExactly(DrawnAs.FITTED, Sign.AGAINST);
    assertThat(PartStates.of(PlaceState.OTHER_FITTED).look()).isEqualTo(DrawnAs.FITTED);
    assertThat(PartStates.of(PlaceState.MISSING).look()).isEqualTo(DrawnAs.OUT);
  }

  @Test
  void aFailedPartIsDrawnFailedWhateverWasDecided() {
    SampleJob sample = SampleJob.apart();
    Part shell = sample.part("rod-shell@R1U");
    Part rocker = sample.part("rocker@1EX");
    sample.job.record(new LookRecorded(shell.item(), "shell-face", Look.FAIL, ""));
    sample.job.record(new LookRecorded(rocker.item(), "rocker-tip", Look.SUSPECT, ""));
    assertThat(sign(sample, rocker)).isEqualTo(Sign.SUSPECT);
    sample.job.record(new DecisionMade(shell.item(), Decision.REPLACE, "worn"));
    sample.job.record(new DecisionMade(rocker.item(), Decision.REUSE, "good enough here"));
    assertThat(sign(sample, shell)).isEqualTo(Sign.FAILED);
    assertThat(RecordEngine.of(sample.job.state()).failed()).containsExactly(shell.home());
    assertThat(sign(sample, rocker)).isNotEqualTo(Sign.SUSPECT);
  }

  /** What lies on the bench and is not to go in again does not look like all else that waits. */
  @Test
  void aPartThatIsToBeReplacedBearsTheMarkOfWhatIsNotCleared() {
    SampleJob sample = SampleJob.apart();
    Part lifter = sample.part("lifter@1EX");
    assertThat(sign(sample, lifter)).isEqualTo(Sign.OUT);
    sample.job.record(new DecisionMade(lifter.item(), Decision.REPLACE, "worn"));
    assertThat(sign(sample, lifter)).isEqualTo(Sign.AGAINST);
  }

  private static Sign sign(SampleJob sample, Part part) {
    return PartStates.of(sample.job.state()).apply(part.home()).sign();
  }
}
