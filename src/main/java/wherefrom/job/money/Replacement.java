package wherefrom.job.money;

import java.util.List;
import java.util.Optional;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.quantity.Amount;

/**
 * A line of the shopping list: parts of one kind and size.
 *
 * @param size {@code standard}, {@code 0.010 in under (ten under)}, or why it is not known yet
 * @param step that size as a step from standard; empty where it is not known, or has none
 * @param reason why it is bought
 */
public record Replacement(
    PartKind kind,
    List<Place> places,
    int pieces,
    String size,
    Optional<Amount> step,
    String reason) {
  public Replacement {
    places = List.copyOf(places);
  }
}
