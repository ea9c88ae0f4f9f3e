package wherefrom;

import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.logging.Logger;
import wherefrom.cli.CommandLine;
import wherefrom.files.ExportedJobs;
import wherefrom.job.ports.Services;
import wherefrom.job.ports.Tidying;
import wherefrom.job.settings.Workplace;
import wherefrom.sound.ToneSounds;
import wherefrom.ui.Start;

/**
 * The only place that wires: without arguments, or with exported jobs alone, the window opens; with
 * others it is a command. Where a window is open already, that one takes the jobs.
 */
public final class Main {
  private static final double VOLUME = 1;
  private static final int BAD_INPUT = 2;

  private static final Logger LOGGER = Logger.getLogger("wherefrom");

  private Main() {}

  public static void main(String[] arguments) {
    Optional<String> misplaced = JarPlace.findFault();
    if (misplaced.isPresent()) {
      utf8(FileDescriptor.err).println(misplaced.get());
      System.exit(BAD_INPUT);
    }
    HomeFolders folders = Wiring.folders();
    Caches.in(folders.cache());
    RunLog.begin(folders.settings());
    Services services = Wiring.services(new LocalClock());
    List<String> words = List.of(arguments);
    if (words.stream().allMatch(ExportedJobs::isNamed)) {
      List<Path> files = words.stream().map(Path::of).toList();
      HandOver handOver = new HandOver(folders.cache());
      if (!handOver.give(files)) {
        openWindow(services, files, handOver);
      }
      return;
    }
    CommandLine commands =
        new CommandLine(
            services,
            new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8)),
            utf8(FileDescriptor.out),
            utf8(FileDescriptor.err));
    System.exit(commands.run(words));
  }

  private static void openWindow(Services services, List<Path> exported, HandOver handOver) {
    try {
      Window.open(services, exported, handOver);
    } catch (UnsupportedOperationException e) {
      // What JavaFX throws where there is no display.
      utf8(FileDescriptor.err)
          .println(
              "The window cannot be opened: "
                  + e.getMessage()
                  + ". Without a screen use the commands: wherefrom --help lists them.");
      System.exit(BAD_INPUT);
    }
  }

  /** Tabs and names are read by scripts: the same on every system. */
  private static PrintStream utf8(FileDescriptor stream) {
    return new PrintStream(new FileOutputStream(stream), true, StandardCharsets.UTF_8);
  }

  /** Apart, so that a command never loads the window's classes. */
  private static final class Window {
    static void open(Services here, List<Path> exported, HandOver handOver) {
      Services services = at(here, here.settings().load().workplace());
      double volume = services.settings().load().sound() ? VOLUME : 0;
      ToneSounds sounds = new ToneSounds(volume);
      Runnable listen = () -> handOver.take(Start::take);
      Start.run(services, System::nanoTime, sounds, exported, listen, () -> seen(services));
    }

    /** The services of the shop that this machine is set to. */
    private static Services at(Services here, Workplace place) {
      if (place.server().isPresent()) {
        return here.servers().on(here, place.server().get(), place.by());
      }
      return here.at(place.by());
    }

    private static void seen(Services services) {
      LOGGER.info("The window is open: Wherefrom " + services.program().version());
      Tidying.all(services);
    }
  }
}
