package wherefrom.ui.timing;

import javafx.scene.Node;
import javafx.scene.layout.VBox;
import wherefrom.engine.ValveSpot;
import wherefrom.job.timing.TimingBook;
import wherefrom.job.timing.TimingCheck;
import wherefrom.text.Words;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.numbers.ChartView;

/** Lift against the wheel, with the centre line that was fitted. */
public final class LiftPlotScreen extends Page {
  private final ValveSpot lobe;
  private final VBox view;

  LiftPlotScreen(ScreenContext context, ValveSpot lobe) {
    super(context, "");
    this.lobe = lobe;
    view = Panes.column(context.scale());
    lay(view);
  }

  @Override
  public String title() {
    return "Lift, " + lobe.figures();
  }

  @Override
  protected void refresh() {
    TimingCheck check = new TimingCheck(new TimingBook(context.getJob()));
    Node drawn =
        check
            .plot(lobe)
            .<Node>map(chart -> Panes.grow(new ChartView(context.touch(), chart)))
            .orElseGet(() -> Panes.grow(touch().text("Take two readings at least.")));
    view.getChildren().setAll(drawn);
    if (!touch().isLarge()) {
      // The axes need the room; the readings' screen says it too.
      view.getChildren().add(0, touch().small(Words.capital(check.words(lobe))));
    }
  }
}
