package wherefrom.ui.changes;

import javafx.scene.layout.Region;
import wherefrom.inspection.Look;
import wherefrom.job.StandingRule;
import wherefrom.rules.consequence.Consequence;
import wherefrom.text.Words;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;

/** Consequences as rows: what, why, under which rule; pressed, a row shows all of it. */
final class RuleRows {
  private RuleRows() {}

  /** A consequence that is only looked at. */
  static Region of(ScreenContext context, Consequence consequence) {
    return row(context, "", consequence);
  }

  /**
   * A consequence that stands in the job, with what was answered.
   *
   * @param open whether it is among those that are open alone: only one that failed says so then
   */
  static Region of(ScreenContext context, StandingRule rule, boolean open) {
    return row(context, standing(rule, open), rule.consequence());
  }

  /** Large letters turn a check round: what is to be checked is what tells it from the others. */
  private static Region row(ScreenContext context, String standing, Consequence consequence) {
    String headline = Words.capital(standing + consequence.headline());
    String further = further(consequence);
    boolean turned =
        context.touch().isLarge() && consequence.effect().isCheck() && !further.isEmpty();
    return ListPage.spare(
        context.touch(),
        turned ? alone(standing, further) : headline,
        turned ? Words.capital(consequence.headline()) : further,
        () -> context.navigator().open(() -> new ConsequenceScreen(context, consequence)));
  }

  private static String alone(String standing, String further) {
    String what = Words.withoutStop(Words.firstSentence(further));
    return standing.isEmpty() ? what : standing + Words.small(what);
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
        .orElse("To do: ");
  }

  /** What its sentence says beyond its headline; empty where that is all. */
  static String further(Consequence consequence) {
    String sentence = consequence.sentence();
    boolean same = Words.withoutStop(sentence).equalsIgnoreCase(consequence.headline());
    return same ? "" : sentence;
  }
}
