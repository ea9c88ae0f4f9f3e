package wherefrom.report;

import java.io.IOException;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import wherefrom.job.pages.RecordEvent;
import wherefrom.pdf.Ink;
import wherefrom.pdf.PaperPage;

/** What happened, day by day along a wire. */
final class EventWire {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);
  private static final int ACROSS = 5;
  private static final double LINE = 3.4;
  private static final double TOP = 11;

  /** A day with more lines than this is broken where the page ends. */
  private static final double TALLEST = 200;

  /** What a date takes. */
  private static final double LEAST = 25;

  private final Flow flow;

  EventWire(Flow flow) {
    this.flow = flow;
  }

  void draw(List<RecordEvent> events) throws IOException {
    for (int from = 0; from < events.size(); from += ACROSS) {
      row(events.subList(from, Math.min(events.size(), from + ACROSS)));
    }
  }

  /** Days with much in them take more room beside those with little. */
  private static double[] widths(List<List<String>> told) {
    double[] widths = new double[told.size()];
    double all = told.stream().mapToDouble(EventWire::weight).sum();
    double share = Flow.WIDE - LEAST * widths.length;
    for (int at = 0; at < widths.length; at++) {
      widths[at] = LEAST + share * weight(told.get(at)) / all;
    }
    return widths;
  }

  private static double weight(List<String> told) {
    return Math.sqrt(1.0 + String.join("", told).length());
  }

  private void row(List<RecordEvent> days) throws IOException {
    double[] widths = widths(days.stream().map(RecordEvent::told).toList());
    List<List<String>> lines = new ArrayList<>();
    int most = 0;
    for (int at = 0; at < days.size(); at++) {
      lines.add(lines(days.get(at), widths[at] - 4));
      most = Math.max(most, lines.get(at).size());
    }
    flow.need(Math.min(TOP + most * LINE, TALLEST));
    wire(days, widths);
    for (int line = 0; line < most; line++) {
      flow.need(LINE);
      double x = Flow.LEFT;
      for (int at = 0; at < days.size(); at++) {
        if (line < lines.get(at).size()) {
          flow.page()
              .words(x + 1.4, flow.y() + LINE * 0.8, lines.get(at).get(line), Flow.SMALL, false);
        }
        x += widths[at];
      }
      flow.down(LINE);
    }
    flow.down(2);
  }

  private void wire(List<RecordEvent> days, double[] widths) throws IOException {
    PaperPage page = flow.page();
    double y = flow.y() + 2;
    page.wire(Flow.LEFT + 2, Flow.RIGHT - 1, y);
    double x = Flow.LEFT;
    for (int at = 0; at < days.size(); at++) {
      page.dot(x + 2.6, y, 1.5, Ink.BLACK);
      page.words(x + 1.4, y + 6.6, DAY.format(days.get(at).day()), Flow.TEXT, true);
      x += widths[at];
    }
    flow.to(y + TOP - 3);
  }

  private List<String> lines(RecordEvent day, double wide) {
    List<String> lines = new ArrayList<>();
    for (String told : day.told()) {
      lines.addAll(flow.page().wrap(told, Flow.SMALL, false, wide));
    }
    return lines;
  }
}
