package wherefrom.ui.home;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Insets;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import wherefrom.job.decide.Deciding;
import wherefrom.text.Words;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.RailKey;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.StandardRail;
import wherefrom.ui.controls.Icon;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.TagPlate;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.engine.PartIndex;

/** What is done between taking apart and putting together: the areas on their wire. */
public final class BetweenScreen extends Page implements Scannable {
  private static final double PADDING_MM = 2.6;

  private final StackPane view = Panes.grow(new StackPane());

  public BetweenScreen(ScreenContext context) {
    super(context, "Inspect and plan");
    lay(view);
  }

  @Override
  public String aside() {
    int open = new Deciding(context.getJob()).listUndecided().size();
    return open == 0 ? "" : Words.count(open, "part") + " to decide";
  }

  @Override
  public List<RailKey> rail(StandardRail standard) {
    return standard.with(new RailKey(Icon.ENGINE, "Engine", () -> PartIndex.pages(context).open()));
  }

  @Override
  protected void refresh() {
    List<BetweenModel.Area> areas = new BetweenModel(context.getJob()).areas();
    BetweenModel.Kind next = BetweenModel.next(areas);
    List<Region> keys = new ArrayList<>();
    List<AreaFace> faces = new ArrayList<>();
    for (BetweenModel.Area area : areas) {
      AreaFace face = new AreaFace(context.touch(), area);
      faces.add(face);
      keys.add(key(area, face, area.kind() == next));
    }
    view.getChildren().setAll(new AreaView(context.touch(), keys, faces));
  }

  private Region key(BetweenModel.Area area, AreaFace face, boolean next) {
    Touch touch = context.touch();
    String spoken = area.kind().word() + ", " + area.line();
    Region key = next ? new TagPlate(context.scale(), face, true, spoken) : plain(face, spoken);
    return touch.target(key, () -> context.navigator().show(area.kind().screen()));
  }

  private Region plain(AreaFace face, String spoken) {
    StackPane plate = new StackPane(face);
    plate.setPadding(new Insets(context.scale().px(PADDING_MM)));
    plate.getStyleClass().addAll("key", "plain");
    plate.setMinHeight(
        Math.max(
            context.scale().px(Scale.KEY_MM),
            face.minHeight(-1) + 2 * context.scale().px(PADDING_MM)));
    plate.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
    plate.setAccessibleRole(AccessibleRole.BUTTON);
    plate.setAccessibleText(spoken);
    return plate;
  }

  @Override
  public void scan(Scanned scanned) {
    HomeScan.take(context, scanned);
  }
}
