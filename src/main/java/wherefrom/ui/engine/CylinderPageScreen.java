package wherefrom.ui.engine;

import java.util.Optional;
import java.util.Set;
import javafx.scene.layout.Region;
import wherefrom.drawing.Bounds;
import wherefrom.drawing.CylinderZoom;
import wherefrom.drawing.Glass;
import wherefrom.drawing.Target;
import wherefrom.parts.Home;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Either;
import wherefrom.ui.drawn.Drawn;
import wherefrom.ui.drawn.DrawnEngine;

/**
 * One cylinder large, its parts apart: each is a key to what the index has of it. Where large text
 * leaves the drawing no room its parts are listed.
 */
public final class CylinderPageScreen extends Page implements Scannable {
  private final EnginePages pages;
  private final int cylinder;
  private final Set<Place> marked;
  private final Glass glass;
  private final DrawnEngine drawing;
  private final PlaceRows list;
  private final Either view;

  /**
   * @param marked the parts to be ringed: those that a tap on a smaller drawing came nearest to
   */
  CylinderPageScreen(ScreenContext context, EnginePages pages, int cylinder, Set<Place> marked) {
    super(context, "");
    this.marked = Set.copyOf(marked);
    this.pages = pages;
    this.cylinder = cylinder;
    glass = Glass.screen(context.scale().pixelsPerMm(), context.scale().textFactor());
    Drawn maker = new Drawn(pages.layout(), pages.asked(), context.scale());
    drawing =
        DrawnEngine.keyed(
            context.touch(),
            pages.layout(),
            pages.asked(),
            maker.cylinder(cylinder, kind()),
            pages::tapped);
    drawing.live(target -> !pages.places(target).isEmpty());
    list = new PlaceRows(context, pages.index());
    view = new Either(this::suiting);
    lay(view);
  }

  private Optional<PartKind> kind() {
    return pages.index().kind();
  }

  private Region suiting(Bounds room) {
    int columns = kind().map(kind -> kind.home() == Home.VALVE ? 2 : 1).orElse(3);
    return CylinderZoom.fits(room, columns, glass) ? drawing : list.view();
  }

  @Override
  public String title() {
    String whose = "Cylinder " + cylinder;
    return kind().isEmpty() ? whose : pages.index().title() + ", cylinder " + cylinder;
  }

  @Override
  public String aside() {
    return pages.index().aside();
  }

  @Override
  protected void refresh() {
    drawing.show(pages.index().states(), pages.index().here());
    drawing.rings(Set.of(), marked);
    list.mark(marked);
    list.show(pages.places(new Target.Cylinder(cylinder)));
  }

  @Override
  public void scan(Scanned scanned) {
    pages.index().scan(scanned);
  }
}
