package wherefrom.ui.sample;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import wherefrom.job.image.ColourImage;
import wherefrom.job.print.PrintOrder;
import wherefrom.job.print.SheetPrinter;

/** Pages as the real printer draws them; the same page is drawn once for all windows. */
final class Previews {
  private static final int MOST = 40;

  private record Page(PrintOrder order, int number, int longest) {}

  private final Map<Page, Optional<ColourImage>> drawn =
      new LinkedHashMap<>(MOST, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Page, Optional<ColourImage>> eldest) {
          return size() > MOST;
        }
      };

  synchronized Optional<ColourImage> of(
      SheetPrinter drawer, PrintOrder order, int page, int longest) throws IOException {
    Page wanted = new Page(order, page, longest);
    Optional<ColourImage> known = drawn.getOrDefault(wanted, Optional.empty());
    if (known.isPresent()) {
      return known;
    }
    Optional<ColourImage> fresh = drawer.preview(order, page, longest);
    drawn.put(wanted, fresh);
    return fresh;
  }
}
