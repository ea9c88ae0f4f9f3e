package wherefrom.ui.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.ui.Toolkit;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.SampleWindow;

/** Choosing by touch where the copies go. */
class CopyFolderTest {
  @TempDir Path folder;

  private SampleWindow settings(Path shop) {
    return Toolkit.on(
        () -> {
          SampleWindow window =
              new SampleWindow(
                  96,
                  100,
                  Optional.empty(),
                  Runnable::run,
                  services ->
                      services.settings = services.settings.withShop(shop).withLastSaved(folder));
          window.shell.context().navigator().show(ScreenId.SETTINGS);
          window.layOut();
          return window;
        });
  }

  private static void press(SampleWindow window, String... keys) {
    Toolkit.on(
        () -> {
          for (String key : keys) {
            window.pressOnSomePage(key);
          }
          return 0;
        });
  }

  @Test
  void aFolderIsChosenAndGivenUpAgain() throws IOException {
    Path shop = Files.createDirectories(folder.resolve("shop"));
    Path stick = Files.createDirectories(folder.resolve("stick"));
    SampleWindow window = settings(shop);
    press(window, "Copy each job", "Another folder", "stick /", "Choose this folder");
    assertThat(window.services.settings.secondCopy()).contains(stick);
    String words = Toolkit.on(window::words);
    assertThat(words).contains(stick.toString());
    press(window, "Copy each job", "No more copies");
    assertThat(window.services.settings.secondCopy()).isEmpty();
  }

  @Test
  void theShopItselfIsNoPlaceForCopies() throws IOException {
    Path shop = Files.createDirectories(folder.resolve("shop"));
    SampleWindow window = settings(shop);
    press(window, "Copy each job", "Another folder", "shop /", "Choose this folder");
    assertThat(window.services.settings.secondCopy()).isEmpty();
    assertThat(window.shell.message()).contains("inside the jobs folder");
  }
}
