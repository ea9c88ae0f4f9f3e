package wherefrom.ui.changes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.inspection.Look;
import wherefrom.job.StandingRule;
import wherefrom.job.entry.CheckAnswered;
import wherefrom.rules.consequence.Consequence;
import wherefrom.text.Words;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;

/** One consequence whole: where, why, from which source; a check that stands is answered here. */
public final class ConsequenceScreen implements Screen {
  private final Desk desk;
  private final Consequence consequence;
  private final ChangesModel model;
  private final Pager<Region> rows;
  private final Tiles answers;
  private final VBox view;

  public ConsequenceScreen(Desk desk, Consequence consequence) {
    this.desk = desk;
    this.consequence = consequence;
    model = new ChangesModel(desk.getJob());
    rows = Pager.list(desk.touch(), row -> row);
    answers =
        Tiles.row(
            desk.scale(),
            desk.touch().primary("Pass", () -> answer(Look.PASS, "")),
            desk.touch()
                .primary(
                    desk.touch().brief("Pass, with a note", "Pass, note"), () -> note(Look.PASS)),
            desk.touch().primary("Fail", () -> note(Look.FAIL)));
    view = Panes.column(desk.scale(), rows, answers);
  }

  @Override
  public String title() {
    return Words.capital(consequence.ruleWords()) + ": " + consequence.effect().words();
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    Optional<StandingRule> check = model.find(consequence.key());
    boolean asked = consequence.effect().isCheck() && check.isPresent();
    answers.setVisible(asked);
    answers.setManaged(asked);
    List<Region> lines = new ArrayList<>();
    check.flatMap(StandingRule::answer).ifPresent(given -> lines.add(answered(given)));
    lines.add(row(Words.capital(consequence.headline()), consequence.sentence()));
    if (!consequence.whereWords().isEmpty()) {
      lines.add(row("Where", Words.sentence(consequence.whereWords())));
    }
    String because = "Because";
    for (String reason : consequence.reasons()) {
      lines.add(row(because, Words.sentence(reason)));
      because = "and so";
    }
    lines.add(row("Source", Words.sentence(consequence.source())));
    rows.refill(lines);
  }

  @Override
  public void changed() {
    shown();
  }

  private Region row(String heading, String words) {
    return ListRow.told(desk.touch(), heading, words);
  }

  private Region answered(CheckAnswered given) {
    String note = given.words().isEmpty() ? "Without a note." : given.words();
    return row("Answered: " + (given.look() == Look.PASS ? "pass" : "fail"), note);
  }

  private void note(Look look) {
    desk.navigator()
        .open(() -> new TextEntryScreen(desk, "What was seen?", "", typed -> answer(look, typed)));
  }

  private void answer(Look look, String words) {
    boolean went = desk.attempt(() -> desk.say(model.answer(consequence.key(), look, words)));
    if (went && look == Look.PASS) {
      desk.navigator().back();
    }
    desk.navigator().changed();
  }
}
