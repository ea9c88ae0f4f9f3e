package wherefrom.job.money;

import java.util.Optional;
import wherefrom.parts.PartKind;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Goods;
import wherefrom.text.Words;

/**
 * A line of the buying list, with what came of it.
 *
 * @param size the size that must be bought; empty where the thing has none
 * @param pieces how many are wanted, without spares
 * @param ordered whether a cost line says that it is committed or paid
 * @param arrived pieces that came and were right
 */
public record BuyLine(
    Article what,
    String size,
    int pieces,
    SoldAs soldAs,
    boolean ordered,
    int arrived,
    String reason) {

  /** Pieces still to come, spares among them; never negative. */
  public int open() {
    return Math.max(0, pieces + soldAs.spares() - arrived);
  }

  /** Whole packages still to buy, as such things are usually sold. */
  public int packages() {
    return soldAs.packages(open());
  }

  /** {@code 16 rod shells, 0.010 in under}. */
  public String words() {
    return counted() + (size.isEmpty() ? "" : ", " + size);
  }

  /** Parts are counted; of things that are words in the plural anyhow it is said how many times. */
  private String counted() {
    Optional<PartKind> kind =
        what.findGoods().flatMap(Goods::findKind).filter(one -> one.plural().equals(what.words()));
    return kind.map(one -> Words.count(pieces, one.word(), one.plural()))
        .orElseGet(() -> pieces + " × " + what.words());
  }

  /** {@code 1 set of 16}, {@code 3, 2 of them spare}: what to ask for at the counter. */
  public String orderWords() {
    String count = soldAs.holds() == 1 ? open() + "" : packages() + " × a set of " + soldAs.holds();
    return open() == 0 ? "all here" : "buy " + count + spareWords();
  }

  private String spareWords() {
    return soldAs.spares() == 0
        ? ""
        : ", " + soldAs.spares() + " to spare (common practice, no source)";
  }

  /** {@code 8 of 16 are here}. */
  public String arrivedWords() {
    return arrived + " of " + (pieces + soldAs.spares()) + " here" + (ordered ? ", ordered" : "");
  }
}
