package wherefrom.ui.puttogether;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.job.JobPartNames;
import wherefrom.job.puttogether.StopWords;
import wherefrom.job.puttogether.ToFit;
import wherefrom.rules.VerdictWords;
import wherefrom.text.Words;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.changes.StandingScreen;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.decide.DecidePartScreen;
import wherefrom.ui.takeapart.PartName;

/** The parts that would be stopped at their own places: why, and what leads out of it. */
public final class HeldScreen extends Page {
  private final Pager<Region> rows;

  public HeldScreen(ScreenContext context) {
    super(context, "Held");
    rows = Pager.list(context.touch(), row -> row);
    lay(rows);
  }

  @Override
  public String aside() {
    return "would be stopped";
  }

  @Override
  protected void refresh() {
    List<Region> lines = new ArrayList<>();
    new ToFit(context.getJob()).held().forEach(held -> lines.add(row(held)));
    if (lines.isEmpty()) {
      lines.add(
          ListRow.told(
              context.touch(),
              "Nothing is held",
              "No part would be stopped. Back, then scan the next."));
    }
    rows.refill(lines);
  }

  /** {@code Rod 1, upper: must be new}, and what is to be done about it. */
  private Region row(ToFit.Held held) {
    PartName name = PartName.of(context.state().layout(), held.place());
    VerdictWords words = held.why().words(new JobPartNames(context.state()));
    return ListRow.key(
        context.touch(),
        Words.capital(name.brief()) + ": " + held.why().word(),
        List.of(words.first().words() + ". " + words.small()),
        () -> cure(held, words));
  }

  private void cure(ToFit.Held held, VerdictWords words) {
    int item = held.part().item();
    switch (words.first()) {
      case NEW_PART ->
          new PlaceWays(context, new MissingModel(context.getJob()))
              .replace(held.part(), StopWords.newPart(context.state(), held.why()));
      case DECIDE -> open(() -> DecidePartScreen.once(context, item));
      case DO_THE_CHECK -> open(() -> StandingScreen.of(context, item));
      case HEAD, SHAFT, CAP, ROD -> ToCarrier.open(context, held.place());
      default -> context.navigator().show(ScreenId.PART, item);
    }
  }
}
