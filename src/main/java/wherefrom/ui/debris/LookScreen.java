package wherefrom.ui.debris;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import wherefrom.rules.debris.DebrisLook;
import wherefrom.rules.debris.DebrisPlace;
import wherefrom.text.Words;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.controls.Either;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.TouchKey;

/** How does it look? Every look as a drawing with its words. */
public final class LookScreen extends Page {
  private static final int PER_ROW = 4;

  /** As high as the keys have room for. */
  private static final double[] DRAWN_MM = {20, 16, 13, 10, 7};

  private static final double LEAST_DRAWN_MM = 7;

  /** What a key has of the row's width, in parts of its drawing's height. */
  private static final double WIDE = 2.6;

  private final DebrisPlace place;
  private final DebrisModel model;
  private final KeyRow keys;
  private final TouchKey note;
  private final DebrisNotes notes;

  public LookScreen(ScreenContext context, DebrisPlace place) {
    super(context, Words.capital(place.words()) + ": what is it?");
    this.place = place;
    model = new DebrisModel(context.getJob());
    notes = context.kept().keepOfJob(DebrisNotes.class, DebrisNotes::new);
    keys = KeyRow.of(context);
    note = touch().key("", this::note);
    lay(touch().isLarge() ? Panes.column(context.scale(), paged(), keys) : atOnce());
  }

  /** The note stands in the row of the last looks. */
  private Region atOnce() {
    return new Either(
            room ->
                DoubleStream.of(DRAWN_MM)
                    .filter(mm -> PER_ROW * context.scale().px(WIDE * mm) <= room.width())
                    .mapToObj(this::tiles)
                    .filter(tiles -> tiles.minHeight(room.width()) <= room.height())
                    .findFirst()
                    .orElseGet(() -> tiles(LEAST_DRAWN_MM)))
        .needing(tiles(LEAST_DRAWN_MM));
  }

  private Tiles tiles(double drawnMm) {
    Stream<TouchKey> looks = Stream.of(DebrisLook.values()).map(look -> key(look, drawnMm));
    return Panes.grow(
        Tiles.of(
            context.scale(), PER_ROW, Stream.concat(looks, Stream.of(note)).toArray(Node[]::new)));
  }

  /** Large letters: two looks in each row. */
  private Region paged() {
    Pager<List<DebrisLook>> rows =
        Pager.list(
            touch(),
            pair -> Tiles.row(context.scale(), pair.stream().map(this::key).toArray(Node[]::new)));
    List<DebrisLook> all = List.of(DebrisLook.values());
    List<List<DebrisLook>> pairs = new ArrayList<>();
    for (int at = 0; at < all.size(); at += 2) {
      pairs.add(all.subList(at, Math.min(at + 2, all.size())));
    }
    rows.setItems(pairs);
    return rows;
  }

  private TouchKey key(DebrisLook look) {
    return key(look, LEAST_DRAWN_MM);
  }

  private TouchKey key(DebrisLook look, double drawnMm) {
    TouchKey key =
        touch()
            .key(Words.capital(look.brief()), () -> found(look))
            .draw(LookDrawing.of(look, context.scale().px(drawnMm)));
    key.setAccessibleText(look.words());
    return key;
  }

  @Override
  protected void refresh() {
    String words = notes.at(place).isEmpty() ? "Add a note" : "Change note";
    note.setWords(words);
    keys.setActs(List.of(act(words, this::note)));
  }

  private void note() {
    open(
        () ->
            new TextEntryScreen(
                context,
                "Note on what was found",
                notes.at(place),
                typed -> notes.keep(place, typed)));
  }

  private void found(DebrisLook look) {
    if (context.attempt(() -> context.say(model.found(place, look, notes.at(place))))) {
      notes.keep(place, "");
      context.navigator().back();
      open(() -> new NextScreen(context));
    }
  }
}
