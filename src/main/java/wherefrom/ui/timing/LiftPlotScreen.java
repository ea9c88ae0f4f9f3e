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
    return touch().isLarge()
        ? check().result(lobe).map(what -> lobe.figures() + ": " + what).orElse(lift())
        : lift();
  }

  private String lift() {
    return "Lift, " + lobe.figures();
  }

  private TimingCheck check() {
    return new TimingCheck(new TimingBook(context.getJob()));
  }

  @Override
  protected void refresh() {
    TimingCheck check = check();
    Node drawn =
        check
            .plot(lobe)
            .<Node>map(chart -> Panes.grow(new ChartView(context.touch(), chart)))
            .orElseGet(() -> Panes.grow(touch().text("Take two readings at least.")));
    view.getChildren().setAll(drawn);
    if (!touch().isLarge()) {
      // The axes need the room: with large letters the title says the result.
      view.getChildren().add(0, touch().small(Words.capital(check.words(lobe))));
    }
  }
}
