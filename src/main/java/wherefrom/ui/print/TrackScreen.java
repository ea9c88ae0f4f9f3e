package wherefrom.ui.print;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.job.tags.Tracking;
import wherefrom.parts.PartKind;
import wherefrom.text.Words;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.TouchKey;

/** Chooses more kinds of part to track in the job that is open. */
public final class TrackScreen extends Page {
  private static final int IN_A_ROW = 3;

  private final Tracking tracking;
  private final Set<PartKind> chosen = EnumSet.noneOf(PartKind.class);
  private final FitText total;
  private final Pager<List<PartKind>> list;
  private final VBox view;
  private int tags;

  TrackScreen(ScreenContext context) {
    super(context, "More parts to track", false);
    tracking = new Tracking(context.getJob());
    total = context.touch().text("What is tracked stays so: it cannot be taken back.");
    list = Pager.list(context.touch(), this::row);
    KeyRow keys =
        KeyRow.of(
            context,
            new KeyRow.Act("Recommended", () -> turnOn(PartKind.recommended())),
            new KeyRow.Act("All", () -> turnOn(PartKind.all())));
    TagKey tag = context.touch().tag("Track them", "", this::track);
    view = Panes.column(context.scale(), list, new Foot(context, tag, keys));
    if (!context.touch().isLarge()) {
      view.getChildren().add(0, total);
    }
    list.setItems(rows());
    lay(view);
  }

  private void turnOn(Set<PartKind> kinds) {
    chosen.addAll(kinds);
    chosen.retainAll(tracking.offered().keySet());
    list.refill(rows());
    count();
  }

  private List<List<PartKind>> rows() {
    List<PartKind> kinds = List.copyOf(tracking.offered().keySet());
    List<List<PartKind>> rows = new ArrayList<>();
    for (int from = 0; from < kinds.size(); from += IN_A_ROW) {
      rows.add(kinds.subList(from, Math.min(from + IN_A_ROW, kinds.size())));
    }
    return rows;
  }

  private Region row(List<PartKind> kinds) {
    return Tiles.row(context.scale(), kinds.stream().map(this::key).toArray(TouchKey[]::new));
  }

  private TouchKey key(PartKind kind) {
    return context
        .touch()
        .toggle(
            tracking.offered().getOrDefault(kind, 0) + " " + kind.plural(),
            chosen.contains(kind),
            on -> {
              if (on) {
                chosen.add(kind);
              } else {
                chosen.remove(kind);
              }
              count();
            });
  }

  private void count() {
    int more = chosen.stream().mapToInt(kind -> tracking.offered().getOrDefault(kind, 0)).sum();
    tags = more;
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
    return Words.count(tags, "tag") + " more";
  }
}
