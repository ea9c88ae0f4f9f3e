package wherefrom.ui.numbers;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import wherefrom.job.numbers.JobCharts;
import wherefrom.job.pages.RecordPlot;
import wherefrom.job.record.RecordPlots;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Touch;

/** The plots of the plan and of what was measured, one at a time. */
public final class PlotsScreen extends Page {
  private final Touch touch;
  private final Supplier<List<RecordPlot>> plots;
  private final FitText heading;
  private final VBox middle;
  private final KeyRow keys;
  private final Foot foot;
  private List<RecordPlot> charts = List.of();
  private int at;

  /** The plots of a column of the plan, and those of what was measured. */
  static PlotsScreen ofColumn(ScreenContext context, int column) {
    return new PlotsScreen(context, () -> JobCharts.of(context.getJob(), column));
  }

  /** Every plot of the build record. */
  public static PlotsScreen ofRecord(ScreenContext context) {
    return new PlotsScreen(context, () -> RecordPlots.of(context.getJob()));
  }

  private PlotsScreen(ScreenContext context, Supplier<List<RecordPlot>> plots) {
    super(context, "Plots");
    this.touch = context.touch();
    this.plots = plots;
    heading = touch.small("").centred();
    middle = Panes.grow(Panes.column(context.scale()));
    keys = KeyRow.of(context);
    foot = new Foot(context, touch.tag("Next plot", "", () -> turn(1)), keys);
    VBox view = Panes.column(context.scale(), heading, middle, foot);
    lay(view);
    if (isScarce()) {
      view.getChildren().remove(heading);
    }
    refresh();
  }

  /** Where the line above the plot has no room the title says what is drawn. */
  @Override
  public String title() {
    return isScarce() && !charts.isEmpty()
        ? counted(charts.get(at).title().split(":", -1)[0])
        : super.title();
  }

  private String counted(String words) {
    return (at + 1) + " of " + charts.size() + ": " + words;
  }

  private void turn(int by) {
    at += by;
    context.navigator().changed();
  }

  @Override
  protected void refresh() {
    charts = plots.get();
    at = Math.max(0, Math.min(at, charts.size() - 1));
    foot.offerTag(at < charts.size() - 1);
    keys.setActs(acts());
    heading.setWords(charts.isEmpty() ? "No plot yet" : counted(charts.get(at).title()));
    middle.getChildren().setAll(shownNode());
  }

  private List<KeyRow.Act> acts() {
    List<KeyRow.Act> acts = new ArrayList<>();
    if (at > 0) {
      acts.add(act("Previous plot", () -> turn(-1)));
    }
    if (!charts.isEmpty()) {
      acts.add(act("In words", this::tell));
    }
    acts.add(act("Clearance limits", () -> open(() -> new ClearanceLimitsScreen(context))));
    return acts;
  }

  private void tell() {
    RecordPlot plot = charts.get(at);
    ResultRows.Row row = ResultRows.Row.of(plot.title(), plot.sentence());
    open(() -> new RowsScreen(context, "The plot in words", List.of(row)));
  }

  private Node shownNode() {
    return charts.isEmpty()
        ? Panes.grow(
            touch.text(
                "Type the plan's figures with the chamber's opening. Or measure journals,"
                    + " shells and housings. Or measure a bore and type its size when new."))
        : Panes.grow(new ChartView(touch, charts.get(at).chart()));
  }

  /** Whether the axes may need the room of the line above them. */
  private boolean isScarce() {
    return context.scale().textFactor() >= 2;
  }
}
