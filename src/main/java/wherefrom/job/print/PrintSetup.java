package wherefrom.job.print;

import java.util.OptionalInt;

/**
 * What is printed on, and where on it.
 *
 * @param stock a ready stock's name or the path of the user's own stock file
 * @param start the first label to use, 1 for a fresh sheet
 * @param nudge how far the print is moved
 * @param dpi the printer's dots per inch, 203, 300 or 600; empty for what the stock says
 */
public record PrintSetup(String stock, int start, Nudge nudge, OptionalInt dpi) {

  /** A fresh sheet of a stock, unmoved, for the printer it is meant for. */
  public static PrintSetup on(String stock) {
    return new PrintSetup(stock, 1, Nudge.NONE, OptionalInt.empty());
  }

  public PrintSetup startingAt(int label) {
    return new PrintSetup(stock, label, nudge, dpi);
  }

  public PrintSetup nudged(Nudge by) {
    return new PrintSetup(stock, start, by, dpi);
  }
}
