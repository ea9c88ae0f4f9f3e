package wherefrom.ui.changes;

import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.inspection.Look;
import wherefrom.job.StandingRule;
import wherefrom.rules.consequence.Consequence;
import wherefrom.text.Words;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.ListRow;

/** Consequences as rows: what, why, under which rule; pressed, a row shows all of it. */
final class RuleRows {
  private RuleRows() {}

  /** A consequence that is only looked at. */
  static Region of(ScreenContext context, Consequence consequence) {
    return ListRow.key(
        context.touch(),
        context.touch().brief(Words.capital(consequence.headline()), alone("", consequence)),
        lines(context, consequence),
        () -> context.navigator().open(() -> new ConsequenceScreen(context, consequence)));
  }

  /**
   * A consequence that stands in the job, with what was answered.
   *
   * @param open whether it is among those that are open alone: only one that failed says so then
   */
  static Region of(ScreenContext context, StandingRule rule, boolean open) {
    return ListRow.key(
        context.touch(),
        context.touch().brief(heading(rule, open), alone(standing(rule, open), rule.consequence())),
        lines(context, rule.consequence()),
        () -> context.navigator().open(() -> new ConsequenceScreen(context, rule.consequence())));
  }

  static String heading(StandingRule rule, boolean open) {
    return Words.capital(standing(rule, open) + rule.consequence().headline());
  }

  private static String standing(StandingRule rule, boolean open) {
    return open && rule.answer().isEmpty() ? "" : standing(rule);
  }

  /** How a check stands; empty where nothing is to be checked. */
  private static String standing(StandingRule rule) {
    if (!rule.consequence().effect().isCheck()) {
      return "";
    }
    return rule.answer()
        .map(answer -> answer.look() == Look.PASS ? "Pass: " : "FAIL: ")
        .orElse("Open: ");
  }

  /** What tells it from the others where the heading is all that is seen: what is to be checked. */
  private static String alone(String standing, Consequence consequence) {
    String further =
        consequence.effect().isCheck() ? Words.firstSentence(further(consequence)) : "";
    return Words.capital(
        standing + (further.isEmpty() ? consequence.headline() : Words.withoutStop(further)));
  }

  /** Large text leaves room for the heading alone; all the rest is one press away. */
  private static List<String> lines(ScreenContext context, Consequence consequence) {
    return List.of(context.touch().brief(further(consequence), ""));
  }

  /** What its sentence says beyond its headline; empty where that is all. */
  static String further(Consequence consequence) {
    String sentence = consequence.sentence();
    boolean same = Words.withoutStop(sentence).equalsIgnoreCase(consequence.headline());
    return same ? "" : sentence;
  }
}
