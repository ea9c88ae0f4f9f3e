package wherefrom.job.money;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Goods;

/** Lines that shops write for several pieces of work at once (common practice, no source). */
public enum ShopBill {
  CRANK_GROUND(Goods.CRANK_GROUND, Goods.ROD_GRINDING, Goods.MAIN_GRINDING, Goods.POLISHING),
  BORED_AND_HONED(Goods.BORED_AND_HONED, Goods.BORING, Goods.HONING),
  HEADS_REWORKED(
      Goods.HEADS_REWORKED,
      Goods.HEAD_MILLING,
      Goods.VALVE_JOB,
      Goods.SEATS_CUT,
      Goods.STUD_TAPPING);

  private final Goods bill;

  @SuppressWarnings("ImmutableEnumChecker") // Set.of cannot be changed
  private final Set<Goods> work;

  ShopBill(Goods bill, Goods... work) {
    this.bill = bill;
    this.work = Set.of(work);
  }

  /** As it is offered. */
  public String words() {
    return bill.words();
  }

  /** The lines that pay for a piece of work. */
  static List<Article> listOf(Goods work) {
    return Arrays.stream(values())
        .filter(line -> line.work.contains(work))
        .<Article>map(line -> new Article.Known(line.bill))
        .toList();
  }
}
