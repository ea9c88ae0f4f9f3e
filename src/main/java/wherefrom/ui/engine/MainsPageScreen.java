package wherefrom.ui.engine;

import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import wherefrom.drawing.Glass;
import wherefrom.drawing.MainsPage;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TouchKey;
import wherefrom.ui.drawn.Drawn;
import wherefrom.ui.drawn.DrawnEngine;

/** The main bearings side by side, each taken apart; those that find no room are turned to. */
public final class MainsPageScreen implements Screen, Scannable {
  private final Desk desk;
  private final EnginePages pages;
  private final StackPane room = Panes.grow(new StackPane());
  private final TouchKey more;
  private final VBox view;
  private final int asked;
  private int first = 1;
  private int fitting;

  MainsPageScreen(Desk desk, EnginePages pages, int main) {
    this.desk = desk;
    this.pages = pages;
    this.asked = main;
    more = desk.touch().key("", this::turn);
    more.managedProperty().bind(more.visibleProperty());
    view = Panes.column(desk.scale(), room, more);
    room.widthProperty().addListener((seen, old, wide) -> fit(wide.doubleValue()));
    fitting = pages.layout().mains();
    draw();
  }

  private int mains() {
    return pages.layout().mains();
  }

  private void fit(double width) {
    double factor = desk.scale().textFactor();
    Glass glass = Glass.screen(desk.scale().pixelsPerMm(), factor);
    int now = Math.min(mains(), MainsPage.fitting(width, glass));
    if (now != fitting) {
      fitting = now;
      first = 1 + (asked - 1) / now * now;
    }
    draw();
  }

  private void turn() {
    first = first + fitting > mains() ? 1 : first + fitting;
    draw();
  }

  private void draw() {
    Drawn maker = new Drawn(pages.layout(), pages.asked(), desk.scale());
    DrawnEngine drawing =
        DrawnEngine.keyed(
            desk.touch(), pages.layout(), pages.asked(), maker.mains(first), pages::tapped);
    drawing.live(target -> !pages.places(target).isEmpty());
    drawing.show(pages.index().states(), pages.index().here());
    room.getChildren().setAll(drawing);
    int next = first + fitting > mains() ? 1 : first + fitting;
    int last = Math.min(mains(), next + fitting - 1);
    more.setWords(next == last ? "M" + next : "M" + next + " to M" + last);
    more.setVisible(fitting < mains());
  }

  @Override
  public String title() {
    return pages.index().kind().isEmpty() ? "Mains" : pages.index().title();
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    draw();
  }

  @Override
  public void changed() {
    draw();
  }

  @Override
  public void scan(String text) {
    pages.index().scan(text);
  }
}
