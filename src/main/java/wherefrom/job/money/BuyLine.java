package wherefrom.job.money;

import java.util.List;
import java.util.Optional;
import wherefrom.parts.PartKind;
import wherefrom.quantity.Amount;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Goods;
import wherefrom.text.Words;

/**
 * A line of the buying list, with what came of it.
 *
 * @param size the size that must be bought; of valves their side; empty where the thing has none
 * @param step that size as a step from standard; empty where it is none
 * @param pieces how many are wanted, without spares
 * @param ordered whether a cost line says that it is committed or paid
 * @param arrived pieces that came and were right
 * @param inSet pieces that a gasket set brings that was ordered or is here
 * @param numbers its part numbers, as typed from boxes
 */
public record BuyLine(
    Article what,
    String size,
    Optional<Amount> step,
    int pieces,
    SoldAs soldAs,
    boolean ordered,
    int arrived,
    int inSet,
    List<String> numbers,
    String reason) {
  public BuyLine {
    numbers = List.copyOf(numbers);
  }

  /** Pieces still to come, spares among them; never negative. */
  public int open() {
    return Math.max(0, wanted() - arrived - inSet);
  }

  private int wanted() {
    return pieces + soldAs.spares();
  }

  public boolean isGasketSet() {
    return what.equals(GasketSet.WHAT);
  }

  /** Whether it is the same line, whatever came of it. */
  public boolean isLineOf(BuyLine other) {
    return isAlike(other) && reason.equals(other.reason);
  }

  /** Whether what comes for the one serves the other: the same thing in the same size. */
  boolean isAlike(BuyLine other) {
    return what.equals(other.what) && size.equalsIgnoreCase(other.size);
  }

  boolean isSameThing(BuyLine other) {
    return what.equals(other.what);
  }

  /** Takes of so many pieces what it wants; the last of several alike takes all. */
  BuyLine taking(int came, boolean last) {
    int taken = last ? came : Math.min(came, wanted());
    return new BuyLine(what, size, step, pieces, soldAs, ordered, taken, inSet, numbers, reason);
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
    if (pieces == 0) {
      return what.words() + ", to spare";
    }
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
    String set = inSet == 0 ? "" : ", " + inSet + " in the gasket set";
    return arrived + " of " + wanted() + " here" + set + (ordered ? ", ordered" : "");
  }
}
