package wherefrom.ui.puttogether;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import wherefrom.rules.Cycle;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;

/** Parts in each other's places: which to take out, in which order, and where each belongs. */
public final class WayOutScreen extends Page {
  private final MissingModel model;
  private final Pager<Region> rows;
  private final HBox view;

  public WayOutScreen(ScreenContext context) {
    super(context, "In each other's places");
    model = new MissingModel(context.getJob());
    rows = Pager.list(context.touch(), row -> row);
    view = Panes.row(context.scale(), rows);
    lay(view);
  }

  @Override
  protected void refresh() {
    List<Region> lines = new ArrayList<>();
    for (Cycle cycle : model.cycles()) {
      int step = 1;
      for (Cycle.Move move : cycle.moves()) {
        lines.add(row(step, move, cycle));
        step++;
      }
    }
    if (lines.isEmpty()) {
      lines.add(
          ListRow.told(
              context.touch(), "Nothing", "No part sits in another one's place. Scan them in."));
    }
    rows.refill(lines);
  }

  private Region row(int step, Cycle.Move move, Cycle cycle) {
    String aside = cycle.closed() && step == 1 ? "Lay it aside: its place is still taken." : "";
    return ListRow.key(
        context.touch(),
        step + ". " + model.words(move),
        List.of(aside, context.touch().brief("Press when it is out.", "")),
        () -> took(move));
  }

  private void took(Cycle.Move move) {
    model.takeOut(move);
    if (!model.trouble().isEmpty()) {
      context.say(model.trouble());
    }
    context.navigator().changed();
  }
}
