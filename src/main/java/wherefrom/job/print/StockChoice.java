package wherefrom.job.print;

import java.util.List;

/** What came of asking for a label stock. */
public sealed interface StockChoice {

  /** It can be printed on. */
  record Chosen(Stock stock) implements StockChoice {}

  /**
   * It cannot be printed on.
   *
   * @param sentences what is wrong and what to do, at least one; each names its field
   */
  record Refused(List<String> sentences) implements StockChoice {
    public Refused {
      sentences = List.copyOf(sentences);
    }
  }
}
