package wherefrom.ui.jobs;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.job.ports.Archives;
import wherefrom.job.ports.Damage;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.ScreenContext;

/**
 * Brings exported jobs back among the jobs, and opens the last of them. One that is there already
 * stays as it is: the file is an older copy of it, or a newer one that only the person can choose.
 */
public final class BringingBack {
  private static final String THERE = "This job was here already. The file changes nothing in it.";

  private final ScreenContext context;

  public BringingBack(ScreenContext context) {
    this.context = context;
  }

  /**
   * A job that came back or was there.
   *
   * @param damage what is damaged in those that came back
   */
  private record Back(Path job, boolean there, List<String> damage) {}

  /** Does nothing where there are none. The first that cannot be brought back ends it. */
  public void all(List<Path> files) {
    begin(files, false);
  }

  /** The same for files that come while somebody works: another job is opened only when wanted. */
  public void meanwhile(List<Path> files) {
    begin(files, true);
  }

  private void begin(List<Path> files, boolean asks) {
    if (!files.isEmpty()) {
      Path shop = context.settings().shop();
      context.longWork(
          "Bringing the job back",
          context.writings().of(() -> restore(files, shop)),
          back -> broughtBack(back, asks));
    }
  }

  private Back restore(List<Path> files, Path shop) throws IOException {
    Archives archives = context.services().archives();
    Back last = new Back(shop, true, List.of());
    List<String> damage = new ArrayList<>();
    for (Path file : files) {
      Optional<Path> there = archives.findThere(file, shop);
      Path job = there.isPresent() ? there.get() : archives.restore(file, shop);
      if (there.isEmpty()) {
        damage.addAll(Damage.of(context.services().checks(), job));
      }
      last = new Back(job, there.isPresent(), List.copyOf(damage));
    }
    return last;
  }

  private void broughtBack(Back back, boolean asks) {
    boolean another = context.job().filter(open -> !open.folder().equals(back.job())).isPresent();
    if (asks && another) {
      ask(back);
    } else {
      open(back);
    }
  }

  private void ask(Back back) {
    String name = String.valueOf(back.job().getFileName());
    Choice<Runnable> open = new Choice<>(() -> open(back), "Open it now", "in place of this job");
    Choice<Runnable> stay =
        new Choice<>(() -> warn(back), "Stay here", "it is in the list of jobs");
    context
        .navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    context, "Open " + name + "?", List.of(open, stay), Runnable::run));
  }

  /** Where it cannot be opened, it is listed. */
  private void open(Back back) {
    boolean opened = context.attempt(() -> context.open(back.job()));
    warn(back);
    if (back.damage().isEmpty()
        && opened
        && back.there()
        && context.getJob().condition().sentence().isEmpty()) {
      context.say(THERE);
    }
  }

  /** A damaged job is not to be taken for a sound one, whether it is opened or not. */
  private void warn(Back back) {
    if (!back.damage().isEmpty()) {
      context.say(
          "The job is brought back as "
              + back.job()
              + ", but it is damaged. "
              + String.join(" ", back.damage()));
    }
  }
}
