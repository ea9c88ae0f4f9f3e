package wherefrom.ui.drawn;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.drawing.Look;
import wherefrom.drawing.PartState;
import wherefrom.drawing.Sign;
import wherefrom.job.PlaceState;

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
        .containsExactly(Look.FITTED, Sign.AGAINST);
    assertThat(PartStates.of(PlaceState.OTHER_FITTED).look()).isEqualTo(Look.FITTED);
    assertThat(PartStates.of(PlaceState.MISSING).look()).isEqualTo(Look.OUT);
  }
}
