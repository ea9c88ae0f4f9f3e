package wherefrom.ui.drawn;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.shape.Shape;
import org.junit.jupiter.api.Test;
import wherefrom.drawing.Asked;
import wherefrom.drawing.BelowPanRail;
import wherefrom.drawing.DrawnAs;
import wherefrom.drawing.Glass;
import wherefrom.drawing.PartState;
import wherefrom.drawing.Role;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.ui.Toolkit;
import wherefrom.ui.audit.Audit;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;

/** The drawing on the glass: looks by state, changes place by place, zones for a finger. */
class DrawnEngineTest {
  private static final Layout V8 = ReadyLayouts.find("v8-odd-even").orElseThrow();
  private static final Asked ASKED = Asked.of(PartKind.alwaysOn());

  private final Scale scale = new Scale(Glass.UNITS_PER_MM, 1);
  private final Touch touch = new Touch(scale, System::nanoTime);
  private final Map<String, PartState> states = new HashMap<>();
  private final List<Tap> tapped = new ArrayList<>();

  private PartState state(Place place) {
    return states.getOrDefault(place.key(), PartState.IN);
  }

  private DrawnEngine open(DrawnEngine drawn, boolean dark) {
    Pane root = new Pane(drawn);
    root.getStyleClass().add("bench");
    if (dark) {
      root.getStyleClass().add("dark");
    }
    Scene scene = new Scene(root, 1280, 800);
    scene
        .getStylesheets()
        .add(
            Objects.requireNonNull(DrawnEngineTest.class.getResource("/wherefrom/ui/wherefrom.css"))
                .toExternalForm());
    drawn.setPrefSize(1232, 660);
    drawn.relocate(24, 24);
    drawn.show(this::state, Set.of());
    settle(root);
    return drawn;
  }

  private static void settle(Parent root) {
    root.applyCss();
    root.layout();
    root.applyCss();
  }

  private DrawnEngine above() {
    Drawn drawn = new Drawn(V8, ASKED, scale);
    return open(DrawnEngine.keyed(touch, V8, ASKED, drawn.above(), tapped::add), false);
  }

  private static Stream<Node> all(Node node) {
    Stream<Node> below =
        node instanceof Parent parent
            ? parent.getChildrenUnmodifiable().stream().flatMap(DrawnEngineTest::all)
            : Stream.empty();
    return Stream.concat(Stream.of(node), below);
  }

  private static PartNode node(DrawnEngine drawn, String key) {
    return all(drawn)
        .filter(node -> node instanceof PartNode)
        .map(node -> (PartNode) node)
        .filter(node -> node.figure().place().key().equals(key))
        .findFirst()
        .orElseThrow();
  }

  private static Shape first(PartNode part, Role role) {
    return part.getChildren().stream()
        .filter(node -> node.getStyleClass().contains(ShapeNodes.styleClass(role)))
        .map(node -> (Shape) node)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theStateIsToldByOutlineAndFastenerAndColorRepeatsIt() {
    states.put("rocker@3EX", PartState.FITTED);
    states.put("rocker@1EX", PartState.OUT);
    Toolkit.on(
        () -> {
          DrawnEngine drawn = above();
          PartNode fitted = node(drawn, "rocker@3EX");
          assertThat(first(fitted, Role.BODY).getFill()).isEqualTo(Color.web("#8fcdf0"));
          assertThat(first(fitted, Role.FASTENER).getFill()).isEqualTo(Color.web("#14191a"));
          PartNode out = node(drawn, "rocker@1EX");
          assertThat(first(out, Role.BODY).getStrokeDashArray()).containsExactly(6.0, 5.0);
          assertThat(first(out, Role.BODY).getFill()).isEqualTo(Color.TRANSPARENT);
          assertThat(first(out, Role.FASTENER).isVisible()).isFalse();
          PartNode in = node(drawn, "rocker@5EX");
          assertThat(first(in, Role.BODY).getStrokeWidth()).isEqualTo(2);
          assertThat(first(fitted, Role.BODY).getStrokeWidth()).isEqualTo(2.4);
          PartNode untracked = node(drawn, "spring@5EX");
          assertThat(untracked.look()).isEqualTo(DrawnAs.FAINT);
          return true;
        });
  }

  @Test
  void theDarkLookHasColorsOfItsOwn() {
    Toolkit.on(
        () -> {
          Drawn maker = new Drawn(V8, ASKED, scale);
          DrawnEngine drawn = open(DrawnEngine.shown(touch, V8, ASKED, maker.above()), true);
          PartNode in = node(drawn, "rocker@5EX");
          assertThat(first(in, Role.BODY).getFill()).isEqualTo(Color.web("#424e4b"));
          assertThat(first(in, Role.BODY).getStroke()).isEqualTo(Color.web("#f1eee3"));
          return true;
        });
  }

  @Test
  void onlyThePlaceThatChangedIsDrawnAnew() {
    Toolkit.on(
        () -> {
          DrawnEngine drawn = above();
          int before = drawn.redrawn();
          states.put("pushrod@3EX", PartState.OUT);
          drawn.show(this::state, Set.of());
          assertThat(drawn.redrawn() - before).isEqualTo(1);
          drawn.show(this::state, Set.of());
          assertThat(drawn.redrawn() - before).isEqualTo(1);
          PartNode changed = node(drawn, "pushrod@3EX");
          assertThat(changed.look()).isEqualTo(DrawnAs.OUT);
          drawn.show(this::state, Set.of(Place.find("pushrod@3EX").orElseThrow()));
          assertThat(changed.look()).isEqualTo(DrawnAs.HERE);
          return true;
        });
  }

  @Test
  void zonesAreTargetsWithWordsAndThePictureTakesNoTouch() {
    states.put("pushrod@3EX", PartState.AT_SHOP);
    Toolkit.on(
        () -> {
          DrawnEngine drawn = above();
          List<Node> zones =
              all(drawn).filter(node -> node.getProperties().containsKey(Touch.MARK)).toList();
          assertThat(zones).hasSize(8);
          assertThat(zones)
              .extracting(Node::getAccessibleText)
              .contains(
                  "cylinder 3: cylinder 3, exhaust, pushrod at the machine shop;"
                      + " the rest in the engine");
          assertThat(all(drawn).filter(node -> node instanceof PartNode))
              .allSatisfy(
                  node -> assertThat(node.getParent().getParent().isMouseTransparent()).isTrue());
          assertThat(Audit.of(drawn.getScene(), scale)).isEmpty();
          return true;
        });
  }

  @Test
  void fromBelowTheMainsAreKeys() {
    Toolkit.on(
        () -> {
          Drawn maker = new Drawn(V8, ASKED, scale);
          DrawnEngine drawn =
              open(
                  DrawnEngine.keyed(touch, V8, ASKED, maker.below(BelowPanRail.KEYS), tapped::add),
                  false);
          assertThat(
                  all(drawn)
                      .filter(node -> node.getProperties().containsKey(Touch.MARK))
                      .map(node -> (Region) node))
              .hasSize(13);
          assertThat(Audit.of(drawn.getScene(), scale)).isEmpty();
          return true;
        });
  }

  @Test
  void aShownDrawingIsDeadToTouch() {
    Toolkit.on(
        () -> {
          Drawn maker = new Drawn(V8, ASKED, scale);
          DrawnEngine drawn = open(DrawnEngine.shown(touch, V8, ASKED, maker.cylinder(3)), false);
          assertThat(all(drawn).filter(node -> node.getProperties().containsKey(Touch.MARK)))
              .isEmpty();
          return true;
        });
  }
}
