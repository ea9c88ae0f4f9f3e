package wherefrom.ui.debris;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.inspection.Look;
import wherefrom.rules.debris.DebrisLook;
import wherefrom.rules.debris.DebrisPlace;
import wherefrom.rules.debris.Opening;
import wherefrom.ui.sample.SampleJob;

class DebrisModelTest {
  private final DebrisModel model = new DebrisModel(SampleJob.apart().job);

  @Test
  void theMapShowsWhatWasFoundWhere() {
    assertThat(model.words(DebrisPlace.PAN)).isEqualTo("Pan");
    assertThat(model.found(DebrisPlace.PAN, DebrisLook.PLASTIC, ""))
        .isEqualTo("Hard crumbs of plastic or fiber, oil pan: suspect teeth of the cam gear.");
    model.found(DebrisPlace.PAN, DebrisLook.COPPER, "");
    assertThat(model.words(DebrisPlace.PAN)).isEqualTo("Pan\n2 finds");
    assertThat(model.found(DebrisPlace.PAN)).isEqualTo("2 finds");
    assertThat(model.words(DebrisPlace.FILTER_PLEATS)).isEqualTo("Filter");
  }

  @Test
  void theKeySaysThatTheQuestionIsNotAnsweredUntilALookAtTheBearings() {
    assertThat(DebrisModel.words(model.question(), false)).endsWith("nothing found");
    model.found(DebrisPlace.FRONT_COVER, DebrisLook.PLASTIC, "");
    assertThat(DebrisModel.words(model.question(), false)).endsWith("NOT ANSWERED");
    assertThat(model.opened(Opening.FILTER, Look.SUSPECT)).contains("Tap the debris map");
    assertThat(model.opened(Opening.FIRST_BEARINGS, Look.PASS))
        .isEqualTo("Did it reach the mains? no.");
  }
}
