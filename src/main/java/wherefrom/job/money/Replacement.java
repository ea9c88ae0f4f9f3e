package wherefrom.job.money;

import java.util.List;
import java.util.Optional;
import wherefrom.engine.ValveSide;
import wherefrom.engine.ValveSpot;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.rules.size.GoodsSize;

/**
 * A line of the shopping list: parts of one kind and size.
 *
 * @param side of valves, as intake and exhaust valves are of two sizes; empty for all else
 * @param size what it is bought in; of valves their side; none where it is not known yet
 * @param sizeWords {@code 0.010 in under (ten under), once ground}, or why it is not known yet
 * @param reason why it is bought
 */
public record Replacement(
    PartKind kind,
    Optional<ValveSide> side,
    List<Place> places,
    int pieces,
    GoodsSize size,
    String sizeWords,
    String reason) {
  public Replacement {
    places = List.copyOf(places);
  }

  /** On which side a place of a valve is; empty for all else. */
  static Optional<ValveSide> findSide(Place place) {
    return place.kind() == PartKind.VALVE
        ? Optional.of(((ValveSpot) place.spot()).side())
        : Optional.empty();
  }

  /** {@code rod shells}, {@code intake valves}. */
  public String named() {
    return ofSide(kind.plural());
  }

  /** {@code 16 rod shells}, {@code 1 intake valve}. */
  public String counted() {
    return pieces + " " + ofSide(pieces == 1 ? kind.word() : kind.plural());
  }

  private String ofSide(String parts) {
    return side.map(one -> one.word() + " " + parts).orElse(parts);
  }
}
