package wherefrom.job.pages;

import wherefrom.workings.chart.Chart;

/**
 * A plot of the build record.
 *
 * @param sentence what may be said of it, with the sources of its limits
 */
public record RecordPlot(Chart chart, String sentence) {

  public String title() {
    return chart.title();
  }
}
