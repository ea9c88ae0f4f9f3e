package wherefrom.job.numbers;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.job.OpenJob;
import wherefrom.job.measure.Instruments;
import wherefrom.job.measure.Measuring;
import wherefrom.quantity.Dimension;
import wherefrom.ui.sample.SampleJob;

/** An invented V8 that was measured: two mains, a rod, a bore, studs of a bank, pushrods. */
public final class PlotSample {
  private final SampleJob sample = SampleJob.apart();

  private PlotSample() {}

  /** Everything measured, and a plan with one what-if. */
  public static OpenJob measured() {
    PlotSample plots = new PlotSample();
    new Instruments(plots.sample.job)
        .list("MIC 2-3", Dimension.LENGTH, "0.0001", "0.0001", "0.0001");
    plots.bearing("main", "M1", "2.6100", "2.6099", "2.6098", "2.6097");
    plots.bearing("main", "M2", "2.6101", "2.6101", "2.6086", "2.6086");
    plots.bearing("rod", "B3", "2.2400", "2.2400", "2.2399", "2.2399");
    plots.bore();
    plots.studs();
    plots.pushrods();
    return plots.sample.job;
  }

  /** The same with the figures of a plan. */
  public static OpenJob planned() {
    OpenJob job = measured();
    PlanBook book = new PlanBook(job);
    NumbersSample.now(book);
    book.add(1);
    book.set(1, "target", "9.5");
    return job;
  }

  private void take(Subject subject, String plan, String... sizes) {
    ReadingPlan readings = ReadingPlans.find(plan).orElseThrow();
    Map<String, List<String>> taken = new LinkedHashMap<>();
    for (int at = 0; at < sizes.length; at++) {
      taken.put(readings.stations().get(at).key(), List.of(sizes[at]));
    }
    Measuring.Entry entry = new Measuring.Entry(subject, plan, "MIC 2-3", taken, true, "");
    if (!(new Measuring(sample.job).take(entry) instanceof Measuring.Answer.Kept)) {
      throw new AssertionError(plan + " was not taken");
    }
  }

  /** The housing is 0.1910 larger than 2.6100 for mains, the rear of the shells 0.0001 thicker. */
  private void bearing(String kind, String where, String... journal) {
    boolean main = kind.equals("main");
    Feature around = main ? Feature.MAIN_HOUSING : Feature.ROD_HOUSING;
    Feature inside = main ? Feature.MAIN_JOURNAL : Feature.ROD_JOURNAL;
    String housing = main ? "2.8010" : "2.3660";
    take(new Subject.AFeature(around, where), kind + "-housing", housing, "2.801", "2.801");
    take(new Subject.AFeature(inside, where), kind + "-journal", journal);
    for (String half : List.of("U", "L")) {
      String place = kind + "-shell@" + (main ? "M" : "R") + where.substring(1) + half;
      String wall = main ? "0.0945" : "0.0620";
      String rear = main ? "0.0946" : "0.0620";
      take(Subject.ofPart(sample.part(place).item()), kind + "-shell-wall", wall, wall, rear);
    }
  }

  private void bore() {
    new Instruments(sample.job).size("bore", "3.8700", "manual, page 6-3");
    Subject bore = new Subject.AFeature(Feature.BORE, "B1");
    take(bore, "bore", "3.8752", "3.8738", "3.8712", "3.8730", "3.8724", "3.8710");
  }

  private void studs() {
    List<String> heights =
        List.of("1.7510", "1.7512", "1.7509", "1.7511", "1.7630", "1.7510", "1.7513", "1.7508");
    List<String> spots = List.of("1IN", "1EX", "3IN", "3EX", "5IN", "5EX", "7IN", "7EX");
    for (int at = 0; at < spots.size(); at++) {
      take(new Subject.AFeature(Feature.STUD, spots.get(at)), "stud-height", heights.get(at));
    }
  }

  private void pushrods() {
    int at = 0;
    for (int cylinder = 1; cylinder <= 8; cylinder++) {
      for (String side : List.of("IN", "EX")) {
        Subject rod = Subject.ofPart(sample.part("pushrod@" + cylinder + side).item());
        take(rod, "pushrod-length", at == 9 ? "7.7860" : "7.79" + (40 + at % 5));
        at++;
      }
    }
  }
}
