package wherefrom.print;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import wherefrom.files.Progress;
import wherefrom.job.print.Face;
import wherefrom.job.print.PrintOrder;

/** Lays tags and cards out on the pages of a stock. */
final class TagSheets {
  private final LabelStock stock;
  private final LabelPlan plan;
  private final PrintOrder order;

  TagSheets(LabelStock stock, LabelPlan plan, PrintOrder order) {
    this.stock = stock;
    this.plan = plan;
    this.order = order;
  }

  /** The pages it takes when the first label to use is not the sheet's first. */
  int pages() {
    int used = order.setup().start() - 1 + order.faces().size();
    return (used + stock.labelsPerPage() - 1) / stock.labelsPerPage();
  }

  void draw(PdfPages pdf) throws IOException {
    draw(pdf, Integer.MAX_VALUE);
  }

  /**
   * Draws the pages, or as many of them as are wanted.
   *
   * @param most how many pages at most
   */
  void draw(PdfPages pdf, int most) throws IOException {
    Composer composer = new Composer(plan, pdf.letters());
    SheetMargin margin = new SheetMargin(stock, pdf.letters());
    PdfPages.Background background = pdf.background(stock.page(), margin.alike());
    int next = 0;
    int label = order.setup().start() - 1;
    for (int page = 1; page <= Math.min(most, pages()); page++) {
      List<PdfPages.Placed> content = new ArrayList<>();
      content.add(new PdfPages.Placed(margin.number(order.title(), page, pages()), 0, 0));
      while (label < stock.labelsPerPage() && next < order.faces().size()) {
        addLabel(content, label, composer, order.faces().get(next));
        label++;
        next++;
        Progress.step(next, order.faces().size());
      }
      pdf.add(stock.page(), background, content);
      label = 0;
    }
  }

  private void addLabel(List<PdfPages.Placed> content, int label, Composer composer, Face face) {
    double right = order.setup().nudge().rightMm();
    double down = order.setup().nudge().downMm();
    Box box = stock.labelBox(label);
    content.add(new PdfPages.Placed(composer.compose(face), box.x() + right, box.y() + down));
    if (stock.cutMarks()) {
      content.add(new PdfPages.Placed(CutTicks.round(box), right, down));
    }
  }
}
