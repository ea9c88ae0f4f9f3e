package wherefrom.ui.camera;

import java.util.List;
import javafx.geometry.Orientation;
import javafx.scene.Group;
import javafx.scene.image.ImageView;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.Region;
import javafx.scene.shape.Polygon;
import org.jspecify.annotations.Nullable;
import wherefrom.job.reader.Corner;
import wherefrom.job.reader.Sighting;

/** The camera's picture, as large as its room allows, with a line round every tag that is seen. */
final class Preview extends Region {
  /** Height to width of most cameras' pictures. */
  private static final double USUAL = 9.0 / 16;

  private final ImageView picture = new ImageView();
  private final Group lines = new Group();
  private @Nullable WritableImage image;
  private List<Sighting> seen = List.of();

  Preview() {
    getStyleClass().add("preview");
    picture.setPreserveRatio(true);
    picture.setManaged(false);
    lines.setManaged(false);
    getChildren().addAll(picture, lines);
    setMouseTransparent(true);
    setMinSize(0, 0);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  /** Height to width of its picture. */
  double shape() {
    WritableImage shown = image;
    return shown == null ? USUAL : shown.getHeight() / shown.getWidth();
  }

  @Override
  protected double computePrefHeight(double width) {
    return width * shape();
  }

  void show(CameraFeed.Shown frame, List<Sighting> sightings) {
    WritableImage into = image;
    if (into == null || into.getWidth() != frame.width() || into.getHeight() != frame.height()) {
      into = new WritableImage(frame.width(), frame.height());
      image = into;
      picture.setImage(into);
    }
    into.getPixelWriter()
        .setPixels(
            0,
            0,
            frame.width(),
            frame.height(),
            PixelFormat.getByteBgraInstance(),
            frame.bgra(),
            0,
            4 * frame.width());
    seen = List.copyOf(sightings);
    requestLayout();
  }

  boolean hasPicture() {
    return image != null;
  }

  @Override
  protected void layoutChildren() {
    WritableImage shown = image;
    if (shown == null) {
      return;
    }
    double factor = Math.min(getWidth() / shown.getWidth(), getHeight() / shown.getHeight());
    double left = (getWidth() - factor * shown.getWidth()) / 2;
    double top = (getHeight() - factor * shown.getHeight()) / 2;
    picture.setFitWidth(factor * shown.getWidth());
    picture.setFitHeight(factor * shown.getHeight());
    picture.relocate(left, top);
    lines.getChildren().clear();
    for (Sighting sighting : seen) {
      Polygon line = new Polygon();
      line.getStyleClass().add("seen");
      for (Corner corner : sighting.corners()) {
        line.getPoints().addAll(left + factor * corner.x(), top + factor * corner.y());
      }
      lines.getChildren().add(line);
    }
  }
}
