package wherefrom.ui.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javafx.scene.Scene;
import org.junit.jupiter.api.Test;
import wherefrom.drawing.PartState;
import wherefrom.drawing.Sign;
import wherefrom.engine.ReadyLayouts;
import wherefrom.engine.ValveSide;
import wherefrom.engine.ValveSpot;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.ui.Toolkit;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.drawn.PlaceCounts;
import wherefrom.ui.drawn.PlaceCounts.Count;

/** What stands below a drawing of the engine tells each mark on it, and how often it is there. */
class EngineToldTest {
  private static Place pushrod(int cylinder) {
    return new Place(PartKind.PUSHROD, new ValveSpot(cylinder, ValveSide.EXHAUST));
  }

  private static List<Count> told(PartState... states) {
    Map<Place, PartState> at = new java.util.LinkedHashMap<>();
    for (PartState state : states) {
      at.put(pushrod(at.size() + 1), state);
    }
    return EngineToldView.counts(new ArrayList<>(at.keySet()), at::get);
  }

  @Test
  void everyMarkIsToldOnceWithItsNumber() {
    assertThat(told(PartState.OUT, PartState.WASHING, PartState.OUT, PartState.IN))
        .containsExactly(
            new Count(Sign.IN, 1, "in the engine"),
            new Count(Sign.OUT, 2, "out"),
            new Count(Sign.WASHING, 1, "washing"));
  }

  @Test
  void whatAMarkAddsIsSaidNotWhereThePartIs() {
    assertThat(told(PartState.OUT.suspect(), PartState.IN.suspect(), PartState.IN.failed()))
        .containsExactly(
            new Count(Sign.SUSPECT, 2, "suspect"), new Count(Sign.FAILED, 1, "failed"));
  }

  @Test
  void marksThatStandForSeveralThingsAreToldByWhatTheyHaveInCommon() {
    assertThat(
            told(
                new PartState(wherefrom.drawing.DrawnAs.OUT, Sign.FITTED, "reuse"),
                new PartState(wherefrom.drawing.DrawnAs.OUT, Sign.FITTED, "replace")))
        .containsExactly(new Count(Sign.FITTED, 2, "done"));
  }

  @Test
  void nothingIsToldWhereEveryPartIsInTheEngine() {
    assertThat(told(PartState.IN, PartState.IN)).isEmpty();
  }

  /** Whether the marks are told in a room of this width that is as high as the drawing. */
  private static boolean isTold(double width) {
    return Toolkit.on(
        () -> {
          Touch touch = new Touch(new Scale(4, 1), () -> 0);
          EngineView engine =
              EngineView.keyed(
                  touch,
                  ReadyLayouts.find("inline-6").orElseThrow(),
                  Set.of(PartKind.PUSHROD),
                  tap -> {});
          EngineToldView view = new EngineToldView(touch, engine);
          view.tell(List.of(pushrod(1)), place -> PartState.OUT, List.of());
          new Scene(view);
          view.applyCss();
          view.resize(width, engine.heightFor(width));
          view.layout();
          return view.getChildrenUnmodifiable().stream()
              .anyMatch(child -> child instanceof PlaceCounts && child.isVisible());
        });
  }

  @Test
  void aDrawingYieldsRoomForTheWordsOfItsMarksAsLongAsAFingerFindsEachCylinder() {
    assertThat(isTold(1200)).isTrue();
    assertThat(isTold(650)).isFalse();
  }
}
