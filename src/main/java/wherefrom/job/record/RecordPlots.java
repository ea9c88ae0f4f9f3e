package wherefrom.job.record;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.OpenJob;
import wherefrom.job.numbers.JobCharts;
import wherefrom.job.numbers.PlanBook;
import wherefrom.job.pages.RecordPlot;
import wherefrom.job.timing.TimingRecord;
import wherefrom.workings.chart.Chart;
import wherefrom.workings.chart.Charts;

/** The plots that print into the build record. */
public final class RecordPlots {
  private RecordPlots() {}

  /**
   * Those of every column of the plan, each plot once, then those of what was measured, the lobes
   * last.
   */
  public static List<RecordPlot> of(OpenJob job) {
    PlanBook book = new PlanBook(job);
    List<Chart> seen = new ArrayList<>();
    List<RecordPlot> all = new ArrayList<>();
    boolean several = book.columns().size() > 1;
    for (int column : book.columns()) {
      String name = several ? book.sheet(column).name() + ": " : "";
      for (RecordPlot plot : JobCharts.ofPlan(job, column)) {
        if (!seen.contains(plot.chart())) {
          seen.add(plot.chart());
          Chart named = Charts.named(name + plot.title(), plot.chart());
          all.add(new RecordPlot(named, plot.sentence()));
        }
      }
    }
    all.addAll(JobCharts.ofMeasured(job));
    all.addAll(TimingRecord.plots(job));
    return all;
  }
}
