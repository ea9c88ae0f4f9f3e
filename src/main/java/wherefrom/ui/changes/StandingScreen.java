package wherefrom.ui.changes;

import java.util.List;
import java.util.function.Function;
import javafx.scene.layout.Region;
import wherefrom.drawing.PlaceWords;
import wherefrom.job.StandingRule;
import wherefrom.parts.Part;
import wherefrom.text.Words;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenContext;

/** What stands: all of it, the open checks alone, or what concerns one part. */
public final class StandingScreen extends ListPage {
  private final String none;
  private final Function<ChangesModel, List<StandingRule>> wanted;
  private final ChangesModel model;
  private final boolean openAlone;

  private StandingScreen(
      ScreenContext context,
      String title,
      String none,
      Function<ChangesModel, List<StandingRule>> wanted,
      boolean openAlone) {
    super(context, title);
    this.openAlone = openAlone;
    this.none = none;
    this.wanted = wanted;
    model = new ChangesModel(context.getJob());
  }

  public static StandingScreen all(ScreenContext context) {
    return new StandingScreen(
        context, "Everything that applies", "Nothing applies yet.", ChangesModel::standing, false);
  }

  public static StandingScreen openChecks(ScreenContext context) {
    return new StandingScreen(
        context, "Open checks", "No check is open.", ChangesModel::openChecks, true);
  }

  /**
   * What stands for one part, at the place that it came out of. One thing alone is shown whole at
   * once: a list of it would be a page with nothing on it.
   */
  public static Screen of(ScreenContext context, int item) {
    Part part = context.state().getPart(item).part();
    List<StandingRule> standing = new ChangesModel(context.getJob()).standingFor(item);
    if (standing.size() == 1) {
      return new ConsequenceScreen(context, standing.get(0).consequence());
    }
    return new StandingScreen(
        context,
        Words.capital(PlaceWords.named(context.state().layout(), part.home())),
        "No change or finding concerns this part.",
        model -> model.standingFor(item),
        false);
  }

  @Override
  public String aside() {
    long open = wanted.apply(model).stream().filter(StandingRule::isOpenCheck).count();
    return open == 0 ? "" : Words.count(open, "check") + " to do";
  }

  @Override
  protected String whenEmpty() {
    return none + " Record changes and findings under Changes.";
  }

  @Override
  protected List<Region> rows() {
    return wanted.apply(model).stream().map(rule -> RuleRows.of(context, rule, openAlone)).toList();
  }
}
