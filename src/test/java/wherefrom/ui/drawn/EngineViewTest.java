package wherefrom.ui.drawn;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.drawing.BelowPanRail;
import wherefrom.drawing.Glass;
import wherefrom.drawing.PartState;
import wherefrom.drawing.View;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.ui.Toolkit;
import wherefrom.ui.audit.Audit;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;

/** The engine with its captions: what leaves when the room gets small, what a finger can hit. */
class EngineViewTest {
  private final Scale scale = new Scale(Glass.UNITS_PER_MM, 1);
  private final Touch touch = new Touch(scale, System::nanoTime);
  private final List<Tap> tapped = new ArrayList<>();

  private static Layout layout(String name) {
    return ReadyLayouts.find(name).orElseThrow();
  }

  private static EngineView open(EngineView view, double wide, double high) {
    Pane root = new Pane(view);
    root.getStyleClass().add("bench");
    Scene scene = new Scene(root, wide + 48, high + 48);
    scene
        .getStylesheets()
        .add(
            Objects.requireNonNull(EngineViewTest.class.getResource("/wherefrom/ui/wherefrom.css"))
                .toExternalForm());
    view.setPrefSize(wide, high);
    view.relocate(24, 24);
    root.applyCss();
    root.layout();
    root.applyCss();
    root.layout();
    return view;
  }

  private static Stream<Node> all(Node node) {
    if (!node.isVisible()) {
      return Stream.empty();
    }
    Stream<Node> below =
        node instanceof Parent parent
            ? parent.getChildrenUnmodifiable().stream().flatMap(EngineViewTest::all)
            : Stream.empty();
    return Stream.concat(Stream.of(node), below);
  }

  private static List<String> words(EngineView view) {
    return all(view).filter(Text.class::isInstance).map(node -> ((Text) node).getText()).toList();
  }

  private static List<Node> targets(EngineView view) {
    return all(view).filter(node -> node.getProperties().containsKey(Touch.MARK)).toList();
  }

  private EngineView view(String name, View side) {
    EngineView view = EngineView.keyed(touch, layout(name), PartKind.alwaysOn(), tapped::add);
    view.look(side);
    view.show(place -> PartState.IN, Set.of());
    return view;
  }

  @Test
  void captionsStandAboveTheDrawingAndEndWhereItEnds() {
    Toolkit.on(
        () -> {
          EngineView view = open(view("v8-odd-even", View.ABOVE), 724, 440);
          assertThat(words(view)).contains("FRONT", "from above", "FLYWHEEL", "1", "8");
          Region captions = (Region) view.getChildrenUnmodifiable().get(1);
          var frame = view.frame().orElseThrow();
          assertThat(captions.getLayoutX()).isEqualTo(frame.getMinX(), within());
          assertThat(captions.getLayoutX() + captions.getWidth())
              .isEqualTo(frame.getMaxX(), within());
          assertThat(captions.getLayoutY() + captions.getHeight())
              .isLessThanOrEqualTo(frame.getMinY());
          assertThat(Audit.of(view.getScene(), scale)).isEmpty();
          return true;
        });
  }

  /** The drawing stands on whole pixels: each edge at most half of one from the captions. */
  private static org.assertj.core.data.Offset<Double> within() {
    return org.assertj.core.data.Offset.offset(0.5);
  }

  /** With letters twice as large: which end is which is told where nothing else has room. */
  @ParameterizedTest
  @CsvSource({
    "inline-6, 900, 440, FRONT from above FLYWHEEL",
    "inline-6, 650, 300, FRONT",
    "v8-odd-even, 490, 460, FRONT"
  })
  void theEndsAreNamedAsLongAsThereIsRoom(String layout, double wide, double high, String told) {
    Scale large = new Scale(Glass.UNITS_PER_MM, 2);
    Toolkit.on(
        () -> {
          EngineView view =
              EngineView.keyed(
                  new Touch(large, System::nanoTime), layout(layout), PartKind.all(), tapped::add);
          view.look(View.ABOVE);
          open(view, wide, high);
          assertThat(view.isDrawn()).isTrue();
          assertThat(Stream.of("FRONT", "from above", "FLYWHEEL").filter(words(view)::contains))
              .containsExactlyInAnyOrder(
                  Stream.of("FRONT", "from above", "FLYWHEEL")
                      .filter(told::contains)
                      .toArray(String[]::new));
          assertThat(Audit.of(view.getScene(), large)).isEmpty();
          return true;
        });
  }

  @ParameterizedTest
  @CsvSource({
    "724, 440, true, true",
    "560, 320, true, true",
    "560, 260, true, false",
    "1000, 260, true, true",
    "720, 260, true, true",
    "500, 180, false, false"
  })
  void firstTheCaptionsLeaveThenTheDrawingAndItsKeyStays(
      double wide, double high, boolean drawn, boolean told) {
    Toolkit.on(
        () -> {
          EngineView view = open(view("v8-odd-even", View.ABOVE), wide, high);
          assertThat(view.isDrawn()).isEqualTo(drawn);
          assertThat(words(view).contains("FRONT")).isEqualTo(told);
          assertThat(words(view).contains("Engine")).isEqualTo(!drawn);
          assertThat(targets(view)).isNotEmpty();
          assertThat(Audit.of(view.getScene(), scale)).isEmpty();
          return true;
        });
  }

  @Test
  void asSmallAsOnHomeItIsOneKeyAndAtFullWidthEachCylinderIsOne() {
    Toolkit.on(
        () -> {
          assertThat(targets(open(view("v8-odd-even", View.BELOW), 670, 390))).hasSize(1);
          EngineView full = view("v8-odd-even", View.BELOW);
          full.foot(BelowPanRail.KEYS);
          assertThat(targets(open(full, 1068, 660))).hasSize(13);
          return true;
        });
  }

  @Test
  void turnedOverItSaysFromWhere() {
    Toolkit.on(
        () -> {
          EngineView view = open(view("inline-6", View.ABOVE), 1068, 660);
          view.turnOver();
          view.layout();
          view.applyCss();
          assertThat(view.side()).isEqualTo(View.BELOW);
          assertThat(words(view)).contains("from below", "M7").doesNotContain("from above");
          return true;
        });
  }

  @Test
  void aStopRingsBothPlacesAndNoOctagonCoversANumber() {
    Place wrong = Place.find("rod-shell@R7L").orElseThrow();
    Place right = Place.find("rod-shell@R8L").orElseThrow();
    Toolkit.on(
        () -> {
          EngineView view = EngineView.shown(touch, layout("v8-odd-even"), PartKind.alwaysOn());
          view.look(View.BELOW);
          view.stop(place -> PartState.OUT, Set.of(wrong), Set.of(right));
          open(view, 530, 290);
          assertThat(targets(view)).isEmpty();
          assertThat(styled(view, "drawn-wrong-ring")).hasSize(1);
          assertThat(styled(view, "drawn-ring")).hasSize(1);
          List<Node> octagon = styled(view, "drawn-stop");
          assertThat(octagon).hasSize(1);
          assertThat(styled(view, "drawn-number"))
              .filteredOn(
                  node -> node.getBoundsInParent().intersects(octagon.get(0).getBoundsInParent()))
              .isEmpty();
          return true;
        });
  }

  /** A small drawing has no room for a ring beside the number: it would be read as another one. */
  @Test
  void aNumberThatARingReachesHasAHaloAboveTheRing() {
    Place right = Place.find("pushrod@3EX").orElseThrow();
    Toolkit.on(
        () -> {
          EngineView view = EngineView.shown(touch, layout("v8-odd-even"), PartKind.alwaysOn());
          view.look(View.ABOVE);
          view.stop(place -> PartState.OUT, Set.of(), Set.of(right));
          open(view, 530, 290);
          List<Node> halos = styled(view, "drawn-number-halo");
          assertThat(halos).hasSize(1);
          List<Node> over = all(halos.get(0).getParent()).toList();
          int halo = over.indexOf(halos.get(0));
          assertThat(halo).isGreaterThan(over.indexOf(styled(view, "drawn-ring").get(0)));
          assertThat(over.subList(halo, over.size()))
              .filteredOn(node -> node instanceof Text number && number.getText().equals("3"))
              .hasSize(1);
          return true;
        });
  }

  private static List<Node> styled(EngineView view, String styleClass) {
    Predicate<Node> has = node -> node.getStyleClass().contains(styleClass);
    return all(view).filter(has).toList();
  }

  @Test
  void aWireEndsAtTheLowerEdgeAndCrossesNoOtherPart() {
    Toolkit.on(
        () -> {
          EngineView view = open(view("v8-odd-even", View.BELOW), 724, 440);
          Place lower = Place.find("rod-shell@R4L").orElseThrow();
          var end = view.wireEnd(lower).orElseThrow();
          assertThat(end.getY()).isLessThan(view.frame().orElseThrow().getMaxY());
          assertThat(view.wireEnd(Place.find("rod-shell@R3L").orElseThrow())).isEmpty();
          return true;
        });
  }

  /** The letter of what is at the machine shop is not struck through. */
  @Test
  void aWireCrossesNoMark() {
    Toolkit.on(
        () -> {
          EngineView view = open(view("v8-odd-even", View.ABOVE), 724, 440);
          Place pushrod = Place.find("pushrod@1EX").orElseThrow();
          Place rocker = Place.find("rocker@1EX").orElseThrow();
          assertThat(view.wireEnd(pushrod)).isPresent();
          view.show(
              place -> place.equals(rocker) ? PartState.AT_SHOP : PartState.IN, Set.of(pushrod));
          open(view, 724, 440);
          assertThat(view.wireEnd(pushrod)).isEmpty();
          return true;
        });
  }

  /** An upper shell lies beyond its number: the wire goes beside it, not through it. */
  @Test
  void aWireCrossesNoNumber() {
    Toolkit.on(
        () -> {
          EngineView view = open(view("v8-odd-even", View.BELOW), 724, 440);
          Place upper = Place.find("rod-shell@R4U").orElseThrow();
          Point2D end = view.localToScene(view.wireEnd(upper).orElseThrow());
          assertThat(styled(view, "drawn-number"))
              .isNotEmpty()
              .extracting(node -> node.localToScene(node.getBoundsInLocal()))
              .filteredOn(number -> number.getMaxY() > end.getY())
              .noneMatch(
                  number -> number.getMinX() - 2 < end.getX() && end.getX() < number.getMaxX() + 2);
          return true;
        });
  }

  /** Told by its shape as well: where letters are light on dark, red and black are not told. */
  @Test
  void theRingOfTheWrongPlaceIsOfTwoLines() {
    Toolkit.on(
        () -> {
          EngineView view = open(view("v8-odd-even", View.BELOW), 724, 440);
          view.stop(
              place -> PartState.IN,
              Set.of(Place.find("rod-shell@R7L").orElseThrow()),
              Set.of(Place.find("rod-shell@R8L").orElseThrow()));
          assertThat(styled(view, "drawn-wrong-gap")).hasSize(1);
          assertThat(styled(view, "drawn-wrong-ring")).hasSize(1);
          assertThat(styled(view, "drawn-ring")).hasSize(1);
          return true;
        });
  }
}
