package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.job.settings.ServerAddress;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.Typable;
import wherefrom.ui.sample.SampleWindow;

/** Where the jobs lie is told with what the keys on the glass have, or as a whole address. */
class WorkplaceFlowTest {
  private static final String DONE = "Done";

  private static void press(SampleWindow window, String key) {
    window.layOut();
    window.pressOnSomePage(key);
    window.moment();
  }

  private static void type(SampleWindow window, String words) {
    Typable entry = (Typable) window.shell.current();
    words.chars().forEach(each -> entry.type(Character.toString(each)));
  }

  @ParameterizedTest
  @CsvSource({
    "Bench-PC, postgresql://wherefrom@bench-pc/shop",
    "192.168.1.9, postgresql://wherefrom@192.168.1.9/shop"
  })
  void theServerIsAskedForPieceByPiece(String typed, String kept) {
    assertThat(server(typed, 3)).isEqualTo(kept);
  }

  @ParameterizedTest
  @CsvSource("postgresql://ann@far:6000/engines, postgresql://ann@far:6000/engines")
  void aWholeAddressIsTakenAtOnce(String typed, String kept) {
    assertThat(server(typed, 1)).isEqualTo(kept);
  }

  @ParameterizedTest
  @CsvSource("no computer")
  void whatIsNoAddressIsSaidAndNothingIsKept(String typed) {
    assertThat(server(typed, 3)).startsWith("none: Write the server's address like ");
  }

  /** The server that is kept once a computer was typed and the rest agreed to. */
  private static String server(String typed, int pieces) {
    return Toolkit.on(
        () -> {
          SampleWindow window = new SampleWindow(96, 100);
          window.shell.context().navigator().show(ScreenId.SETTINGS);
          press(window, "Where the jobs lie");
          press(window, "On a shared server");
          type(window, typed);
          for (int piece = 0; piece < pieces; piece++) {
            press(window, DONE);
          }
          return window
              .shell
              .context()
              .settings()
              .workplace()
              .server()
              .map(ServerAddress::text)
              .orElseGet(() -> "none: " + window.shell.message());
        });
  }
}
