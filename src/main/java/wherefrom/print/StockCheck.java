package wherefrom.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import wherefrom.parts.LabelFrame;
import wherefrom.quantity.Length;

/** What is wrong with a stock whose fields are all there. */
final class StockCheck {
  private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9.-]{0,59}");
  private static final int MOST_TITLE = 80;
  private static final double LEAST_PAGE_MM = 10;
  private static final double MOST_PAGE_MM = 1500;

  /** Rounding in a maker's table of sizes may push the last label this far over the edge. */
  private static final double EDGE_SLACK_MM = 0.05;

  private final LabelStock stock;
  private final List<StockFault> faults = new ArrayList<>();

  private StockCheck(LabelStock stock) {
    this.stock = stock;
  }

  static List<StockFault> faults(LabelStock stock) {
    StockCheck check = new StockCheck(stock);
    check.names();
    check.sizes();
    check.gaps();
    check.punch();
    if (check.faults.isEmpty()) {
      check.onThePage();
      check.readable();
    }
    return List.copyOf(check.faults);
  }

  private void names() {
    if (stock.title().length() > MOST_TITLE) {
      fault("title", "title is longer than " + MOST_TITLE + " letters: shorten it.");
    }
    if (!NAME.matcher(stock.name()).matches()) {
      fault("name", "name must be small letters, digits, points and hyphens, at most 60 of them.");
    }
    if (!PrinterDots.isKnown(stock.dpi())) {
      fault("dpi", "dpi must be 203, 300 or 600, not " + stock.dpi() + ".");
    }
    if (stock.labelsPerPage() > 1 && stock.medium() == Medium.ROLL) {
      fault("columns", "columns and rows must be 1 on a roll: each page is one label.");
    }
  }

  private void sizes() {
    side("page.width", stock.page().width());
    side("page.height", stock.page().height());
    atLeastZero("label.width", stock.label().width(), "a label has a size above 0.");
    atLeastZero("label.height", stock.label().height(), "a label has a size above 0.");
  }

  private void side(String field, Length length) {
    if (length.millimetres() < LEAST_PAGE_MM || length.millimetres() > MOST_PAGE_MM) {
      fault(field, field + " must be between 10 mm and 1500 mm (0.4 and 59 in).");
    }
  }

  private void gaps() {
    atLeastZero("left", stock.left(), "the labels would leave the page.");
    atLeastZero("top", stock.top(), "the labels would leave the page.");
    atLeastZero("gapAcross", stock.gapAcross(), "the labels would overlap.");
    atLeastZero("gapDown", stock.gapDown(), "the labels would overlap.");
  }

  private void atLeastZero(String field, Length length, String because) {
    if (length.nanometres() < 0) {
      fault(field, field + " is below 0: " + because);
    }
  }

  private void punch() {
    double half =
        Math.max(stock.label().width().millimetres(), stock.label().height().millimetres()) / 2;
    if (stock.keepOut().nanometres() < 0 || stock.keepOut().millimetres() > half) {
      fault("punch.keepOut", "punch.keepOut must be between 0 and half the label's long side.");
    }
  }

  private void onThePage() {
    Box last = stock.labelBox(stock.labelsPerPage() - 1);
    double across = last.right() - stock.page().width().millimetres();
    double down = last.bottom() - stock.page().height().millimetres();
    if (across > EDGE_SLACK_MM) {
      offPage("label.width", across, "right", "left, columns, label.width and gapAcross");
    }
    if (down > EDGE_SLACK_MM) {
      offPage("label.height", down, "bottom", "top, rows, label.height and gapDown");
    }
  }

  private void offPage(String field, double by, String edge, String fields) {
    fault(
        field,
        String.format(
            Locale.ROOT,
            "The labels (%s) run %.1f mm over the page's %s edge: check %s.",
            field,
            by,
            edge,
            fields));
  }

  private void readable() {
    if (LabelPlan.find(stock, stock.dpi()).isPresent()) {
      return;
    }
    double symbol = Math.ceil(LabelPlan.LEAST_MODULE_MM * LabelFrame.WIDTH);
    fault(
        "label.width",
        String.format(
            Locale.ROOT,
            "label.width and label.height leave no room for a tag that can be read: it needs"
                + " modules of at least %.3f mm, which makes %.0f mm for the symbol with its"
                + " frame, and %.0f mm beside or above it for words.",
            LabelPlan.LEAST_MODULE_MM,
            symbol,
            LabelPlan.LEAST_TEXT_MM));
  }

  private void fault(String field, String sentence) {
    faults.add(new StockFault(field, sentence));
  }
}
