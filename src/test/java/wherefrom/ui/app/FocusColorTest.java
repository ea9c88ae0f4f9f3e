package wherefrom.ui.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.Test;

/** The ring of whoever works by keys is told from the yellow tag and from the ground, 3 to 1. */
class FocusColorTest {
  private final String light;
  private final String dark;

  FocusColorTest() throws IOException {
    try (InputStream file =
        Objects.requireNonNull(Shell.class.getResourceAsStream("/wherefrom/ui/wherefrom.css"))) {
      String[] looks =
          new String(file.readAllBytes(), StandardCharsets.UTF_8).split("\\.bench\\.dark \\{", 2);
      light = looks[0];
      dark = looks[1];
    }
  }

  private static Color token(String look, String name) {
    Matcher found = Pattern.compile("-wf-" + name + ": (#[0-9a-f]{6});").matcher(look);
    assertThat(found.find()).as(name).isTrue();
    return Color.web(found.group(1));
  }

  private static double part(double channel) {
    return channel <= 0.04045 ? channel / 12.92 : Math.pow((channel + 0.055) / 1.055, 2.4);
  }

  private static double light(Color color) {
    return 0.2126 * part(color.getRed())
        + 0.7152 * part(color.getGreen())
        + 0.0722 * part(color.getBlue());
  }

  private static double contrast(Color one, Color other) {
    double more = Math.max(light(one), light(other));
    return (more + 0.05) / (Math.min(light(one), light(other)) + 0.05);
  }

  @Test
  void inTheLightTheRingItselfStandsOffPaperAndGround() {
    Color ring = token(light, "focus");
    assertThat(contrast(ring, token(light, "paper"))).isGreaterThan(3);
    assertThat(contrast(ring, token(light, "ground"))).isGreaterThan(3);
  }

  /** There the band of ground inside the ring parts it from the paper. */
  @Test
  void inTheDarkItsTwoBandsDo() {
    Color ground = token(dark, "ground");
    assertThat(contrast(token(dark, "focus"), ground)).isGreaterThan(3);
    assertThat(contrast(ground, token(dark, "paper"))).isGreaterThan(3);
  }
}
