package wherefrom.job.numbers;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.job.OpenJob;
import wherefrom.job.measure.SetDot;
import wherefrom.job.measure.SetPicture;
import wherefrom.job.measure.SetPictures;
import wherefrom.job.pages.RecordPlot;
import wherefrom.workings.chart.Chart;
import wherefrom.workings.chart.Charts;

/** Sets held against themselves: studs, lobes, springs, pushrods; the odd one named. */
final class SetCharts {
  /** What a person would compare by eye, in the order of the valvetrain. */
  private static final List<String> PLANS =
      List.of(
          "stud-height",
          "lobe-lift",
          "spring-free",
          "spring-load",
          "spring-square",
          "pushrod-length",
          "pushrod-runout");

  private static final int FEWEST = 2;

  private final OpenJob job;

  SetCharts(OpenJob job) {
    this.job = job;
  }

  /** Those of which at least two members were measured. */
  List<RecordPlot> list() {
    return PLANS.stream()
        .flatMap(key -> ReadingPlans.find(key).stream())
        .flatMap(this::plots)
        .toList();
  }

  private Stream<RecordPlot> plots(ReadingPlan plan) {
    return new SetPictures(job, plan)
        .list().stream()
            .filter(picture -> picture.dots().size() >= FEWEST)
            .map(picture -> plot(picture, plan.key()));
  }

  private static RecordPlot plot(SetPicture picture, String about) {
    List<String> names = new ArrayList<>();
    List<Chart.Column> columns = new ArrayList<>();
    for (SetDot dot : picture.dots()) {
      names.add(dot.name());
      double low = dot.away() - dot.band();
      double high = dot.away() + dot.band();
      columns.add(
          Chart.Column.ofValue(names.size(), dot.away(), low, high)
              .with(List.of(), dot.word(), dot.odd()));
    }
    String up = "off the " + picture.middle() + ", " + picture.unit();
    return new RecordPlot(
        Charts.ofSet(picture.title(), up, names, columns),
        picture.sentence() + " " + JobCharts.BAND,
        about);
  }
}
