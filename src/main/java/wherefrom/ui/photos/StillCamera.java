package wherefrom.ui.photos;

import java.util.List;
import java.util.Optional;
import wherefrom.job.image.Camera;
import wherefrom.ui.app.ScreenContext;

/** The camera that single pictures are taken with. */
public final class StillCamera {
  private StillCamera() {}

  /** The one that is set, else the first; where there is none, that is said. */
  public static Optional<Camera> find(ScreenContext context) {
    List<Camera> cameras = context.services().cameras().list();
    if (cameras.isEmpty()) {
      context.say("There is no camera here. Plug one in, or use a file.");
    }
    return cameras.stream()
        .filter(each -> each.id().equals(context.settings().camera()))
        .findFirst()
        .or(() -> cameras.stream().findFirst());
  }
}
