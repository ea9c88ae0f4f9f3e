package wherefrom.ui.controls;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.Test;
import wherefrom.ui.Toolkit;

/** What is chosen bears a ticked box beside its words, and is said to be chosen. */
class ChosenMarkTest {
  private final Touch touch = new Touch(new Scale(5.9, 1), System::nanoTime);

  private record Shown(String spoken, boolean boxed, boolean apart) {}

  private static Shown shown(Region key) {
    Pane root = new Pane(key);
    Scene scene = new Scene(root, 900, 400);
    key.setPrefWidth(300);
    root.applyCss();
    root.layout();
    assertThat(scene.getRoot()).isSameAs(root);
    Optional<Node> box =
        key.getChildrenUnmodifiable().stream()
            .filter(child -> child instanceof Pane && !child.isManaged() && child.isVisible())
            .findFirst();
    boolean apart =
        box.map(Node::getBoundsInParent)
            .filter(at -> key.getLayoutBounds().contains(at))
            .filter(at -> key.getChildrenUnmodifiable().stream().noneMatch(it -> isOver(it, at)))
            .isPresent();
    return new Shown(key.getAccessibleText(), box.isPresent(), apart);
  }

  private static boolean isOver(Node child, Bounds box) {
    return child instanceof FitText words && words.getBoundsInParent().intersects(box);
  }

  @Test
  void aKeyBearsItWhileItIsChosen() {
    List<Shown> seen =
        Toolkit.on(
            () -> {
              TouchKey key = touch.key("Scan both", () -> {});
              return List.of(
                  shown(key),
                  shown(key.select(true)),
                  shown(key.select(true)),
                  shown(key.select(false)));
            });
    assertThat(seen)
        .containsExactly(
            new Shown("Scan both", false, false),
            new Shown("Scan both, chosen", true, true),
            new Shown("Scan both, chosen", true, true),
            new Shown("Scan both", false, false));
  }

  @Test
  void newWordsKeepIt() {
    Shown seen =
        Toolkit.on(
            () -> {
              TouchKey key = touch.key("Intake", () -> {}).select(true);
              key.setWords("Exhaust");
              return shown(key);
            });
    assertThat(seen).isEqualTo(new Shown("Exhaust, chosen", true, true));
  }

  @Test
  void rowsOfAListAndKeysWithAPictureBearItToo() {
    List<Shown> seen =
        Toolkit.on(
            () ->
                List.of(
                    shown(
                        ListRow.key(touch, "Dark", List.of("light letters"), () -> {})
                            .select(true)),
                    shown(
                        PictureKey.of(
                                touch,
                                Optional.empty(),
                                "Fail",
                                "",
                                OptionalDouble.empty(),
                                () -> {})
                            .select(true))));
    assertThat(seen)
        .containsExactly(
            new Shown("Dark. light letters, chosen", true, true),
            new Shown("Fail, chosen", true, true));
  }

  @Test
  void aKeyThatOnlyStandsOutBearsNone() {
    Shown seen = Toolkit.on(() -> shown(touch.key("Help", () -> {}).stress(true)));
    assertThat(seen).isEqualTo(new Shown("Help", false, false));
  }
}
