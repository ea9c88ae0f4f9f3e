package wherefrom.rules;

import java.util.Optional;
import wherefrom.engine.Spot;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;

/**
 * A part held at a spot.
 *
 * @param turned true when the person says that the part would go in end for end or the other way
 *     round
 * @param wanted the kind of part that the list wants at the spot; empty where no list is followed
 */
public record Attempt(Part part, Spot spot, boolean turned, Optional<PartKind> wanted) {

  /** Where no list is followed. */
  public Attempt(Part part, Spot spot, boolean turned) {
    this(part, spot, turned, Optional.empty());
  }

  /** Whether the list wants a part of another kind here. */
  boolean isOfOtherKind() {
    return wanted.isPresent() && wanted.get() != part.kind();
  }
}
