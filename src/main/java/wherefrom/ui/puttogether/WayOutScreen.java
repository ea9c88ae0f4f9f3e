package wherefrom.ui.puttogether;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.rules.Cycle;
import wherefrom.text.Words;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TagKey;

/** Parts in each other's places: which to take out, in which order, and where each belongs. */
public final class WayOutScreen extends Page {
  private final MissingModel model;
  private final Pager<Region> rows;
  private final TagKey tag;
  private final VBox view;

  public WayOutScreen(ScreenContext context) {
    super(context, "In each other's places");
    model = new MissingModel(context.getJob());
    rows = Pager.list(context.touch(), row -> row);
    tag = touch().tag("", "", this::press);
    view = Panes.column(context.scale());
    lay(view);
  }

  @Override
  protected void refresh() {
    List<Region> lines = new ArrayList<>();
    for (Cycle cycle : model.cycles()) {
      int step = 1;
      for (Cycle.Move move : cycle.moves()) {
        lines.add(row(step, move, cycle, lines.isEmpty()));
        step++;
      }
    }
    view.getChildren().setAll(rows);
    findFirst()
        .ifPresent(
            move -> {
              tag.setWords("It is out: " + model.code(move), touch().brief("step 1", ""));
              view.getChildren().add(tag);
            });
    if (lines.isEmpty()) {
      lines.add(
          ListRow.told(
              context.touch(), "Nothing", "No part sits in another one's place. Scan them in."));
    }
    rows.refill(lines);
  }

  private Optional<Cycle.Move> findFirst() {
    return model.cycles().stream().flatMap(cycle -> cycle.moves().stream()).findFirst();
  }

  private void press() {
    findFirst().ifPresent(this::took);
  }

  /** The tag says that the first one is out; the others have keys. */
  private Region row(int step, Cycle.Move move, Cycle cycle, boolean first) {
    String aside = cycle.closed() && step == 1 ? "Lay it aside: its place is still taken." : "";
    String words = step + ". " + context.touch().brief(model.words(move), MissingModel.brief(move));
    if (first) {
      return ListRow.plain(touch(), words, List.of(aside));
    }
    return ListRow.key(
        context.touch(),
        words,
        List.of(
            aside, context.touch().brief("Press when it is out.", Words.capital(model.code(move)))),
        () -> took(move));
  }

  private void took(Cycle.Move move) {
    model.takeOut(move);
    if (!model.trouble().isEmpty()) {
      context.say(model.trouble());
    }
    context.navigator().changed();
  }
}
