package wherefrom;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.logging.ErrorManager;
import java.util.logging.FileHandler;
import java.util.logging.Formatter;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.logging.SimpleFormatter;
import wherefrom.job.ports.Program;

/**
 * The log: what went wrong, in a few files that take turns, so that it never grows. It is opened
 * when the first line comes; where it cannot be opened, the program goes on without.
 */
final class RunLog extends Handler {
  private static final int MOST_BYTES = 300_000;
  private static final int FILES = 3;

  private final Path folder;
  private Optional<Handler> file = Optional.empty();
  private boolean tried;

  /**
   * @param folder holds the log; may not exist yet
   */
  RunLog(Path folder) {
    this.folder = folder;
    setLevel(Level.INFO);
    setErrorManager(new ErrorManager());
  }

  /** Takes in what the program and its libraries log, and what nobody caught in any thread. */
  static void begin(Path folder) {
    RunLog log = new RunLog(folder);
    Logger.getLogger("").addHandler(log);
    Ours.LOGGER.addHandler(log);
    // A fault is told in a sentence; its trace belongs into the log alone.
    Ours.LOGGER.setUseParentHandlers(false);
    Thread.setDefaultUncaughtExceptionHandler(
        (thread, fault) ->
            Ours.LOGGER.log(Level.SEVERE, "Nobody caught this in " + thread.getName(), fault));
  }

  /** Kept, because a logger that nobody holds is forgotten with its handlers. */
  private static final class Ours {
    static final Logger LOGGER = Logger.getLogger("wherefrom");
  }

  @Override
  public synchronized void publish(LogRecord record) {
    if (!isLoggable(record)) {
      return;
    }
    if (!tried) {
      tried = true;
      file = open();
    }
    file.ifPresent(handler -> handler.publish(record));
  }

  private Optional<Handler> open() {
    try {
      Files.createDirectories(folder);
      String pattern = folder.toString().replace("%", "%%") + "/" + Program.LOG_PREFIX + "%g.txt";
      Handler handler = new FileHandler(pattern, MOST_BYTES, FILES, true);
      handler.setEncoding("UTF-8");
      Formatter formatter = new SimpleFormatter();
      handler.setFormatter(formatter);
      return Optional.of(handler);
    } catch (IOException | SecurityException e) {
      return Optional.empty();
    }
  }

  @Override
  public synchronized void flush() {
    file.ifPresent(Handler::flush);
  }

  @Override
  public synchronized void close() {
    file.ifPresent(Handler::close);
  }
}
