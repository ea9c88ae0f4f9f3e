package wherefrom.ui.settings;

import java.util.List;
import wherefrom.job.image.Camera;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.LiveCamera;
import wherefrom.ui.app.Page;
import wherefrom.ui.camera.CameraPane;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Split;
import wherefrom.ui.controls.TouchKey;

/** Chooses the camera and shows its picture. */
public final class CameraScreen extends Page implements LiveCamera.Listener {
  private final CameraPane pane;
  private final Pager<Camera> list;

  public CameraScreen(Desk desk) {
    super(desk, "Camera", false);
    pane = new CameraPane(desk, this);
    list = Pager.list(desk.touch(), this::row);
    lay(new Split(desk.scale(), list, pane));
  }

  private TouchKey row(Camera camera) {
    boolean chosen = camera.id().equals(desk.settings().camera());
    return desk.touch().key(camera.title(), () -> choose(camera)).left().select(chosen);
  }

  private void choose(Camera camera) {
    desk.change(desk.settings().withCamera(camera.id()));
    shown();
  }

  private void found(List<Camera> cameras) {
    list.setItems(cameras);
    list.setVisible(!cameras.isEmpty());
    list.setManaged(!cameras.isEmpty());
  }

  @Override
  public void read(String text) {
    desk.say("Read: " + text);
  }

  @Override
  public void ask(String hint) {}

  @Override
  public void brief(String words) {}

  @Override
  public void shown() {
    desk.background(() -> desk.equipment().cameras().list(), this::found);
    pane.start();
  }

  @Override
  public void hidden() {
    pane.stop();
  }
}
