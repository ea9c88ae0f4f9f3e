package wherefrom.ui.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.Test;

/** What is being written is waited for, whether it ends well or badly, and for so long at most. */
class WritingsTest {
  private final Writings writings = new Writings();

  @Test
  void whereNothingIsWrittenNobodyWaits() {
    assertThat(writings.finish(0)).isTrue();
  }

  @Test
  void eachIsWaitedForUntilItHasEnded() throws Exception {
    Callable<String> one = writings.of(() -> "one");
    Callable<String> two =
        writings.of(
            () -> {
              throw new IOException("no room");
            });
    assertThat(writings.finish(0)).isFalse();
    assertThat(one.call()).isEqualTo("one");
    assertThat(writings.finish(0)).isFalse();
    assertThatThrownBy(two::call).hasMessage("no room");
    assertThat(writings.finish(0)).isTrue();
  }
}
