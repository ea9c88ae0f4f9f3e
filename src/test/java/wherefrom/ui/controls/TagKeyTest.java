package wherefrom.ui.controls;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import javafx.scene.Scene;
import javafx.scene.layout.Pane;
import org.junit.jupiter.api.Test;
import wherefrom.ui.Toolkit;
import wherefrom.ui.audit.Audit;

/** The tag to press: large enough, readable in both looks, said aloud with both its lines. */
class TagKeyTest {
  private final Scale scale = new Scale(5.9, 1);
  private final Touch touch = new Touch(scale, System::nanoTime);

  private static Scene scene(boolean dark, TagKey tag) {
    Pane root = new Pane(tag);
    root.getStyleClass().add("bench");
    root.setStyle("-fx-background-color: -wf-ground;");
    if (dark) {
      root.getStyleClass().add("dark");
    }
    Scene scene = new Scene(root, 900, 400);
    scene
        .getStylesheets()
        .add(
            Objects.requireNonNull(TagKeyTest.class.getResource("/wherefrom/ui/wherefrom.css"))
                .toExternalForm());
    tag.relocate(24, 24);
    tag.setPrefWidth(514);
    // As a screen does, in whole pixels.
    tag.setPrefHeight(Math.ceil(tag.minHeight(514)));
    root.applyCss();
    root.layout();
    return scene;
  }

  @Test
  void itIsReadableAndLargeInBothLooks() {
    for (boolean dark : new boolean[] {false, true}) {
      assertThat(
              Toolkit.on(
                  () -> {
                    TagKey tag = touch.tag("Scan the right part", "or type its code", () -> {});
                    Scene scene = scene(dark, tag);
                    assertThat(tag.getHeight()).isGreaterThanOrEqualTo(scale.px(22));
                    return Audit.of(scene, scale);
                  }))
          .as(dark ? "dark" : "light")
          .isEmpty();
    }
  }

  @Test
  void bothItsLinesAreSaidAloud() {
    String[] spoken =
        Toolkit.on(
            () -> {
              TagKey tag = touch.tag("Print", "", () -> {});
              String first = tag.getAccessibleText();
              tag.setWords("It is out", "or scan any tag");
              return new String[] {first, tag.getAccessibleText()};
            });
    assertThat(spoken).containsExactly("Print", "It is out, or scan any tag");
  }

  @Test
  void theWireEndsAtItsEyelet() {
    double eyelet =
        Toolkit.on(
            () -> {
              TagKey tag = touch.tag("Print", "", () -> {});
              scene(false, tag);
              return tag.eyeletX();
            });
    assertThat(eyelet).isBetween(scale.px(3), scale.px(9));
  }
}
