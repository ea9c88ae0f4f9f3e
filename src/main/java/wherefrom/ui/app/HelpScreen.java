package wherefrom.ui.app;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import wherefrom.parts.Action;
import wherefrom.ui.controls.Either;
import wherefrom.ui.controls.Icon;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;

/** What to do now: one picture, three sentences, what UNDO would take back, what was said last. */
public final class HelpScreen extends Page implements Scannable {
  private static final double PICTURE_MM = 40;

  private final Consumer<Scanned> next;

  /**
   * What there is to say, taken while the screen is on the glass.
   *
   * @param about the screen
   * @param help what to do now, of the keys that it has
   * @param said the message that was shown last, whole; may be empty
   */
  record Told(Screen about, Help help, String said) {}

  static Told told(Screen about, String said) {
    return new Told(about, about.help().where(KeysOnGlass.around(about)), said);
  }

  /**
   * @param next takes the next scan, on the screen that this is about
   */
  HelpScreen(ScreenContext context, Told told, Consumer<Scanned> next) {
    super(context, "What now?", false);
    this.next = next;
    Touch touch = context.touch();
    List<Region> lines = new ArrayList<>();
    Screen about = told.about();
    String said = told.said();
    told.help().sentences().forEach(sentence -> lines.add(ListRow.told(touch, "", sentence)));
    if (about.onJob() && context.job().isPresent()) {
      lines.add(ListRow.told(touch, "UNDO would take back", about.undoes(context)));
    }
    if (!said.isEmpty()) {
      lines.add(0, ListRow.plain(touch, "Said last", List.of(said)));
    }
    Pager<Region> rows = Pager.list(touch, row -> row);
    rows.setItems(lines);
    lay(touch.isLarge() ? rows : withPicture(touch, about, rows));
  }

  /** The picture beside the sentences where glass lies, above them where it stands upright. */
  private static Region withPicture(Touch touch, Screen about, Region rows) {
    double side = touch.scale().px(PICTURE_MM);
    Region picture = about.helpPicture(side).orElseGet(() -> Icon.HELP.draw(side));
    StackPane held = new StackPane(picture);
    held.setAlignment(Pos.TOP_CENTER);
    return new Either(
        room -> {
          boolean upright = room.height() > room.width();
          double wide = PICTURE_MM + 2 * Scale.GAP_MM;
          held.setMinWidth(upright ? 0 : touch.scale().px(wide));
          return upright
              ? Panes.column(touch.scale(), held, rows)
              : Panes.row(touch.scale(), held, rows);
        });
  }

  /** What it says is done on the screen that it is about. */
  @Override
  public boolean takes(Action card) {
    return card != Action.SKIP;
  }

  @Override
  public void scan(Scanned scanned) {
    if (scanned.card().filter(Action.HELP::equals).isEmpty()) {
      next.accept(scanned);
    }
  }
}
