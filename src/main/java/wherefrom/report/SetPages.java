package wherefrom.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import wherefrom.job.pages.RecordPlot;
import wherefrom.job.pages.RecordSet;
import wherefrom.pdf.Ink;
import wherefrom.pdf.PaperPage;

/** Plots beside what they are of: each set with its limits said once, then the other plots. */
final class SetPages {
  private static final double SET = 44;
  private static final double ALONE = 48;
  private static final double GAP = 6;

  private final Flow flow;
  private final List<RecordPlot> plots;
  private final Set<Integer> drawn = new TreeSet<>();

  SetPages(Flow flow, List<RecordPlot> plots) {
    this.flow = flow;
    this.plots = plots;
  }

  /** Sets that have a plot; what has none stands with its cylinder or its main. */
  void write(List<RecordSet> sets) throws IOException {
    boolean begun = false;
    for (RecordSet set : sets) {
      List<RecordPlot> own = take(set.about());
      if (own.isEmpty()) {
        continue;
      }
      if (!begun) {
        flow.begin("Sets", "each held against itself");
        flow.enter("Sets: studs, lobes, springs, pushrods, bores, clearances");
        begun = true;
      }
      set(set, own);
    }
  }

  /** The clearances, whose plots say their limits themselves. */
  void clearances() throws IOException {
    List<RecordPlot> own = take("clearance");
    if (!own.isEmpty()) {
      rows(own, SET);
    }
  }

  private List<RecordPlot> take(String about) {
    List<RecordPlot> own = new ArrayList<>();
    for (int at = 0; at < plots.size(); at++) {
      String of = plots.get(at).about();
      if (of.equals(about) || of.startsWith(about + "@") || of.startsWith(about + ":")) {
        own.add(plots.get(at));
        drawn.add(at);
      }
    }
    return own;
  }

  private void set(RecordSet set, List<RecordPlot> own) throws IOException {
    flow.need(SET + 22);
    flow.page().words(Flow.LEFT, flow.y() + 3.6, set.title(), 4.2, true);
    flow.down(5.4);
    String limits =
        set.limits().isEmpty()
            ? "No limit was typed."
            : "Limit: " + String.join("; ", set.limits());
    flow.paragraph(limits, Flow.SMALL, Ink.DARK);
    flow.down(1);
    rows(own, SET);
  }

  /** The plots that belong to no set. */
  void rest() throws IOException {
    List<RecordPlot> left = new ArrayList<>();
    for (int at = 0; at < plots.size(); at++) {
      if (!drawn.contains(at)) {
        left.add(plots.get(at));
      }
    }
    if (!left.isEmpty()) {
      flow.begin("Plots", "");
      flow.enter("Plots: ratio, lift, clearances, timing");
      rows(left, ALONE);
    }
  }

  /** One across the page; several of them two beside each other. */
  private void rows(List<RecordPlot> own, double high) throws IOException {
    int across = own.size() > 1 && high == SET ? 2 : 1;
    double wide = (Flow.WIDE - (across - 1) * GAP) / across;
    for (int from = 0; from < own.size(); from += across) {
      List<RecordPlot> row = own.subList(from, Math.min(own.size(), from + across));
      flow.need(row.stream().mapToDouble(plot -> high + words(plot, wide)).max().orElse(0));
      double top = flow.y();
      double reached = top;
      for (int at = 0; at < row.size(); at++) {
        reached =
            Math.max(reached, plot(row.get(at), Flow.LEFT + at * (wide + GAP), top, wide, high));
      }
      flow.to(reached + 4);
    }
  }

  /** The height of its title and its sentence. */
  private double words(RecordPlot plot, double wide) {
    PaperPage page = flow.page();
    int lines =
        page.wrap(plot.title(), 3, true, wide).size()
            + page.wrap(plot.sentence(), 2.6, false, wide).size();
    return 3.7 * lines + 2;
  }

  private double plot(RecordPlot plot, double x, double y, double wide, double high)
      throws IOException {
    PaperPage page = flow.page();
    double down = y;
    for (String line : page.wrap(plot.title(), 3, true, wide)) {
      page.words(x, down + 2.8, line, 3, true);
      down += 4;
    }
    page.chart(plot.chart(), x, down, wide, high);
    down += high + 0.5;
    for (String line : page.wrap(plot.sentence(), 2.6, false, wide)) {
      page.words(x, down + 2.4, line, 2.6, false, PaperPage.Side.BEGIN, Ink.DARK);
      down += 3.5;
    }
    return down;
  }
}
