package wherefrom.rules.consequence;

import java.util.Optional;
import wherefrom.engine.RodSpot;
import wherefrom.engine.ShellHalf;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/**
 * One piece to buy, or one piece of work to have done: what, and where on the engine. Whoever asks
 * for the same thing at the same place asks for it once.
 *
 * @param thing what it is, whatever its sort
 * @param sort the sort that it must be of, such as the roller cam; empty where any will do
 * @param at the key of the place of a part, {@code lifter@3EX}; else {@code 3EX}, {@code B3},
 *     {@code M2}, a bank's name, or empty for what an engine has once
 */
public record Wanted(Goods thing, Optional<Article> sort, String at) {

  /** A part; a rod cap is not sold without its rod (common practice, no source). */
  public static Wanted of(Place place, Optional<Article> sort) {
    Place sold =
        place.kind() == PartKind.ROD_CAP
            ? new Place(
                PartKind.ROD, new RodSpot(((RodSpot) place.spot()).cylinder(), ShellHalf.UPPER))
            : place;
    return new Wanted(Goods.of(sold.kind()), sort, sold.key());
  }

  /** What its price is noted under: its sort where that matters, else the thing. */
  public Article article() {
    return sort.orElseGet(() -> new Article.Known(thing));
  }

  /** The place that it is a part for; empty where it is no part that has a place. */
  public Optional<Place> findPlace() {
    return Place.find(at);
  }
}
