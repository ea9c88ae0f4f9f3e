package wherefrom.ui.subject;

import java.util.Optional;
import java.util.OptionalDouble;
import javafx.scene.layout.Region;

/**
 * A key among many.
 *
 * @param words what it opens
 * @param more how that stands
 * @param picture what it looks like, of a fixed size
 * @param done how much of it is done, from 0 to 1; empty where that is not counted
 * @param chosen whether it is one of those that are chosen
 */
public record Cell(
    String words,
    String more,
    Runnable act,
    Optional<Region> picture,
    OptionalDouble done,
    boolean chosen) {
  public Cell(String words, String more, Runnable act) {
    this(words, more, act, Optional.empty(), OptionalDouble.empty());
  }

  public Cell(
      String words, String more, Runnable act, Optional<Region> picture, OptionalDouble done) {
    this(words, more, act, picture, done, false);
  }
}
