package wherefrom.ui.print;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import wherefrom.job.pages.PaperSize;
import wherefrom.job.print.Stock;

/** Which label stock comes first, by the paper that is usual in a country. */
final class UsualPaper {
  private UsualPaper() {}

  /** The same stocks, those on the usual paper first; among them sheets of labels before card. */
  static List<Stock> first(List<Stock> stocks, Locale here) {
    String usual = PaperSize.usual(here) == PaperSize.LETTER ? "letter-" : "a4-";
    return stocks.stream()
        .sorted(Comparator.comparing(stock -> rank(stock.name(), usual)))
        .toList();
  }

  private static int rank(String name, String usual) {
    if (name.startsWith(usual)) {
      return 0;
    }
    return name.startsWith("card-" + usual) ? 1 : 2;
  }
}
