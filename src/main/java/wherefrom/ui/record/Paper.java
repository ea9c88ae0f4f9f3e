package wherefrom.ui.record;

import java.io.IOException;
import java.util.Optional;
import java.util.function.Supplier;
import wherefrom.files.Outgoing;

/**
 * Something to print.
 *
 * @param title what it is, such as {@code Build record}
 * @param file the name that it is saved under
 * @param work writes it as PDF, away from the window's thread
 * @param warning what of it does not print, in a sentence; asked on the window's thread
 */
public record Paper(String title, String file, Work work, Supplier<Optional<String>> warning) {

  /** Writes pages. */
  @FunctionalInterface
  public interface Work {
    void write(Outgoing pdf) throws IOException;
  }
}
