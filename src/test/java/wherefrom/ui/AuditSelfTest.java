package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.CheckBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Test;
import wherefrom.ui.audit.Audit;
import wherefrom.ui.audit.Fault;
import wherefrom.ui.audit.Fault.Rule;
import wherefrom.ui.controls.Fonts;
import wherefrom.ui.controls.Icon;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;

/** Plants one fault at a time and wants it found, and no other with it. */
class AuditSelfTest {
  private static final Scale SCALE = new Scale(4, 1);
  private static final String KEY =
      "-fx-background-color: black, white; -fx-background-insets: 0, 3;";

  private final Touch touch = new Touch(SCALE, () -> 0);

  private static Set<Rule> rules(Consumer<Pane> plant) {
    return Toolkit.on(
        () -> {
          Pane root = new Pane();
          root.setStyle("-fx-background-color: white;");
          Scene scene = new Scene(root, 800, 600);
          plant.accept(root);
          root.applyCss();
          root.layout();
          List<Fault> faults = Audit.of(scene, SCALE);
          return faults.stream().map(Fault::rule).collect(Collectors.toSet());
        });
  }

  private Node key(double x, double y, double wideMm, double highMm) {
    Region key = touch.target(new Region(), () -> {});
    key.setAccessibleText("a key");
    key.setStyle(KEY);
    key.resizeRelocate(SCALE.px(x), SCALE.px(y), SCALE.px(wideMm), SCALE.px(highMm));
    key.setManaged(false);
    return key;
  }

  private static Text text(String words, double capitalMm, Color ink) {
    Text text = new Text(words);
    text.setFont(Fonts.of(SCALE.fontPx(capitalMm), false));
    text.setFill(ink);
    text.relocate(40, 40);
    return text;
  }

  @Test
  void aSoundWindowHasNoFault() {
    assertThat(
            rules(
                root ->
                    root.getChildren()
                        .addAll(
                            key(30, 40, 18, 18),
                            key(52, 40, 18, 18),
                            text("READ ME", 4.5, Color.BLACK))))
        .isEmpty();
  }

  @Test
  void findsAPlateThatEndsBetweenTwoPixels() {
    Region plate = new Region();
    plate.setStyle("-fx-background-color: red;");
    plate.setManaged(false);
    plate.resizeRelocate(40, 40, 100.5, 60);
    assertThat(rules(root -> root.getChildren().add(plate))).containsExactly(Rule.BETWEEN_PIXELS);
  }

  @Test
  void findsAKeyThatSaysNothingToAScreenReader() {
    assertThat(
            rules(
                root -> {
                  Node key = key(30, 40, 18, 18);
                  key.setAccessibleText("");
                  root.getChildren().add(key);
                }))
        .containsOnly(Rule.SILENT);
  }

  @Test
  void findsTwoKeysWithTheSameWords() {
    assertThat(rules(root -> root.getChildren().addAll(worded("More", 10), worded("More", 60))))
        .containsOnly(Rule.TWINS);
    assertThat(rules(root -> root.getChildren().addAll(worded("More", 10), worded("Menu", 60))))
        .isEmpty();
  }

  private Node worded(String words, double x) {
    Region key = touch.key(words, () -> {});
    key.setStyle(KEY);
    key.resizeRelocate(SCALE.px(x), SCALE.px(10), SCALE.px(40), SCALE.px(20));
    key.setManaged(false);
    return key;
  }

  @Test
  void findsAKeyThatIsTooSmall() {
    assertThat(rules(root -> root.getChildren().add(key(10, 10, 17, 18)))).containsOnly(Rule.SIZE);
  }

  @Test
  void findsKeysThatStandTooClose() {
    assertThat(rules(root -> root.getChildren().addAll(key(10, 10, 18, 18), key(31, 10, 18, 18))))
        .containsOnly(Rule.GAP);
  }

  @Test
  void findsTooLittleRoomBesideAKeyThatDiscards() {
    assertThat(
            rules(
                root -> {
                  Node danger = key(40, 10, 22, 22);
                  danger.getProperties().put(Touch.DISCARDS, true);
                  root.getChildren().addAll(key(10, 10, 18, 18), danger);
                }))
        .containsOnly(Rule.GAP);
  }

  @Test
  void findsKeysThatOverlap() {
    assertThat(rules(root -> root.getChildren().addAll(key(10, 10, 18, 18), key(20, 15, 18, 18))))
        .contains(Rule.OVERLAP);
  }

  @Test
  void findsAPlateThatLiesOnAKey() {
    Region plate = new Region();
    plate.setStyle("-fx-background-color: #F2DDA4;");
    plate.setManaged(false);
    plate.resizeRelocate(SCALE.px(5), SCALE.px(5), SCALE.px(40), SCALE.px(10));
    assertThat(rules(root -> root.getChildren().addAll(key(10, 10, 18, 18), plate)))
        .containsOnly(Rule.OVERLAP);
    plate.resizeRelocate(SCALE.px(5), SCALE.px(30), SCALE.px(40), SCALE.px(10));
    assertThat(rules(root -> root.getChildren().setAll(key(10, 10, 18, 18), plate))).isEmpty();
  }

  @Test
  void findsAKeyThatReachesOutOfTheWindow() {
    assertThat(rules(root -> root.getChildren().add(key(190, 10, 18, 18))))
        .containsOnly(Rule.OUTSIDE);
  }

  @Test
  void findsTextThatIsTooSmall() {
    assertThat(rules(root -> root.getChildren().add(text("small", 4.3, Color.BLACK))))
        .containsOnly(Rule.SMALL_TEXT);
  }

  @Test
  void findsTextThatDoesNotFitItsPlate() {
    assertThat(
            rules(
                root -> {
                  Pane plate = new Pane(text("far too many words", 6, Color.BLACK));
                  plate.setManaged(false);
                  plate.resizeRelocate(20, 20, 100, 100);
                  root.getChildren().add(plate);
                }))
        .containsOnly(Rule.CUT_TEXT);
  }

  @Test
  void findsTextThatIsTooPale() {
    assertThat(rules(root -> root.getChildren().add(text("pale", 6, Color.web("#777777")))))
        .containsOnly(Rule.CONTRAST);
  }

  @Test
  void findsTextOnADarkPlateThatWasWrittenForALightOne() {
    assertThat(
            rules(
                root -> {
                  Region plate = new Region();
                  plate.setStyle("-fx-background-color: #333333;");
                  plate.setManaged(false);
                  plate.resizeRelocate(0, 0, 700, 500);
                  root.getChildren().addAll(plate, text("dark", 6, Color.BLACK));
                }))
        .containsOnly(Rule.CONTRAST);
  }

  @Test
  void findsTextThatRunsIntoOtherText() {
    assertThat(
            rules(
                root -> {
                  Text second = text("second", 6, Color.BLACK);
                  second.relocate(60, 50);
                  root.getChildren().addAll(text("first", 6, Color.BLACK), second);
                }))
        .containsOnly(Rule.TEXT_ON_TEXT);
  }

  @Test
  void findsTailsOfLettersThatHangIntoAKey() {
    Node below = key(5, 19, 60, 18);
    assertThat(rules(root -> root.getChildren().addAll(text("gap", 6, Color.BLACK), below)))
        .containsOnly(Rule.TEXT_ON_KEY);
    assertThat(rules(root -> root.getChildren().addAll(text("no", 6, Color.BLACK), below)))
        .isEmpty();
  }

  @Test
  void findsASignThatCannotBeSeen() {
    assertThat(rules(root -> root.getChildren().add(sign("-fx-stroke: #eeeeee;"))))
        .containsOnly(Rule.SIGN);
    assertThat(rules(root -> root.getChildren().add(sign("-fx-stroke: #111111;")))).isEmpty();
  }

  @Test
  void findsAShapeThatNobodyPaints() {
    assertThat(rules(root -> root.getChildren().add(new Circle(60, 60, 20))))
        .containsOnly(Rule.UNPAINTED);
    assertThat(rules(root -> root.getChildren().add(new Line(40, 40, 80, 80))))
        .containsOnly(Rule.UNPAINTED);
    assertThat(rules(root -> root.getChildren().add(new Circle(60, 60, 20, Color.web("#111111")))))
        .isEmpty();
  }

  private static Node sign(String style) {
    Region sign = Icon.CHOSEN.draw(40);
    sign.lookup(".icon-line").setStyle(style);
    return sign;
  }

  @Test
  void findsAKeyWhoseOutlineCannotBeSeen() {
    assertThat(
            rules(
                root -> {
                  Node key = key(10, 10, 18, 18);
                  key.setStyle("-fx-background-color: #cccccc;");
                  root.getChildren().add(key);
                }))
        .containsOnly(Rule.OUTLINE);
  }

  @Test
  void findsWhatAnswersToPressesWithoutBeingMadeAsATarget() {
    assertThat(
            rules(
                root -> {
                  Text text = text("press me", 6, Color.BLACK);
                  text.setOnMouseClicked(event -> {});
                  root.getChildren().add(text);
                }))
        .containsOnly(Rule.UNMARKED);
  }

  /** A row that says it is high before it stands on the glass, and is low there. */
  private static final class Shrinking extends Region {
    @Override
    protected double computeMinHeight(double width) {
      return getParent() == null ? 500 : 60;
    }
  }

  @Test
  void findsRoomThatIsLeftBelowARowForTheNext() {
    assertThat(
            rules(
                root -> {
                  Pager<Region> list = Pager.list(touch, row -> row);
                  list.setItems(List.of(new Shrinking(), new Shrinking(), new Shrinking()));
                  list.setManaged(false);
                  list.resize(700, 400);
                  root.getChildren().add(list);
                }))
        .contains(Rule.ROOM_BELOW);
  }

  @Test
  void findsAStockControl() {
    assertThat(rules(root -> root.getChildren().add(new CheckBox("stock"))))
        .contains(Rule.STOCK_CONTROL);
  }

  @Test
  void findsTextThatIsTooSmallForTheTextSizeThatIsSet() {
    List<Rule> found =
        Toolkit.on(
            () -> {
              Pane root = new Pane(text("small at 200 %", 6, Color.BLACK));
              root.setStyle("-fx-background-color: white;");
              Scene scene = new Scene(root, 800, 600);
              root.applyCss();
              root.layout();
              return Audit.of(scene, new Scale(4, 2)).stream().map(Fault::rule).toList();
            });
    assertThat(found).containsOnly(Rule.SMALL_TEXT);
  }
}
