package wherefrom;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Where each system wants the person's files; no folder of this machine is looked at. */
class HomeFoldersTest {
  private static final Path HOME = Path.of("/home/a");

  private static HomeFolders of(String system, Map<String, String> environment, Path... there) {
    return HomeFolders.of(system, environment, HOME, Set.of(there)::contains);
  }

  private static Path at(String path) {
    return HOME.resolve(path);
  }

  @Test
  void linuxHasThreeHiddenFolders() {
    assertThat(of("Linux", Map.of()))
        .isEqualTo(
            new HomeFolders(
                at(".config/wherefrom"),
                at(".local/share/wherefrom/jobs"),
                at(".cache/wherefrom")));
  }

  @Test
  void linuxGoesByTheVariables() {
    Map<String, String> set =
        Map.of("XDG_CONFIG_HOME", "/c", "XDG_DATA_HOME", "/d", "XDG_CACHE_HOME", "/e");
    assertThat(of("Linux", set))
        .isEqualTo(
            new HomeFolders(
                Path.of("/c/wherefrom"), Path.of("/d/wherefrom/jobs"), Path.of("/e/wherefrom")));
  }

  @Test
  void aVariableThatIsEmptyOrRelativeIsIgnored() {
    Map<String, String> odd = Map.of("XDG_CONFIG_HOME", "", "XDG_DATA_HOME", "somewhere");
    assertThat(of("Linux", odd)).isEqualTo(of("Linux", Map.of()));
  }

  @Test
  void windowsHasOneThatRoamsAndOneThatStays() {
    Map<String, String> set = Map.of("APPDATA", "/u/Roaming", "LOCALAPPDATA", "/u/Local");
    assertThat(of("Windows 11", set))
        .isEqualTo(
            new HomeFolders(
                Path.of("/u/Roaming/Wherefrom"),
                Path.of("/u/Roaming/Wherefrom/jobs"),
                Path.of("/u/Local/Wherefrom/cache")));
    assertThat(of("Windows 10", Map.of()).settings()).isEqualTo(at("AppData/Roaming/Wherefrom"));
    assertThat(of("Windows 10", Map.of()).cache()).isEqualTo(at("AppData/Local/Wherefrom/cache"));
  }

  @Test
  void macHasTheLibrary() {
    assertThat(of("Mac OS X", Map.of("XDG_CONFIG_HOME", "/c")))
        .isEqualTo(
            new HomeFolders(
                at("Library/Application Support/Wherefrom"),
                at("Library/Application Support/Wherefrom/jobs"),
                at("Library/Caches/Wherefrom")));
  }

  @Test
  void whatAnEarlierVersionLeftGoesOnBeingUsed() {
    for (String system : Set.of("Linux", "Windows 11", "Mac OS X")) {
      HomeFolders fresh = of(system, Map.of());
      assertThat(of(system, Map.of(), at(".wherefrom")))
          .isEqualTo(new HomeFolders(at(".wherefrom"), fresh.shop(), fresh.cache()));
      assertThat(of(system, Map.of(), at("Wherefrom")))
          .isEqualTo(new HomeFolders(fresh.settings(), at("Wherefrom"), fresh.cache()));
    }
  }

  @Test
  void aFolderThatIsNamedHoldsEverything() {
    assertThat(HomeFolders.in(Path.of("/x")))
        .isEqualTo(new HomeFolders(Path.of("/x"), Path.of("/x/jobs"), Path.of("/x/cache")));
  }
}
