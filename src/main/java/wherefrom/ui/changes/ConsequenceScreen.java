package wherefrom.ui.changes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.layout.Region;
import wherefrom.inspection.Look;
import wherefrom.job.StandingRule;
import wherefrom.job.entry.CheckAnswered;
import wherefrom.rules.consequence.Consequence;
import wherefrom.text.Words;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;

/** One consequence whole: where, why, from which source; a check that stands is answered here. */
public final class ConsequenceScreen extends ListPage {
  private final Consequence consequence;
  private final ChangesModel model;
  private final KeyRow answers;

  public ConsequenceScreen(ScreenContext context, Consequence consequence) {
    super(context, title(context, consequence));
    this.consequence = consequence;
    model = new ChangesModel(context.getJob());
    // None of the answers is the yellow one: that would say which to press.
    answers =
        KeyRow.of(
            context,
            act("Pass", () -> answer(Look.PASS, "")),
            act("Fail", () -> note(Look.FAIL)),
            act("Pass, note", () -> note(Look.PASS)));
    layOut(List.of(), List.of(answers));
  }

  /** Large letters leave room for what is to be done; its rule stands with its source then. */
  private static String title(ScreenContext context, Consequence consequence) {
    String effect = consequence.effect().words();
    return context
        .touch()
        .brief(Words.capital(consequence.ruleWords()) + ": " + effect, Words.capital(effect));
  }

  private Optional<StandingRule> check() {
    return model.find(consequence.key());
  }

  @Override
  public String aside() {
    if (!consequence.effect().isCheck() || check().isEmpty()) {
      return "";
    }
    return check()
        .flatMap(StandingRule::answer)
        .map(given -> given.look() == Look.PASS ? "pass" : "failed")
        .orElse("open");
  }

  @Override
  protected void refresh() {
    boolean asked = consequence.effect().isCheck() && check().isPresent();
    answers.setVisible(asked);
    answers.setManaged(asked);
    super.refresh();
  }

  @Override
  protected List<Region> rows() {
    List<Region> rows = new ArrayList<>();
    check().flatMap(StandingRule::answer).ifPresent(given -> rows.add(answered(given)));
    String further = RuleRows.further(consequence);
    String headline = Words.capital(consequence.headline());
    rows.add(told(further.isEmpty() ? headline : touch().brief(headline, ""), further));
    if (!consequence.whereWords().isEmpty()) {
      rows.add(told("Where", Words.sentence(consequence.whereWords())));
    }
    String because = "Because";
    for (String reason : consequence.reasons()) {
      rows.add(told(because, Words.sentence(reason)));
      because = "And so";
    }
    rows.add(
        told(
            touch().brief("Source", "Source, " + consequence.ruleWords()),
            Words.sentence(consequence.source())));
    return rows;
  }

  private Region answered(CheckAnswered given) {
    String note = given.words().isEmpty() ? "Without a note." : given.words();
    return told("Answered: " + (given.look() == Look.PASS ? "pass" : "fail"), note);
  }

  private void note(Look look) {
    open(() -> new TextEntryScreen(context, "What was seen?", "", typed -> answer(look, typed)));
  }

  private void answer(Look look, String words) {
    boolean went = context.attempt(() -> context.say(model.answer(consequence.key(), look, words)));
    if (went && look == Look.PASS) {
      context.navigator().back();
    }
    context.navigator().changed();
  }
}
