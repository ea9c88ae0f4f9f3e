package wherefrom.ui.measure;

import java.util.List;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.job.measure.SetPicture;
import wherefrom.job.measure.SetPictures;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Touch;

/** A set drawn against itself, with the odd one out named. */
public final class CompareScreen implements Screen {
  private final Desk desk;
  private final ReadingPlan plan;
  private final SetPictures model;
  private final StackPane view = Panes.grow(new StackPane());
  private int at;

  public CompareScreen(Desk desk, ReadingPlan plan) {
    this.desk = desk;
    this.plan = plan;
    model = new SetPictures(desk.getJob(), plan);
  }

  @Override
  public String title() {
    return "Compare: " + plan.title();
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

  private void draw() {
    Touch touch = desk.touch();
    List<SetPicture> pictures = model.list();
    if (pictures.isEmpty()) {
      view.getChildren().setAll(touch.text("Nothing measured yet."));
      return;
    }
    SetPicture picture = pictures.get(at % pictures.size());
    javafx.scene.layout.VBox column =
        Panes.column(
            desk.scale(),
            touch.heading(picture.title()),
            new SetPlot(touch, picture.dots(), "square: odd one", picture.unit()),
            touch.small(picture.sentence()));
    if (pictures.size() > 1) {
      column.getChildren().add(touch.primary("Other bank", this::turn));
    }
    view.getChildren().setAll(column);
  }

  private void turn() {
    at++;
    draw();
  }
}
