package wherefrom.ui.tray;

import java.util.List;
import javafx.scene.Group;
import javafx.scene.image.ImageView;
import javafx.scene.image.PixelWriter;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.Region;
import javafx.scene.shape.Polygon;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.Corner;
import wherefrom.job.tray.PictureMark;

/** A photograph as large as its room allows, with a line round every tag that was found. */
final class TrayPicture extends Region {
  private static final int MOST = 1600;
  private static final int OPAQUE = 0xFF000000;
  private static final int GREY = 0x010101;

  private final GreyImage picture;
  private final ImageView view;
  private final Group lines = new Group();
  private List<PictureMark> marks = List.of();

  TrayPicture(GreyImage picture) {
    this.picture = picture;
    view = new ImageView(small(picture));
    view.setPreserveRatio(true);
    view.setManaged(false);
    lines.setManaged(false);
    getStyleClass().add("preview");
    getChildren().addAll(view, lines);
    setMouseTransparent(true);
    setMinSize(0, 0);
  }

  void show(List<PictureMark> shown) {
    marks = List.copyOf(shown);
    requestLayout();
  }

  private static WritableImage small(GreyImage picture) {
    int step = (Math.max(picture.width(), picture.height()) + MOST - 1) / MOST;
    int width = Math.max(1, picture.width() / step);
    int height = Math.max(1, picture.height() / step);
    WritableImage image = new WritableImage(width, height);
    PixelWriter writer = image.getPixelWriter();
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        writer.setArgb(x, y, OPAQUE | picture.at(x * step, y * step) * GREY);
      }
    }
    return image;
  }

  @Override
  protected void layoutChildren() {
    double factor = Math.min(getWidth() / picture.width(), getHeight() / picture.height());
    double left = (getWidth() - factor * picture.width()) / 2;
    double top = (getHeight() - factor * picture.height()) / 2;
    view.setFitWidth(factor * picture.width());
    view.setFitHeight(factor * picture.height());
    view.relocate(left, top);
    lines.getChildren().clear();
    for (PictureMark mark : marks) {
      add(mark, "mark-halo", left, top, factor);
      add(mark, mark.read() ? "mark-read" : "mark-unread", left, top, factor);
    }
    lines.applyCss();
  }

  private void add(PictureMark mark, String style, double left, double top, double factor) {
    Polygon line = new Polygon();
    line.getStyleClass().add(style);
    for (Corner corner : mark.outline()) {
      line.getPoints().addAll(left + factor * corner.x(), top + factor * corner.y());
    }
    lines.getChildren().add(line);
  }
}
