package wherefrom.ui.changes;

import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.job.StandingRule;
import wherefrom.rules.consequence.Consequence;
import wherefrom.text.Words;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.controls.TagKey;

/** What follows from an answer that was just kept. It stays until it was read. */
public final class FollowsScreen extends ListPage {
  private final List<StandingRule> rules;

  /**
   * @param cause what was found, where: {@code rod 1, upper shell: fail}
   * @param rules what follows from it, the hardest first; not empty
   */
  public FollowsScreen(ScreenContext context, String cause, List<StandingRule> rules) {
    super(context, Words.capital(cause));
    this.rules = List.copyOf(rules);
    TagKey tag = tag(() -> context.navigator().back());
    tag.setWords("Go on", "");
    layOut(
        new Foot(
            context,
            tag,
            KeyRow.of(context, act("Changes", () -> context.navigator().show(ScreenId.CHANGES)))));
  }

  @Override
  public String aside() {
    int count = standing().size();
    return Words.count(count, "thing") + (count == 1 ? " follows" : " follow");
  }

  @Override
  protected List<Region> rows() {
    return standing().stream().map(rule -> RuleRows.of(context, rule, false)).toList();
  }

  /** Those that were not taken back since. */
  private List<StandingRule> standing() {
    List<Consequence> now =
        new ChangesModel(context.getJob())
            .standing().stream().map(StandingRule::consequence).toList();
    return rules.stream().filter(rule -> now.contains(rule.consequence())).toList();
  }

  @Override
  protected String whenEmpty() {
    return "It was taken back: nothing follows any more.";
  }
}
