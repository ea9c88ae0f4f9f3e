package wherefrom.job.money;

import java.util.List;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Goods;
import wherefrom.rules.size.GoodsSize;
import wherefrom.text.Words;

/**
 * A line of the buying list, with what came of it.
 *
 * @param size the size that must be bought; of valves their side
 * @param sizeWords that size as it is shown, with what it follows from; empty where it has none
 * @param pieces how many are wanted, without spares
 * @param ordered whether a cost line says that it is committed or paid
 * @param arrived pieces that came and were right
 * @param inSet pieces that a gasket set brings that was ordered or is here
 * @param numbers its part numbers, as typed from boxes
 */
public record BuyLine(
    Article what,
    GoodsSize size,
    String sizeWords,
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

  /** Whether it is a kind of part that carries a tag. */
  public boolean isTagged() {
    return what.findGoods().flatMap(Goods::findKind).isPresent();
  }

  /** Whether it is the same line, whatever came of it. */
  public boolean isLineOf(BuyLine other) {
    return isAlike(other) && reason.equals(other.reason);
  }

  /** Whether what comes for the one serves the other: the same thing in the same size. */
  boolean isAlike(BuyLine other) {
    return what.equals(other.what) && size.equals(other.size);
  }

  boolean isSameThing(BuyLine other) {
    return what.equals(other.what);
  }

  /** Takes of so many pieces what it wants; the last of several alike takes all. */
  BuyLine taking(int came, boolean last) {
    int taken = last ? came : Math.min(came, wanted());
    return new BuyLine(
        what, size, sizeWords, pieces, soldAs, ordered, taken, inSet, numbers, reason);
  }

  /** Whole packages still to buy, as such things are usually sold. */
  public int packages() {
    return soldAs.packages(open());
  }

  /** {@code 16 rod shells, 0.010 in under}. */
  public String words() {
    String counted = pieces == 0 ? what.words() + ", to spare" : what.counted(pieces);
    return counted + (sizeWords.isEmpty() ? "" : ", " + sizeWords);
  }

  /** {@code buy 1 set of 16}, {@code buy 1, or a set of 16}: what to ask for at the counter. */
  public String orderWords() {
    return open() == 0 ? "all here" : "buy " + orderCount() + spareWords();
  }

  private String orderCount() {
    int holds = soldAs.holds();
    if (!what.isCounted()) {
      return "as many as the engine has";
    }
    if (holds == 1) {
      return open() + "";
    }
    return open() < holds
        ? open() + ", or a set of " + holds
        : Words.count(packages(), "set") + " of " + holds;
  }

  /** {@code sold as a set of 16, or one by one}: how such a thing is usually packed. */
  public String packageWords() {
    return isGasketSet() ? "sold as one set for the engine" : soldAs.words();
  }

  private String spareWords() {
    return soldAs.spares() == 0
        ? ""
        : ", " + soldAs.spares() + " to spare (common practice, no source)";
  }

  /** {@code 8 of 16 are here}. */
  public String arrivedWords() {
    String set = inSet == 0 ? "" : ", " + inSet + " in the gasket set";
    String here = arrived == 0 ? "none here" : "here";
    return (what.isCounted() ? arrived + " of " + wanted() + " here" : here)
        + set
        + (ordered ? ", ordered" : "");
  }
}
