package wherefrom.job.money;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wherefrom.job.EngineJob;
import wherefrom.job.bags.BagBook;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Goods;

/** What is always lost or spoiled, and how many more to buy (common practice, no source). */
enum Spare {
  KEEPERS(Goods.KEEPER_PAIRS, 2, "spare: some are always lost"),
  STEM_SEALS(Goods.STEM_SEALS, 2, "spare: some tear as they go on"),
  CORE_PLUGS(Goods.SPARE_PLUGS, 1, "spare: one goes in crooked"),
  SMALL_BOLTS(Goods.SPARE_BOLTS, 2, "spare: some are always lost");

  private static final Set<Goods> APART =
      EnumSet.of(Goods.VALVES, Goods.VALVE_SPRINGS, Goods.RETAINERS, Goods.STEM_SEALS);

  @SuppressWarnings("ImmutableEnumChecker") // a record of a thing
  private final Article what;

  private final int pieces;
  private final String reason;

  Spare(Goods what, int pieces, String reason) {
    this.what = new Article.Known(what);
    this.pieces = pieces;
    this.reason = reason;
  }

  Article what() {
    return what;
  }

  String reason() {
    return reason;
  }

  /** How many to spare of a thing; 0 where none are. */
  static int of(Article what) {
    return find(what).map(spare -> spare.pieces).orElse(0);
  }

  private static Optional<Spare> find(Article what) {
    return Arrays.stream(values()).filter(spare -> spare.what.equals(what)).findFirst();
  }

  /** What is bought for its spares alone, beside what is on the list. */
  static List<Spare> beside(EngineJob job, List<BuyLine> lines) {
    return Arrays.stream(values())
        .filter(spare -> lines.stream().noneMatch(line -> line.what().equals(spare.what)))
        .filter(spare -> spare.isWanted(job, lines))
        .toList();
  }

  private boolean isWanted(EngineJob job, List<BuyLine> lines) {
    return switch (this) {
      case KEEPERS -> has(lines, APART);
      case STEM_SEALS -> false;
      case CORE_PLUGS -> has(lines, EnumSet.of(Goods.PLUGS));
      case SMALL_BOLTS -> !lines.isEmpty() && !BagBook.of(job).bags().isEmpty();
    };
  }

  private static boolean has(List<BuyLine> lines, Set<Goods> any) {
    return lines.stream().anyMatch(one -> one.what().findGoods().filter(any::contains).isPresent());
  }
}
