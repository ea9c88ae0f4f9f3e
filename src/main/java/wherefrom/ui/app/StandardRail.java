package wherefrom.ui.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The keys that the frame has for the rail. A screen takes those that it wants and puts its own
 * between them; Help and UNDO always have their places.
 *
 * @param back the way back; empty on the first screen
 * @param bench to the bench map; empty where there is no job, and on the bench map itself
 * @param camera the camera beside the work; empty where a screen takes no scans
 */
public record StandardRail(
    Optional<RailKey> back, Optional<RailKey> bench, Optional<RailKey> camera) {

  /** All of them, as most screens want it. */
  public List<RailKey> all() {
    List<RailKey> keys = new ArrayList<>();
    for (Optional<RailKey> key : List.of(back, bench, camera)) {
      key.ifPresent(keys::add);
    }
    return keys;
  }

  /** All of them, with a key of the screen's own before the camera. */
  public List<RailKey> with(RailKey own) {
    List<RailKey> keys = all();
    keys.add(keys.size() - (camera.isPresent() ? 1 : 0), own);
    return keys;
  }
}
