package wherefrom.ui.debris;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.layout.Region;
import wherefrom.rules.debris.MainsQuestion;
import wherefrom.rules.debris.Opening;
import wherefrom.rules.debris.ReachedMains;
import wherefrom.text.Words;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.TagKey;

/** Did it reach the mains? What asks it, what answers it, what is still to be looked at. */
public final class MainsScreen extends ListPage {
  private final DebrisModel model;
  private final TagKey tag;
  private final KeyRow keys;
  private final Foot foot;

  public MainsScreen(ScreenContext context) {
    super(context, "Did it reach the mains?");
    model = new DebrisModel(context.getJob());
    tag = tag(() -> NextScreen.ask(context, model.telling()));
    keys = KeyRow.of(context);
    foot = new Foot(context, tag, keys);
    layOut(foot);
  }

  /** While the question is open the tag leads to the look that answers it. */
  @Override
  protected void refresh() {
    super.refresh();
    boolean open = model.question().answer() == ReachedMains.OPEN;
    Opening telling = model.telling();
    foot.offerTag(open);
    if (open) {
      tag.setWords("Look at " + Words.small(telling.title()), touch().brief("then press here", ""));
    } else {
      tag.setWords("", "");
    }
    keys.setActs(
        Stream.of(Opening.FIRST_BEARINGS, Opening.ALL_BEARINGS)
            .filter(one -> !open || one != telling)
            .map(one -> act(one.title(), () -> NextScreen.ask(context, one)))
            .toList());
  }

  @Override
  public String aside() {
    return DebrisModel.answer(model.question());
  }

  @Override
  protected List<Region> rows() {
    MainsQuestion question = model.question();
    List<Region> rows = new ArrayList<>();
    rows.add(answer(question.answer()));
    each(rows, "Asked by", question.openedBy());
    each(rows, "Answered by", question.answeredBy());
    each(rows, "Still to look at", question.wanted());
    rows.add(
        told(
            "How to tell",
            "Wear shows on the lower main shells first. Take one cap off at a time, crank in"
                + " place. Source: TM 5-3895-346-14."));
    rows.add(
        told(
            "A clean filter does not answer it",
            "Its bypass may have opened. Common practice, no source."));
    return rows;
  }

  /** The answer, and what it rests on. */
  private Region answer(ReachedMains answer) {
    return told(Words.capital(answer.answer()), Words.sentence(answer.because()));
  }

  /** Several of one sort in one row: they are short. */
  private void each(List<Region> rows, String heading, List<String> what) {
    if (touch().isLarge() && !what.isEmpty()) {
      rows.add(told(heading, Words.sentence(String.join("; ", what))));
    } else if (!what.isEmpty()) {
      rows.add(told(heading, what.stream().map(Words::capital).toArray(String[]::new)));
    }
  }
}
