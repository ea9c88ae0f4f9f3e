package wherefrom.ui.numbers;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;
import wherefrom.workings.Working;
import wherefrom.workings.catalogue.Workings;

/** The plan, and every single working. */
public final class NumbersScreen extends Page {
  private static final int ACROSS = 2;

  private final Touch touch;

  public NumbersScreen(ScreenContext context) {
    super(context, "Numbers");
    this.touch = context.touch();
    Pager<List<Working>> workings = Pager.list(touch, this::row);
    workings.setItems(inRows(touch.isLarge() ? 1 : ACROSS));
    lay(
        Panes.column(
            context.scale(),
            touch.tag(
                "The plan",
                touch.brief("how it is now, and up to three ideas", "now and three ideas"),
                () -> open(() -> new PlanScreen(context))),
            touch.small("Single workings"),
            workings));
  }

  private static List<List<Working>> inRows(int across) {
    List<Working> all = Workings.all();
    List<List<Working>> rows = new ArrayList<>();
    for (int at = 0; at < all.size(); at += across) {
      rows.add(all.subList(at, Math.min(at + across, all.size())));
    }
    return rows;
  }

  private Region row(List<Working> workings) {
    List<Node> keys = new ArrayList<>();
    for (Working working : workings) {
      keys.add(
          touch.key(working.card().title(), () -> open(() -> new WorkingScreen(context, working))));
    }
    while (keys.size() < ACROSS && !touch.isLarge()) {
      keys.add(new Region());
    }
    return new Tiles(context.scale(), ACROSS, Scale.GAP_MM, keys);
  }
}
