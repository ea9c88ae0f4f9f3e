package wherefrom.ui.settings;

import java.util.List;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import wherefrom.job.image.Camera;
import wherefrom.ui.app.LiveCamera;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.camera.CameraPane;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Split;
import wherefrom.ui.controls.TouchKey;

/** Chooses the camera and shows its picture. */
public final class CameraScreen extends Page implements LiveCamera.Listener {
  /** What the picture below the list takes at least where that leaves it room. */
  private static final double BELOW_MM = 40;

  private final CameraPane pane;
  private final Pager<Camera> list;
  private final StackPane view = Panes.grow(new StackPane());

  public CameraScreen(ScreenContext context) {
    super(context, "Camera", false);
    pane = new CameraPane(context, this);
    list = Pager.list(context.touch(), this::row);
    view.getChildren().setAll(pane);
    lay(view);
  }

  private TouchKey row(Camera camera) {
    boolean chosen = camera.id().equals(context.settings().camera());
    return context.touch().key(camera.title(), () -> choose(camera)).left().select(chosen);
  }

  private void choose(Camera camera) {
    context.change(context.settings().withCamera(camera.id()));
    shown();
  }

  private void found(List<Camera> cameras) {
    list.setItems(cameras);
    view.getChildren().setAll(cameras.isEmpty() ? none() : beside());
  }

  /** Where there is none, what to do instead has the room; one may have been plugged in since. */
  private Region none() {
    return Panes.column(
        context.scale(),
        pane,
        context.touch().tag("Look again", "after you plug one in", this::shown));
  }

  /** Large letters beside the list would have one word a line. */
  private Region beside() {
    if (!context.touch().isLarge()) {
      return new Split(context.scale(), list, pane);
    }
    pane.setPrefHeight(context.scale().px(BELOW_MM));
    return Panes.column(context.scale(), list, pane);
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
