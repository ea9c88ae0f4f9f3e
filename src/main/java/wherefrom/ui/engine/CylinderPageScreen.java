package wherefrom.ui.engine;

import javafx.scene.layout.Region;
import wherefrom.drawing.Target;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.drawn.Drawn;
import wherefrom.ui.drawn.DrawnEngine;

/** One cylinder large, its parts apart: each is a key to what the index has of it. */
public final class CylinderPageScreen implements Screen, Scannable {
  private final EnginePages pages;
  private final int cylinder;
  private final DrawnEngine drawing;

  CylinderPageScreen(Desk desk, EnginePages pages, int cylinder) {
    this.pages = pages;
    this.cylinder = cylinder;
    Drawn maker = new Drawn(pages.layout(), pages.asked(), desk.scale());
    drawing =
        Panes.grow(
            DrawnEngine.keyed(
                desk.touch(),
                pages.layout(),
                pages.asked(),
                maker.cylinder(cylinder, pages.index().kind()),
                this::tapped));
    drawing.live(target -> !pages.places(target).isEmpty());
  }

  private void tapped(Target target) {
    pages.tapped(target);
  }

  @Override
  public String title() {
    String whose = "Cylinder " + cylinder;
    return pages.index().kind().isEmpty() ? whose : pages.index().title() + ", cylinder " + cylinder;
  }

  @Override
  public Region view() {
    return drawing;
  }

  @Override
  public void shown() {
    drawing.show(pages.index().states(), pages.index().here());
  }

  @Override
  public void changed() {
    shown();
  }

  @Override
  public void scan(String text) {
    pages.index().scan(text);
  }
}
