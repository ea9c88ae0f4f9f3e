package wherefrom.ui.files;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import wherefrom.ui.app.ScreenContext;

/** The folder in which files are looked for and saved first: where the person last did. */
final class LastPlace {
  private LastPlace() {}

  static Path of(ScreenContext context) {
    return context
        .settings()
        .lastSaved()
        .filter(Files::isDirectory)
        .orElseGet(() -> usual(Path.of(System.getProperty("user.home", ""))));
  }

  /** Where people look for what they saved: their documents, else their own folder. */
  static Path usual(Path home) {
    Path documents = home.resolve("Documents");
    return Files.isDirectory(documents) ? documents : home;
  }

  /** The next question begins in this folder. */
  static void keep(ScreenContext context, Path folder) {
    if (!context.settings().lastSaved().equals(Optional.of(folder))) {
      context.change(context.settings().withLastSaved(folder));
    }
  }
}
