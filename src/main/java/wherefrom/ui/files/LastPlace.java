package wherefrom.ui.files;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import wherefrom.ui.app.Desk;

/** The folder in which files are looked for and saved first: where the person last did. */
final class LastPlace {
  private LastPlace() {}

  static Path of(Desk desk) {
    return desk.settings()
        .lastSaved()
        .filter(Files::isDirectory)
        .orElseGet(() -> Path.of(System.getProperty("user.home", "")));
  }

  /** The next question begins in this folder. */
  static void keep(Desk desk, Path folder) {
    if (!desk.settings().lastSaved().equals(Optional.of(folder))) {
      desk.change(desk.settings().withLastSaved(folder));
    }
  }
}
