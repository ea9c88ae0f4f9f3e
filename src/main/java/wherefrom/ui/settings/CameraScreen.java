package wherefrom.ui.settings;

import java.util.List;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import wherefrom.job.image.Camera;
import wherefrom.ui.app.LiveCamera;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.camera.CameraPane;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TouchKey;

/** Chooses the camera and shows its picture. */
public final class CameraScreen extends Page implements LiveCamera.Listener {
  /** What the picture below the list likes to have of the height. */
  private static final double BELOW_MM = 40;

  private final CameraPane pane;
  private final Pager<Camera> list;
  private List<Camera> cameras = List.of();
  private final StackPane view = Panes.grow(new StackPane());

  public CameraScreen(ScreenContext context) {
    super(context, "Camera", false);
    pane = new CameraPane(context, this);
    pane.again("Stopped. Press it again.");
    list = Pager.list(context.touch(), this::row);
    pane.setPrefHeight(context.scale().px(BELOW_MM));
    // The rows take what they need, the picture all the rest.
    VBox.setVgrow(list, Priority.SOMETIMES);
    view.getChildren().setAll(pane);
    lay(view);
  }

  private TouchKey row(Camera camera) {
    boolean chosen =
        CameraPane.used(cameras, context.settings().camera()).filter(camera::equals).isPresent();
    return context.touch().key(camera.title(), () -> choose(camera)).left().select(chosen);
  }

  private void choose(Camera camera) {
    context.change(context.settings().withCamera(camera.id()));
    shown();
  }

  private void found(List<Camera> found) {
    cameras = List.copyOf(found);
    list.setItems(cameras);
    view.getChildren()
        .setAll(cameras.isEmpty() ? none() : Panes.column(context.scale(), list, pane));
  }

  /** Where there is none, what to do instead has the room; one may have been plugged in since. */
  private Region none() {
    return Panes.column(
        context.scale(),
        pane,
        context.touch().tag("Look again", "after you plug one in", this::shown));
  }

  @Override
  public void read(String text) {
    context.say("Read: " + text);
  }

  @Override
  public void ask(String hint) {}

  @Override
  public void brief(String words) {}

  @Override
  public void failed(String sentence) {}

  @Override
  public void shown() {
    context.background(() -> context.services().cameras().list(), this::found);
    pane.start();
  }

  @Override
  public void hidden() {
    pane.stop();
  }
}
