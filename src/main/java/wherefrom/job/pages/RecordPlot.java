package wherefrom.job.pages;

import wherefrom.workings.chart.Chart;

/**
 * A plot of the build record.
 *
 * @param sentence what may be said of it, with the sources of its limits
 * @param about what it shows: a plan's key, a subject's key, or {@code clearance:main}; empty where
 *     it stands for itself
 */
public record RecordPlot(Chart chart, String sentence, String about) {

  /** One that stands for itself. */
  public RecordPlot(Chart chart, String sentence) {
    this(chart, sentence, "");
  }

  public String title() {
    return chart.title();
  }
}
