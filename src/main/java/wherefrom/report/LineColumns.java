package wherefrom.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import wherefrom.drawing.Sign;
import wherefrom.job.pages.LimitBar;
import wherefrom.job.pages.RecordColumn;
import wherefrom.job.pages.RecordLine;
import wherefrom.pdf.Ink;
import wherefrom.pdf.PaperPage;
import wherefrom.pdf.PaperPage.Side;

/** Lines in columns beside each other; each reading lies on a line with its limits as walls. */
final class LineColumns {
  private static final double GAP = 5.16;
  private static final double MARK = 3;
  private static final double LEAST = 2.4;
  private static final double ROW = 4.9;
  private static final double BAR_ROW = 8.3;

  private final Flow flow;
  private final double wide;

  /**
   * @param across how many columns share the page's width
   */
  LineColumns(Flow flow, int across) {
    this.flow = flow;
    this.wide = (Flow.WIDE - (across - 1) * GAP) / across;
  }

  /** Where a column begins. */
  double x(int column) {
    return Flow.LEFT + column * (wide + GAP);
  }

  /**
   * Draws them; what does not fit goes to the next page.
   *
   * @param titled whether their titles stand above them
   */
  void draw(List<RecordColumn> columns, boolean titled) throws IOException {
    List<RecordColumn> rest = columns;
    boolean titles = titled;
    while (rest.stream().anyMatch(column -> !column.lines().isEmpty())) {
      flow.need(BAR_ROW + (titles ? 6 : 0));
      rest = page(rest, titles);
      titles = true;
    }
  }

  /** As much as the page takes; gives what is left of each column. */
  private List<RecordColumn> page(List<RecordColumn> columns, boolean titles) throws IOException {
    List<RecordColumn> rest = new ArrayList<>();
    double top = flow.y();
    double reached = top;
    for (int at = 0; at < columns.size(); at++) {
      double y = top;
      if (titles) {
        flow.page().words(x(at), y + 3.4, columns.get(at).title(), 4, true);
        y += 6;
      }
      List<RecordLine> lines = columns.get(at).lines();
      int next = 0;
      while (next < lines.size() && y + height(lines.get(next)) <= flow.foot()) {
        line(lines.get(next), x(at), y);
        y += height(lines.get(next++));
      }
      rest.add(new RecordColumn(columns.get(at).title(), lines.subList(next, lines.size())));
      reached = Math.max(reached, y);
    }
    flow.to(rest.stream().allMatch(one -> one.lines().isEmpty()) ? reached : flow.foot());
    return rest;
  }

  private static double height(RecordLine line) {
    return line.bar().isPresent() ? BAR_ROW : ROW;
  }

  private void line(RecordLine line, double x, double y) throws IOException {
    PaperPage page = flow.page();
    double foot = y + 3;
    String told = page.shorten(line.told(), Flow.TEXT, true, wide * (line.head() ? 0.7 : 0.5));
    double room = wide - page.widthOf(told, Flow.TEXT, true) - 1.5;
    if (line.bar().isEmpty()) {
      room -= mark(line, x + room, y);
    }
    double runs = page.widthOf(line.name(), Flow.TEXT, line.head());
    double size = Math.max(LEAST, Math.min(Flow.TEXT, Flow.TEXT * room / runs));
    page.words(x, foot, page.shorten(line.name(), size, line.head(), room), size, line.head());
    page.words(x + wide, foot, told, Flow.TEXT, true, Side.END, Ink.BLACK);
    if (line.bar().isPresent()) {
      bar(line, line.bar().get(), x, y + 5.6);
    } else {
      page.line(x, y + 4.1, x + wide, y + 4.1, 0.14, Ink.GREY);
    }
  }

  /** The mark left of what is told; gives the room that it takes. */
  private double mark(RecordLine line, double right, double y) throws IOException {
    Optional<Sign> sign = Looks.sign(line.look());
    if (sign.isEmpty()) {
      return 0;
    }
    Looks.mark(flow.page(), sign.get(), right - MARK / 2, y + 1.9, MARK);
    return MARK + 1;
  }

  private void bar(RecordLine line, LimitBar bar, double x, double y) throws IOException {
    PaperPage page = flow.page();
    LimitBar.Span span = bar.span();
    double from = x + wide * bar.lower().stream().map(span::part).findFirst().orElse(0);
    double to = x + wide * bar.upper().stream().map(span::part).findFirst().orElse(1);
    page.fill(from, y - 0.8, to - from, 1.6, Ink.BAND);
    page.line(x, y, x + wide, y, 0.25, Ink.BLACK);
    for (OptionalDouble wall : List.of(bar.lower(), bar.upper())) {
      if (wall.isPresent()) {
        page.fill(x + wide * span.part(wall.getAsDouble()) - 0.3, y - 1.8, 0.6, 3.6, Ink.BLACK);
      }
    }
    double at = x + wide * span.part(bar.value());
    double low = x + wide * span.part(bar.value() - 2 * bar.uncertainty());
    double high = x + wide * span.part(bar.value() + 2 * bar.uncertainty());
    page.line(low, y, high, y, 0.8, Ink.BLACK);
    if (line.old()) {
      page.dashedBox(at - 3.4, y - 1.7, 6.8, 3.4, 0.25);
      page.words(at, y + 1, "old", Flow.SMALL, true, Side.MIDDLE, Ink.BLACK);
    } else {
      Looks.mark(page, Looks.sign(line.look()).orElse(Sign.OPEN), at, y, MARK);
    }
  }
}
