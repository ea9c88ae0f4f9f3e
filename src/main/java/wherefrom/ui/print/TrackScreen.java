package wherefrom.ui.print;

import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import javafx.scene.layout.VBox;
import wherefrom.job.tags.Tracking;
import wherefrom.parts.PartKind;
import wherefrom.text.Words;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.subject.Cell;
import wherefrom.ui.subject.CellGrid;
import wherefrom.ui.subject.SubjectPictures;

/** Chooses more kinds of part to track in the job that is open, each as its shape. */
public final class TrackScreen extends Page {
  private static final int COLUMNS = 3;

  private final Tracking tracking;
  private final Set<PartKind> chosen = EnumSet.noneOf(PartKind.class);
  private final FitText total;
  private final CellGrid grid;
  private final Foot foot;

  TrackScreen(ScreenContext context) {
    super(context, "More parts to track", false);
    tracking = new Tracking(context.getJob());
    total = context.touch().text("What is tracked stays so: it cannot be taken back.");
    grid = new CellGrid(context.touch(), COLUMNS);
    KeyRow keys =
        KeyRow.of(
            context,
            new KeyRow.Act(
                context.touch().brief("All that must go back", "Must\u00a0go\u00a0back"),
                () -> turnOn(PartKind.recommended())),
            new KeyRow.Act("All", () -> turnOn(PartKind.all())));
    foot =
        new Foot(
            context,
            context
                .touch()
                .tag("Track them", context.touch().brief("", "cannot be undone"), this::track),
            keys);
    VBox view = Panes.column(context.scale(), grid, foot);
    if (!context.touch().isLarge()) {
      view.getChildren().add(0, total);
    }
    lay(view);
    refresh();
  }

  private void turnOn(Set<PartKind> kinds) {
    chosen.addAll(kinds);
    chosen.retainAll(tracking.offered().keySet());
    context.navigator().changed();
  }

  @Override
  protected void refresh() {
    foot.offerTag(!chosen.isEmpty());
    grid.show(tracking.offered().keySet().stream().map(this::cell).toList());
  }

  private Cell cell(PartKind kind) {
    boolean on = chosen.contains(kind);
    return new Cell(
        Words.capital(kind.plural()),
        Words.count(tracking.offered().getOrDefault(kind, 0), "tag"),
        () -> press(kind),
        Optional.of(SubjectPictures.of(context, kind)),
        OptionalDouble.empty(),
        on);
  }

  private void press(PartKind kind) {
    if (!chosen.remove(kind)) {
      chosen.add(kind);
    }
    context.navigator().changed();
  }

  private void track() {
    context.attempt(
        () -> {
          Tracking.Answer came = tracking.track(chosen);
          if (came instanceof Tracking.Answer.Tracked tracked) {
            context.navigator().back();
            context.say(tracked.sentence());
          } else {
            context.say(((Tracking.Answer.Refused) came).sentence());
          }
        });
  }

  @Override
  public String aside() {
    int more = chosen.stream().mapToInt(kind -> tracking.offered().getOrDefault(kind, 0)).sum();
    return more == 0 ? "none chosen" : Words.count(more, "tag") + " more";
  }
}
