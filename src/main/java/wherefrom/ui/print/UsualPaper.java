package wherefrom.ui.print;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import wherefrom.job.print.Stock;

/** Which label stock comes first, by the paper that is usual in a country. */
final class UsualPaper {
  /** Where paper is Letter (Unicode CLDR, supplemental measurement data; from memory). */
  private static final Set<String> LETTER =
      Set.of("BZ", "CA", "CL", "CO", "CR", "GT", "MX", "NI", "PA", "PH", "PR", "SV", "US", "VE");

  private UsualPaper() {}

  /** The same stocks, those on the usual paper first; among them sheets of labels before card. */
  static List<Stock> first(List<Stock> stocks, Locale here) {
    String usual = LETTER.contains(here.getCountry()) ? "letter-" : "a4-";
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
