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
 * @param wanted the kind of part that the list wants at the spot, or whose place was pointed at;
 *     empty where neither
 * @param pointed whether the place was pointed at, and so no part of another kind is meant
 * @param untagged whether the part has no tag, and is what a person says; the verdict is the same
 */
public record Attempt(
    Part part,
    Spot spot,
    boolean turned,
    Optional<PartKind> wanted,
    boolean pointed,
    boolean untagged) {

  /** Where no list is followed. */
  public Attempt(Part part, Spot spot, boolean turned) {
    this(part, spot, turned, Optional.empty(), false, false);
  }

  /** Whether the place of another kind of part was pointed at. */
  boolean isPointedElsewhere() {
    return pointed && isOfOtherKind();
  }

  /** Whether the list wants a part of another kind here. */
  boolean isOfOtherKind() {
    return wanted.isPresent() && wanted.get() != part.kind();
  }
}
