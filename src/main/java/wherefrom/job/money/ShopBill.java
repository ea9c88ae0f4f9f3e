package wherefrom.job.money;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Goods;

/** Lines that shops write for several pieces of work at once (common practice, no source). */
public enum ShopBill {
  CRANK_GROUND("crankshaft ground", Goods.ROD_GRINDING, Goods.MAIN_GRINDING, Goods.POLISHING),
  BORED_AND_HONED("bored and honed", Goods.BORING, Goods.HONING),
  HEADS_REWORKED(
      "heads reworked", Goods.HEAD_MILLING, Goods.VALVE_JOB, Goods.SEATS_CUT, Goods.STUD_TAPPING);

  private final String words;

  @SuppressWarnings("ImmutableEnumChecker") // Set.of cannot be changed
  private final Set<Goods> work;

  ShopBill(String words, Goods... work) {
    this.words = words;
    this.work = Set.of(work);
  }

  /** As it is offered, and so as cost lines name it in logbooks. */
  public String words() {
    return words;
  }

  /** The lines that pay for a piece of work. */
  static List<Article> listOf(Goods work) {
    return Arrays.stream(values())
        .filter(bill -> bill.work.contains(work))
        .map(bill -> Article.read(bill.words))
        .toList();
  }
}
