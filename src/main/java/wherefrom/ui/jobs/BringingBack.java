package wherefrom.ui.jobs;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import wherefrom.job.ports.Damage;
import wherefrom.ui.app.ScreenContext;

/** Brings exported jobs back among the jobs, and opens the last of them. */
public final class BringingBack {
  private final ScreenContext context;

  public BringingBack(ScreenContext context) {
    this.context = context;
  }

  /** A job that came back, and what is damaged in those that did. */
  private record Back(Path job, List<String> damage) {}

  /** Does nothing where there are none. The first that cannot be brought back ends it. */
  public void all(List<Path> files) {
    if (files.isEmpty()) {
      return;
    }
    Path shop = context.settings().shop();
    context.longWork("Bringing the job back", () -> restore(files, shop), this::broughtBack);
  }

  private Back restore(List<Path> files, Path shop) throws IOException {
    Path job = shop;
    List<String> damage = new ArrayList<>();
    for (Path file : files) {
      job = context.services().archives().restore(file, shop);
      damage.addAll(Damage.of(context.services().checks(), job));
    }
    return new Back(job, damage);
  }

  /** A damaged job is not to be taken for a sound one; where it cannot be opened, it is listed. */
  private void broughtBack(Back back) {
    context.attempt(() -> context.open(back.job()));
    if (!back.damage().isEmpty()) {
      context.say(
          "The job is brought back as "
              + back.job()
              + ", but it is damaged. "
              + String.join(" ", back.damage()));
    }
  }
}
