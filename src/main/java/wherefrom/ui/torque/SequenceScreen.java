package wherefrom.ui.torque;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;

/** The bolts are touched in the order of tightening; one that is not there is left out. */
public final class SequenceScreen implements Screen {
  private final Desk desk;
  private final Consumer<List<Integer>> done;
  private final SequenceModel model = new SequenceModel();
  private final BoltGrid grid;
  private final VBox view;

  SequenceScreen(Desk desk, int rows, int columns, Consumer<List<Integer>> done) {
    this.desk = desk;
    this.done = done;
    grid =
        new BoltGrid(
            desk.touch(),
            rows,
            columns,
            position -> Optional.of(model.face(position)),
            this::touched);
    view =
        Panes.column(
            desk.scale(),
            grid,
            Tiles.row(
                desk.scale(),
                desk.touch().primary(desk.touch().brief("Undo one", "Undo"), this::back),
                desk.touch().primary(desk.touch().brief("That is all", "Done"), this::finish)));
  }

  private void touched(int position) {
    model.touch(position);
    grid.draw();
  }

  private void back() {
    model.takeBack();
    grid.draw();
  }

  private void finish() {
    if (model.order().isEmpty()) {
      desk.say("Touch the bolts first, in the order of tightening.");
      return;
    }
    desk.navigator().back();
    done.accept(model.order());
  }

  @Override
  public String title() {
    return "Touch the bolts in order";
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public boolean onJob() {
    return false;
  }
}
