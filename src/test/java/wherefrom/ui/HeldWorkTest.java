package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Work waits until it is let go, and none is lost or done twice. */
class HeldWorkTest {
  private final List<String> done = new ArrayList<>();
  private final HeldWork held = new HeldWork(Runnable::run);

  @Test
  void workWaitsInItsOrder() {
    held.execute(() -> done.add("first"));
    held.execute(() -> done.add("second"));
    assertThat(done).isEmpty();
    held.letGo();
    assertThat(done).containsExactly("first", "second");
  }

  @Test
  void afterwardsNothingWaitsAndNothingIsDoneAgain() {
    held.execute(() -> done.add("before"));
    held.letGo();
    held.execute(() -> done.add("after"));
    held.letGo();
    assertThat(done).containsExactly("before", "after");
  }
}
