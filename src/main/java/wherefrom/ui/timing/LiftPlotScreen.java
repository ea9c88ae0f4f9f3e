package wherefrom.ui.timing;

import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.engine.ValveSpot;
import wherefrom.job.timing.TimingBook;
import wherefrom.job.timing.TimingCheck;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.numbers.ChartView;

/** Lift against the wheel, with the centre line that was fitted. */
public final class LiftPlotScreen implements Screen {
  private final Desk desk;
  private final ValveSpot lobe;
  private final VBox view;

  LiftPlotScreen(Desk desk, ValveSpot lobe) {
    this.desk = desk;
    this.lobe = lobe;
    view = Panes.column(desk.scale());
  }

  @Override
  public String title() {
    return "Lift, " + lobe.figures();
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    TimingCheck check = new TimingCheck(new TimingBook(desk.getJob()));
    Node drawn =
        check
            .plot(lobe)
            .<Node>map(chart -> Panes.grow(new ChartView(desk.touch(), chart)))
            .orElseGet(() -> Panes.grow(desk.touch().text("Take two readings at least.")));
    view.getChildren().setAll(drawn);
    if (!desk.touch().isLarge()) {
      // The axes need the room; the readings' screen says it too.
      view.getChildren().add(0, desk.touch().small(check.words(lobe)));
    }
  }

  @Override
  public void changed() {
    shown();
  }
}
