package wherefrom.job;

import java.util.List;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/**
 * A line of the shopping list.
 *
 * @param size {@code standard}, {@code 0.010 in undersize}, or why it is not known yet
 * @param reason why it is bought
 */
public record Replacement(
    PartKind kind, List<Place> places, int pieces, String size, String reason) {
  public Replacement {
    places = List.copyOf(places);
  }
}
