package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/**
 * Every command once more, while at each act another bench is first: each is judged anew and
 * written once all the same, so nothing is judged on one history and written on another.
 */
class RivalBenchTest extends OneEntryTest {
  private final AtomicInteger came = new AtomicInteger();

  @Override
  Shop shop(Path in) {
    return new Shop(in, shelf -> new RivalShelf(shelf, came::incrementAndGet));
  }

  @Override
  @Test
  void everyCommandWritesOneEntryForOneAct() throws IOException {
    super.everyCommandWritesOneEntryForOneAct();
    assertThat(came.get()).isGreaterThan(100);
  }
}
