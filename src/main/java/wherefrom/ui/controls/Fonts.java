package wherefrom.ui.controls;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;

/** The one typeface of the window, from its own files. */
public final class Fonts {
  private static final String FAMILY = "B612";

  /** Height of a line as a part of the size: 1930 up and 500 down of 2000 units, from its hhea. */
  static final double LINE = 1.215;

  private static boolean regular;
  private static boolean heavy;

  private Fonts() {}

  /** The typeface at a size in pixels. */
  public static Font of(double px, boolean bold) {
    load(bold);
    return Font.font(FAMILY, bold ? FontWeight.BOLD : FontWeight.NORMAL, px);
  }

  /** Each when it is first wanted. */
  private static synchronized void load(boolean bold) {
    if (bold && !heavy) {
      load("B612-Bold.ttf");
      heavy = true;
    } else if (!bold && !regular) {
      load("B612-Regular.ttf");
      regular = true;
    }
  }

  /** The package has the files beside its runtime too: of any other JavaFX makes a copy first. */
  private static void load(String file) {
    Path beside = Path.of(System.getProperty("java.home", ""), "lib", "fonts", file);
    boolean there = Files.exists(beside) && Font.loadFont(beside.toUri().toString(), 12) != null;
    if (!there) {
      loadResource("/wherefrom/fonts/" + file);
    }
  }

  private static void loadResource(String path) {
    try (InputStream in = Objects.requireNonNull(Fonts.class.getResourceAsStream(path), path)) {
      Objects.requireNonNull(Font.loadFont(in, 12), path);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
