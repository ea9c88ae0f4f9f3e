package wherefrom.ui.sample;

import java.util.List;

/**
 * A piece of glass that the window has to fit.
 *
 * @param width in pixels
 * @param height in pixels
 * @param pixelsPerMm as measured with a card
 */
public record Glass(String name, int width, int height, double pixelsPerMm) {
  /** A tablet of 10 inches: 217 by 136 mm. */
  public static final Glass TABLET = new Glass("tablet", 1280, 800, 5.9);

  /** An old netbook of 10 inches: 218 by 128 mm. */
  public static final Glass SMALL = new Glass("small", 1024, 600, 4.7);

  /** A tablet of 10 inches with fine pixels: 221 by 124 mm. */
  public static final Glass FINE = new Glass("fine", 1920, 1080, 8.7);

  /** A laptop of 16 inches: 354 by 199 mm. */
  public static final Glass LAPTOP = new Glass("laptop", 1920, 1080, 5.43);

  /** The tablet held upright: 136 by 217 mm. */
  public static final Glass UPRIGHT = new Glass("upright", 800, 1280, 5.9);

  /** A screen that nobody has measured: 338 by 212 mm by the browser's inch. */
  public static final Glass GUESSED = new Glass("guessed", 1280, 800, 96 / 25.4);

  public static List<Glass> all() {
    return List.of(TABLET, SMALL, FINE, LAPTOP, UPRIGHT, GUESSED);
  }

  /** The one of a name. */
  public static Glass named(String name) {
    return all().stream().filter(glass -> glass.name().equals(name)).findFirst().orElseThrow();
  }

  @Override
  public String toString() {
    return name;
  }
}
