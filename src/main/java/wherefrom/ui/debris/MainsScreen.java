package wherefrom.ui.debris;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.rules.debris.MainsQuestion;
import wherefrom.rules.debris.Opening;
import wherefrom.text.Words;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.TagKey;

/** Did it reach the mains? What asks it, what answers it, what is still to be looked at. */
public final class MainsScreen extends ListPage {
  private final DebrisModel model;

  public MainsScreen(ScreenContext context) {
    super(context, "Did it reach the mains?");
    model = new DebrisModel(context.getJob());
    TagKey tag = tag(() -> NextScreen.ask(context, Opening.FIRST_BEARINGS));
    tag.setWords("First bearings", touch().brief("one main cap at a time", ""));
    layOut(
        new Foot(
            context,
            tag,
            KeyRow.of(
                context,
                act("All bearings", () -> NextScreen.ask(context, Opening.ALL_BEARINGS)))));
  }

  @Override
  public String aside() {
    return DebrisModel.answer(model.question());
  }

  @Override
  protected List<Region> rows() {
    MainsQuestion question = model.question();
    List<Region> rows = new ArrayList<>();
    rows.addAll(said(Words.capital(question.answer().words()), ""));
    each(rows, "Asked by", question.openedBy());
    each(rows, "Answered by", question.answeredBy());
    each(rows, "Still to look at", question.wanted());
    rows.addAll(
        said(
            "How to tell",
            "Wear shows on the lower main shells first. Take one cap off at a time, crank in"
                + " place. Source: TM 5-3895-346-14."));
    rows.addAll(
        said(
            "A clean filter does not answer it",
            "Its bypass may have opened. Common practice, no source."));
    return rows;
  }

  /** Those of one sort in one row where letters are small: they are short. */
  private void each(List<Region> rows, String heading, List<String> what) {
    int together = touch().isLarge() ? 1 : 3;
    for (int at = 0; at < what.size(); at += together) {
      List<String> some = what.subList(at, Math.min(what.size(), at + together));
      if (together == 1) {
        rows.addAll(said(heading, Words.capital(some.get(0))));
      } else {
        rows.add(told(heading, some.stream().map(Words::capital).toArray(String[]::new)));
      }
    }
  }
}
