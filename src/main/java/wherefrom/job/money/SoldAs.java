package wherefrom.job.money;

import java.util.EnumSet;
import java.util.Set;
import wherefrom.job.EngineJob;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Goods;

/**
 * How many pieces are usually sold together, and how many more to buy (common practice, no source;
 * a supplier's own package, typed with the offer, counts before it).
 *
 * @param holds pieces in one package, 1 or more
 * @param spares pieces besides those wanted, for what is always lost
 */
public record SoldAs(int holds, int spares) {
  /** Sold for the whole engine, in one size. */
  private static final Set<PartKind> BY_ENGINE =
      EnumSet.of(
          PartKind.ROD_SHELL,
          PartKind.MAIN_SHELL,
          PartKind.CAM_BEARING,
          PartKind.LIFTER,
          PartKind.PUSHROD,
          PartKind.SPRING,
          PartKind.RETAINER,
          PartKind.KEEPERS);

  static SoldAs of(EngineJob job, Article what, int pieces) {
    int holds = what.findGoods().map(goods -> holds(job, goods, pieces)).orElse(1);
    return new SoldAs(holds, Spare.of(what));
  }

  private static int holds(EngineJob job, Goods goods, int pieces) {
    return switch (goods) {
      case ROLLER_LIFTERS, FLAT_LIFTERS -> all(job, PartKind.LIFTER, pieces);
      case RING_SETS, OVERSIZE_RING_SETS, STEM_SEALS -> pieces;
      default ->
          goods
              .findKind()
              .filter(BY_ENGINE::contains)
              .map(kind -> all(job, kind, pieces))
              .orElse(1);
    };
  }

  /** How many of a kind the engine came with; never fewer than are wanted of one. */
  private static int all(EngineJob job, PartKind kind, int pieces) {
    int count =
        job.parts().stream()
            .map(record -> record.part())
            .filter(part -> part.kind() == kind && !part.fresh())
            .mapToInt(Part::pieces)
            .sum();
    return Math.max(1, count == 0 ? pieces : count);
  }

  /** Whole packages for so many pieces. */
  int packages(int pieces) {
    return (pieces + holds - 1) / holds;
  }

  /** {@code sold as a set of 16}. */
  public String words() {
    return holds == 1 ? "sold one by one" : "sold as a set of " + holds + ", or one by one";
  }
}
