package wherefrom.ui.changes;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javafx.scene.layout.Region;
import wherefrom.job.StandingRule;
import wherefrom.parts.Part;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;

/** What stands: all of it, the open checks alone, or what concerns one part. */
public final class StandingScreen implements Screen {
  private final Desk desk;
  private final String title;
  private final String none;
  private final Function<ChangesModel, List<StandingRule>> wanted;
  private final ChangesModel model;
  private final Pager<Region> rows;

  private StandingScreen(
      Desk desk, String title, String none, Function<ChangesModel, List<StandingRule>> wanted) {
    this.desk = desk;
    this.title = title;
    this.none = none;
    this.wanted = wanted;
    model = new ChangesModel(desk.getJob());
    rows = Pager.list(desk.touch(), row -> row);
  }

  public static StandingScreen all(Desk desk) {
    return new StandingScreen(
        desk, "Everything that applies", "Nothing applies yet.", ChangesModel::standing);
  }

  public static StandingScreen openChecks(Desk desk) {
    return new StandingScreen(desk, "Open checks", "No check is open.", ChangesModel::openChecks);
  }

  /** What stands for one part, at the place that it came out of. */
  public static StandingScreen of(Desk desk, int item) {
    Part part = desk.state().getPart(item).part();
    return new StandingScreen(
        desk,
        part.home().figures() + " " + part.kind().word(),
        "No change or finding concerns this part.",
        model -> model.standingFor(item));
  }

  @Override
  public String title() {
    return title;
  }

  @Override
  public Region view() {
    return rows;
  }

  @Override
  public void shown() {
    List<Region> lines = new ArrayList<>();
    wanted.apply(model).forEach(rule -> lines.add(RuleRows.of(desk, rule)));
    if (lines.isEmpty()) {
      lines.add(ListRow.told(desk.touch(), none, "Record changes and findings under Changes."));
    }
    rows.refill(lines);
  }

  @Override
  public void changed() {
    shown();
  }
}
