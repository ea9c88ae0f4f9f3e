package wherefrom.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import wherefrom.job.pages.RecordSection;
import wherefrom.pdf.Ink;
import wherefrom.pdf.PaperPage;

/** Tables below each other; rows that stand out are in bold behind a black mark. */
final class TablePages {
  private static final double SIZE = 2.7;
  private static final double LINE = 3.5;
  private static final double MARK = 3.6;
  private static final double GAP = 2.2;

  /** Between two tables. */
  private static final double AIR = 4;

  private final Flow flow;

  TablePages(Flow flow) {
    this.flow = flow;
  }

  /** A table with at least one row, under its title. */
  void table(RecordSection section) throws IOException {
    flow.need(22);
    flow.page().words(Flow.LEFT, flow.y() + 3.6, section.title(), 4.2, true);
    flow.down(5.6);
    rows(section);
  }

  /** The same under the title of its page. */
  void rows(RecordSection section) throws IOException {
    double[] columns = flow.page().columns(section, SIZE, GAP, Flow.WIDE - MARK);
    head(section, columns);
    for (RecordSection.Row row : section.rows()) {
      List<List<String>> cells = wrapped(row.cells(), columns, row.open());
      if (flow.y() + lines(cells) * LINE > flow.foot()) {
        flow.need(lines(cells) * LINE);
        head(section, columns);
      }
      row(cells, columns, row.open());
    }
    flow.down(AIR);
  }

  private void head(RecordSection section, double[] columns) throws IOException {
    List<List<String>> names = wrapped(section.columns(), columns, false);
    double x = Flow.LEFT + MARK;
    for (int at = 0; at < columns.length; at++) {
      for (int line = 0; line < names.get(at).size(); line++) {
        double foot = flow.y() + SIZE * 0.9 + line * LINE;
        String name = names.get(at).get(line);
        flow.page().words(x, foot, name, SIZE, false, PaperPage.Side.BEGIN, Ink.DARK);
      }
      x += columns[at];
    }
    flow.down(lines(names) * LINE + 0.6);
    flow.page().line(Flow.LEFT, flow.y() - 0.3, Flow.RIGHT, flow.y() - 0.3, 0.3, Ink.BLACK);
    flow.down(0.6);
  }

  private List<List<String>> wrapped(List<String> cells, double[] columns, boolean open) {
    List<List<String>> wrapped = new ArrayList<>();
    for (int at = 0; at < columns.length; at++) {
      wrapped.add(flow.page().wrap(cells.get(at), SIZE, open, columns[at] - GAP));
    }
    return wrapped;
  }

  /** Of a row; one that is longer than any page is broken where the page ends. */
  private static int lines(List<List<String>> cells) {
    return Math.min(cells.stream().mapToInt(List::size).max().orElse(1), 40);
  }

  private void row(List<List<String>> cells, double[] columns, boolean open) throws IOException {
    int most = cells.stream().mapToInt(List::size).max().orElse(1);
    if (open) {
      flow.page().fill(Flow.LEFT, flow.y() + 0.3, 2, 2, Ink.BLACK);
    }
    for (int line = 0; line < most; line++) {
      flow.need(LINE);
      double x = Flow.LEFT + MARK;
      for (int at = 0; at < columns.length; at++) {
        if (line < cells.get(at).size()) {
          flow.page().words(x, flow.y() + SIZE * 0.85, cells.get(at).get(line), SIZE, open);
        }
        x += columns[at];
      }
      flow.down(LINE);
    }
    flow.page().line(Flow.LEFT, flow.y() - 0.2, Flow.RIGHT, flow.y() - 0.2, 0.1, Ink.GREY);
    flow.down(0.7);
  }
}
