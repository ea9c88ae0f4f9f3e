package wherefrom.rules;

import wherefrom.engine.Spot;
import wherefrom.parts.Part;

/**
 * A part held at a spot.
 *
 * @param turned true when the person says that the part would go in end for end or the other way
 *     round
 */
public record Attempt(Part part, Spot spot, boolean turned) {}
