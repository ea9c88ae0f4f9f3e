package wherefrom;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Where the program keeps what is the person's: where each system wants it, and under one name.
 *
 * @param settings holds the settings and the log
 * @param shop holds the jobs, until the person chooses another folder
 * @param cache holds what can be deleted at any time
 */
record HomeFolders(Path settings, Path shop, Path cache) {
  private static final String JOBS = "jobs";
  private static final String LOWER = "wherefrom";
  private static final String UPPER = "Wherefrom";

  /**
   * The folders on a system. Where an earlier version left its folders in the home folder, these go
   * on being used, so that nothing has to be moved.
   *
   * @param system as the system property {@code os.name} says
   * @param environment the environment's variables
   * @param home the person's home folder
   * @param exists whether a folder is there
   */
  static HomeFolders of(
      String system, Map<String, String> environment, Path home, Predicate<Path> exists) {
    HomeFolders fresh = fresh(system.toLowerCase(Locale.ROOT), environment, home);
    Path oldSettings = home.resolve(".wherefrom");
    Path oldShop = home.resolve(UPPER);
    return new HomeFolders(
        exists.test(oldSettings) ? oldSettings : fresh.settings(),
        exists.test(oldShop) ? oldShop : fresh.shop(),
        fresh.cache());
  }

  /** Everything in one folder, for whoever moves it with the system property. */
  static HomeFolders in(Path folder) {
    return new HomeFolders(folder, folder.resolve(JOBS), folder.resolve("cache"));
  }

  private static HomeFolders fresh(String system, Map<String, String> environment, Path home) {
    if (system.startsWith("windows")) {
      return windows(environment, home);
    }
    return system.startsWith("mac") ? mac(home) : other(environment, home);
  }

  /** Known folders: "RoamingAppData" and "LocalAppData". */
  private static HomeFolders windows(Map<String, String> environment, Path home) {
    Path ours = folder(environment, "APPDATA", home, "AppData/Roaming").resolve(UPPER);
    Path local = folder(environment, "LOCALAPPDATA", home, "AppData/Local").resolve(UPPER);
    return new HomeFolders(ours, ours.resolve(JOBS), local.resolve("cache"));
  }

  /** The File System Programming Guide, "The Library Directory Stores App-Specific Files". */
  private static HomeFolders mac(Path home) {
    Path library = home.resolve("Library");
    Path ours = library.resolve("Application Support").resolve(UPPER);
    return new HomeFolders(ours, ours.resolve(JOBS), library.resolve("Caches").resolve(UPPER));
  }

  /** XDG Base Directory Specification 0.8. */
  private static HomeFolders other(Map<String, String> environment, Path home) {
    return new HomeFolders(
        folder(environment, "XDG_CONFIG_HOME", home, ".config").resolve(LOWER),
        folder(environment, "XDG_DATA_HOME", home, ".local/share").resolve(LOWER).resolve(JOBS),
        folder(environment, "XDG_CACHE_HOME", home, ".cache").resolve(LOWER));
  }

  /** What a variable names; relative paths in these variables are to be ignored. */
  private static Path folder(
      Map<String, String> environment, String variable, Path home, String usual) {
    return Optional.ofNullable(environment.get(variable))
        .filter(named -> !named.isBlank())
        .map(Path::of)
        .filter(Path::isAbsolute)
        .orElse(home.resolve(usual));
  }
}
