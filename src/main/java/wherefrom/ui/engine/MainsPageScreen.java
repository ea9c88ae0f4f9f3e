package wherefrom.ui.engine;

import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.drawing.Bounds;
import wherefrom.drawing.Glass;
import wherefrom.drawing.MainsPage;
import wherefrom.drawing.Target;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Either;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TouchKey;
import wherefrom.ui.drawn.Drawn;
import wherefrom.ui.drawn.DrawnEngine;

/**
 * The main bearings side by side, each taken apart; those that find no room are turned to. Where
 * large text leaves the drawing no room their parts are listed.
 */
public final class MainsPageScreen extends Page implements Scannable {
  private final EnginePages pages;
  private final Glass glass;
  private final PlaceRows list;
  private final Either room;
  private final TouchKey more;
  private final VBox view;
  private final int asked;
  private int first = 1;
  private int fitting;

  MainsPageScreen(ScreenContext context, EnginePages pages, int main) {
    super(context, "");
    this.pages = pages;
    this.asked = main;
    glass = Glass.screen(context.scale().pixelsPerMm(), context.scale().textFactor());
    list = new PlaceRows(context, pages.index());
    more = context.touch().key("", this::turn);
    more.managedProperty().bind(more.visibleProperty());
    more.setVisible(false);
    room = new Either(this::suiting);
    view = Panes.column(context.scale(), room, more);
    fitting = mains();
    lay(view);
  }

  private int mains() {
    return pages.layout().mains();
  }

  private Region suiting(Bounds free) {
    if (!MainsPage.fits(beside(free), glass)) {
      more.setVisible(false);
      return list.view();
    }
    int now = Math.min(mains(), MainsPage.fitting(free.width(), glass));
    if (now != fitting) {
      fitting = now;
      first = 1 + (asked - 1) / now * now;
    }
    tell();
    return draw();
  }

  /** What is left of the room with the key to the other mains, where one is wanted. */
  private Bounds beside(Bounds free) {
    boolean turns = MainsPage.fitting(free.width(), glass) < mains();
    double key = more.minHeight(free.width()) + view.getSpacing();
    return turns && !more.isVisible()
        ? new Bounds(free.x(), free.y(), free.width(), Math.max(0, free.height() - key))
        : free;
  }

  private void turn() {
    first = next();
    room.again();
  }

  private int next() {
    return first + fitting > mains() ? 1 : first + fitting;
  }

  private void tell() {
    int next = next();
    int last = Math.min(mains(), next + fitting - 1);
    more.setWords(next == last ? "M" + next : "M" + next + " to M" + last);
    more.setVisible(fitting < mains());
  }

  private DrawnEngine draw() {
    Drawn maker = new Drawn(pages.layout(), pages.asked(), context.scale());
    DrawnEngine drawing =
        DrawnEngine.keyed(
            context.touch(), pages.layout(), pages.asked(), maker.mains(first), pages::tapped);
    drawing.live(target -> !pages.places(target).isEmpty());
    drawing.show(pages.index().states(), pages.index().here());
    return drawing;
  }

  @Override
  public String title() {
    return pages.index().kind().isEmpty() ? "Mains" : pages.index().title();
  }

  @Override
  public String aside() {
    return pages.index().aside();
  }

  @Override
  protected void refresh() {
    list.show(pages.places(new Target.Mains()));
    room.again();
  }

  @Override
  public void scan(Scanned scanned) {
    pages.index().scan(scanned);
  }
}
