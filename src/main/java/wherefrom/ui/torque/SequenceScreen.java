package wherefrom.ui.torque;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.controls.Panes;

/** The bolts are touched in the order of tightening; one that is not there is left out. */
public final class SequenceScreen extends Page {
  private final Consumer<List<Integer>> done;
  private final SequenceModel model = new SequenceModel();
  private final BoltGrid grid;

  SequenceScreen(Desk desk, int rows, int columns, Consumer<List<Integer>> done) {
    super(desk, "Touch the bolts in order", false);
    this.done = done;
    grid =
        new BoltGrid(
            desk.touch(),
            rows,
            columns,
            position -> Optional.of(model.face(position)),
            this::touched);
    lay(
        Panes.column(
            desk.scale(),
            grid,
            new Foot(
                desk,
                touch().tag("That is all", "", this::finish),
                KeyRow.of(desk, new KeyRow.Act("Undo one", this::back)))));
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
}
