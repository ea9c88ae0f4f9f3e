package wherefrom.report;

import java.io.IOException;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import wherefrom.drawing.View;
import wherefrom.job.pages.RecordFigure;
import wherefrom.job.record.BuildRecord;
import wherefrom.pdf.Ink;
import wherefrom.pdf.PaperPage;

/** The first page: whose engine it is, how it stands, what is open, who signs. */
final class CoverPage {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);
  private static final double HEAD = 33;

  /** Above the foot: where a hand signs. */
  private static final double SIGN = 5;

  private static final double LIST = 44;
  private static final double FIGURES = 16;

  private final Flow flow;
  private final BuildRecord record;
  private final OpenList open;

  CoverPage(Flow flow, BuildRecord record, OpenList open) {
    this.flow = flow;
    this.record = record;
    this.open = open;
  }

  void write() throws IOException {
    flow.enter("Cover: how the engine stands");
    head();
    if (record.sheets().isPresent()) {
      engine(new EngineArt(record.sheets().get().engine()));
      figures(record.sheets().get().figures());
    }
    open.heading(flow);
    open.until(flow, signed() - 7);
    sign();
  }

  private void head() throws IOException {
    PaperPage page = flow.page();
    page.tag(Flow.LEFT, Flow.TOP, Flow.WIDE, HEAD, 9, 1.6);
    double x = Flow.LEFT + 19;
    double room = Flow.WIDE - 26;
    page.words(x, Flow.TOP + 9.6, "BUILD RECORD", 4, true);
    double size = Math.min(11.2, 11.2 * room / page.widthOf(record.job(), 11.2, true));
    double least = Math.max(size, 6);
    page.words(x, Flow.TOP + 20.6, page.shorten(record.job(), least, true, room), least, true);
    String days =
        record.engine() + ". " + days(DAY.format(record.begun()), DAY.format(record.asOf()));
    page.words(x, Flow.TOP + 28, page.shorten(days, 3.8, false, room), 3.8, false);
    flow.to(Flow.TOP + HEAD + 3);
  }

  private static String days(String first, String last) {
    return first.equals(last) ? first : first + " to " + last;
  }

  private void engine(EngineArt art) throws IOException {
    PaperPage page = flow.page();
    double y = art.side(page, View.ABOVE, flow.y(), 62 - flow.shorter() / 2);
    y = art.side(page, View.BELOW, y + 2.6, Math.min(59 - flow.shorter() / 2, room(y)));
    flow.to(art.legend(page, y + 2));
  }

  /** What is left for the second drawing above legend, figures and a short list. */
  private double room(double y) {
    return signed() - LIST - FIGURES - 14 - y - 12;
  }

  /** Counts on a wire. */
  private void figures(List<RecordFigure> figures) throws IOException {
    PaperPage page = flow.page();
    double gap = 4;
    double wide = (Flow.WIDE - gap * (figures.size() - 1)) / figures.size();
    double y = flow.y() + 1;
    page.wire(Flow.LEFT + 3, Flow.RIGHT - 3, y + FIGURES / 2);
    for (int at = 0; at < figures.size(); at++) {
      double x = Flow.LEFT + at * (wide + gap);
      RecordFigure figure = figures.get(at);
      page.tag(x, y, wide, FIGURES, 4.4, 0.4);
      String count = "" + figure.count();
      page.words(x + 7.6, y + 8.6, count, 7, true);
      if (figure.of() > figure.count()) {
        double from = x + 8.4 + page.widthOf(count, 7, true);
        page.words(from, y + 8.6, "of " + figure.of(), Flow.SMALL, false);
      }
      page.words(x + 7.8, y + 13.4, figure.words(), 3.4, false);
    }
    flow.to(y + FIGURES + 4);
  }

  private double signed() {
    return flow.foot() - SIGN;
  }

  private void sign() throws IOException {
    double half = (Flow.WIDE - 6) / 2;
    for (int at = 0; at < 2; at++) {
      double x = Flow.LEFT + at * (half + 6);
      flow.page().line(x, signed(), x + half, signed(), 0.25, Ink.BLACK);
      String words = at == 0 ? "built by, date" : "checked by, date";
      flow.page().words(x, signed() + 3.2, words, 2.6, false, PaperPage.Side.BEGIN, Ink.DARK);
    }
  }
}
