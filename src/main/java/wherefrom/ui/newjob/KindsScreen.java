package wherefrom.ui.newjob;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import javafx.scene.layout.VBox;
import wherefrom.parts.PartKind;
import wherefrom.text.Words;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.subject.Cell;
import wherefrom.ui.subject.CellGrid;
import wherefrom.ui.subject.SubjectPictures;

/** Chooses the kinds of part that get tags, each as its shape, with how many there are. */
public final class KindsScreen extends Page {
  private static final int COLUMNS = 3;

  private final NewJobModel model;
  private final CellGrid grid;
  private final FitText total;

  KindsScreen(ScreenContext context, NewJobModel model) {
    super(context, "Parts to track", false);
    this.model = model;
    total = context.touch().small("").within(3);
    grid = new CellGrid(context.touch(), COLUMNS);
    KeyRow keys =
        KeyRow.of(
            context,
            new KeyRow.Act(
                context.touch().brief("All that must go back", "Must\u00a0go\u00a0back"),
                () -> turnOn(PartKind.recommended())),
            new KeyRow.Act("All", () -> turnOn(PartKind.all())));
    VBox view = Panes.column(context.scale(), grid, keys);
    if (!context.touch().isLarge()) {
      view.getChildren().add(0, total);
    }
    lay(view);
    refresh();
  }

  private void turnOn(Set<PartKind> kinds) {
    model.trackAll(kinds);
    context.navigator().changed();
  }

  @Override
  protected void refresh() {
    String left = model.untagged();
    total.setWords(left.isEmpty() ? "All that must go back where it was gets a tag." : left);
    grid.show(
        Stream.of(PartKind.values())
            .filter(kind -> model.count(kind) > 0)
            .map(this::cell)
            .toList());
  }

  private Cell cell(PartKind kind) {
    boolean always = PartKind.alwaysOn().contains(kind);
    boolean on = always || model.tracks(kind);
    return new Cell(
        model.count(kind) + " " + kind.plural(),
        always ? "always" : on ? "yes" : "no",
        () -> press(kind, always),
        Optional.of(SubjectPictures.of(context, model.layout(), kind)),
        OptionalDouble.empty(),
        on);
  }

  private void press(PartKind kind, boolean always) {
    if (always) {
      context.say("Every job tracks " + kind.plural() + ".");
      return;
    }
    model.track(kind, !model.tracks(kind));
    context.navigator().changed();
  }

  @Override
  public String aside() {
    return Words.count(model.count(), "tag");
  }
}
