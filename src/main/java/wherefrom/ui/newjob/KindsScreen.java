package wherefrom.ui.newjob;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.parts.PartKind;
import wherefrom.text.Words;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.TouchKey;

/** Chooses the kinds of part that get tags, each with how many there are. */
public final class KindsScreen extends Page {
  private static final int IN_A_ROW = 3;

  private final NewJobModel model;
  private final Pager<List<PartKind>> list;
  private final FitText total;
  private final VBox view;

  KindsScreen(ScreenContext context, NewJobModel model) {
    super(context, "Parts to track", false);
    this.model = model;
    total = context.touch().small("").within(3);
    list = Pager.list(context.touch(), this::row);
    KeyRow keys =
        KeyRow.of(
            context,
            new KeyRow.Act("Recommended", () -> turnOn(PartKind.recommended())),
            new KeyRow.Act("All", () -> turnOn(PartKind.all())));
    view = Panes.column(context.scale(), list, keys);
    if (!context.touch().isLarge()) {
      view.getChildren().add(0, total);
    }
    list.setItems(rows());
    lay(view);
    say();
  }

  private void turnOn(Set<PartKind> kinds) {
    model.trackAll(kinds);
    list.refill(rows());
    count();
  }

  private void say() {
    String left = model.untagged();
    total.setWords(left.isEmpty() ? "All that must go back where it was gets a tag." : left);
  }

  private List<List<PartKind>> rows() {
    List<PartKind> kinds = new ArrayList<>(List.of(PartKind.values()));
    kinds.removeIf(kind -> model.count(kind) == 0);
    List<List<PartKind>> rows = new ArrayList<>();
    for (int from = 0; from < kinds.size(); from += IN_A_ROW) {
      rows.add(List.copyOf(kinds.subList(from, Math.min(from + IN_A_ROW, kinds.size()))));
    }
    return rows;
  }

  private Region row(List<PartKind> kinds) {
    return Tiles.row(context.scale(), kinds.stream().map(this::key).toArray(TouchKey[]::new));
  }

  private TouchKey key(PartKind kind) {
    String words = model.count(kind) + " " + kind.plural();
    if (PartKind.alwaysOn().contains(kind)) {
      return context
          .touch()
          .key(words + ": always", () -> context.say("Every job tracks " + kind.plural() + "."))
          .select(true);
    }
    return context
        .touch()
        .toggle(
            words,
            model.tracks(kind),
            on -> {
              model.track(kind, on);
              count();
            });
  }

  private void count() {
    say();
    context.navigator().changed();
  }

  @Override
  public String aside() {
    return Words.count(model.count(), "tag");
  }
}
