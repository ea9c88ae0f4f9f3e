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
 */
public record Cell(
    String words, String more, Runnable act, Optional<Region> picture, OptionalDouble done) {
  public Cell(String words, String more, Runnable act) {
    this(words, more, act, Optional.empty(), OptionalDouble.empty());
  }
}
