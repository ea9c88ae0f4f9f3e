package wherefrom.job.money;

import java.util.Optional;
import java.util.Set;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Goods;

/**
 * New rings for a new piston (common practice, no source). Changes that ask for rings at the same
 * bore ask for the same set; where they name its sort, that sort counts.
 */
final class PistonRings {
  private static final Article SET = new Article.Known(Goods.RING_SETS);

  private PistonRings() {}

  /** The set that a new part at this place wants; empty where it is no piston. */
  static Optional<CostAsk> ask(Place place) {
    return Optional.of(place)
        .filter(one -> one.kind() == PartKind.PISTON)
        .map(one -> one.spot().key())
        .map(at -> new CostAsk(SET, at, 1, false, true, Set.of(), "a new piston wants new rings"));
  }
}
