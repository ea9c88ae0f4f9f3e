package wherefrom.report;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import wherefrom.job.pages.RecordPicture;
import wherefrom.pdf.Ink;
import wherefrom.pdf.PaperPage;

/** Photographs in even frames beside each other, their words below. */
final class PictureRows {
  private static final int ACROSS = 3;
  private static final double GAP = 4;
  private static final double A4_HIGH = 27;
  private static final double EDGE = 1.2;
  private static final double LINE = 3.4;

  private static final String MISSING = " (the picture file is missing or cannot be shown)";

  private final Flow flow;
  private final double high;
  private final double wide = (Flow.WIDE - (ACROSS - 1) * GAP) / ACROSS;

  PictureRows(Flow flow) {
    this.flow = flow;
    this.high = A4_HIGH - flow.shorter() / 3;
  }

  void draw(List<RecordPicture> pictures) throws IOException {
    for (int from = 0; from < pictures.size(); from += ACROSS) {
      row(pictures.subList(from, Math.min(pictures.size(), from + ACROSS)));
    }
  }

  private void row(List<RecordPicture> row) throws IOException {
    int lines = 2;
    for (RecordPicture picture : row) {
      lines = Math.max(lines, lines(picture).size());
    }
    flow.need(high + lines * LINE + 1);
    double top = flow.y();
    int most = 0;
    for (int at = 0; at < row.size(); at++) {
      most = Math.max(most, picture(row.get(at), Flow.LEFT + at * (wide + GAP), top));
    }
    flow.to(top + high + 1 + most * LINE + 3);
  }

  /** The words below a picture, where it is there. */
  private List<String> lines(RecordPicture picture) throws IOException {
    PaperPage page = flow.page();
    List<String> lines = new ArrayList<>(page.wrap(picture.title(), Flow.SMALL, true, wide));
    String missing = isThere(picture) ? "" : MISSING;
    lines.addAll(page.wrap(picture.caption() + missing, Flow.SMALL, false, wide));
    return lines;
  }

  private static boolean isThere(RecordPicture picture) {
    try (InputStream in = picture.source().open()) {
      return in.read() >= 0;
    } catch (IOException e) {
      return false;
    }
  }

  /** Gives how many lines of words stand below it. */
  private int picture(RecordPicture picture, double x, double y) throws IOException {
    PaperPage page = flow.page();
    boolean shown = page.picture(picture, x + EDGE, y + EDGE, wide - 2 * EDGE, high - 2 * EDGE);
    page.box(x, y, wide, high, 0.3, Ink.BLACK);
    String missing = shown ? "" : MISSING;
    double foot = y + high + LINE;
    int lines = 0;
    for (String line : page.wrap(picture.title(), Flow.SMALL, true, wide)) {
      page.words(x, foot + LINE * lines++, line, Flow.SMALL, true);
    }
    for (String line : page.wrap(picture.caption() + missing, Flow.SMALL, false, wide)) {
      page.words(x, foot + LINE * lines++, line, Flow.SMALL, false);
    }
    return lines;
  }
}
