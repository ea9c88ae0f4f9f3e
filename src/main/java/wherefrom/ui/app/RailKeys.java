package wherefrom.ui.app;

import java.util.List;
import java.util.Optional;
import wherefrom.ui.controls.Icon;

/** Which keys the rail has for a screen. */
final class RailKeys {
  private final ScreenContext context;
  private final CameraSide camera;
  private final Runnable help;

  RailKeys(ScreenContext context, CameraSide camera, Runnable help) {
    this.context = context;
    this.camera = camera;
    this.help = help;
  }

  /** The keys from the top. */
  List<RailKey> of(Screen screen, int depth) {
    return WholeGlass.is(screen) ? List.of() : screen.rail(standard(screen, depth));
  }

  /**
   * The key beside UNDO: Help, or Stop while long work runs that can be stopped.
   *
   * @param unread whether a message is longer than its place: Help shows all of it
   */
  Optional<RailKey> beside(Screen screen, boolean unread, Optional<LongWork> stoppable) {
    if (WholeGlass.is(screen)) {
      return Optional.empty();
    }
    Optional<RailKey> stop = stoppable.map(work -> new RailKey(Icon.STOP_WORK, "Stop", work::stop));
    RailKey helping =
        new RailKey(Icon.HELP, "Help", unread ? "Help: more to read" : "Help", help, unread);
    return stop.isPresent() || screen instanceof HelpScreen ? stop : Optional.of(helping);
  }

  private StandardRail standard(Screen screen, int depth) {
    Navigator navigator = context.navigator();
    RailKey back = new RailKey(Icon.BACK, "Back", navigator::goBack);
    RailKey bench = new RailKey(Icon.BENCH, "Bench", () -> navigator.show(ScreenId.BENCH_MAP));
    RailKey looking =
        new RailKey(
            Icon.CAMERA,
            "Camera",
            camera.on() ? "Camera, on" : "Camera",
            camera::turn,
            camera.on());
    boolean onJob = screen.onJob() && context.job().isPresent();
    return new StandardRail(
        Optional.of(back).filter(key -> depth > 0),
        Optional.of(bench).filter(key -> onJob),
        Optional.of(looking).filter(key -> camera.offered(screen)));
  }
}
