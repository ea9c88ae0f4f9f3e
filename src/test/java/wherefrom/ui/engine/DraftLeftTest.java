package wherefrom.ui.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;

class DraftLeftTest {
  private static final Layout EIGHT = ReadyLayouts.find("v8-odd-even").orElseThrow();
  private static final Layout OTHER =
      ReadyLayouts.all().stream().filter(one -> !one.equals(EIGHT)).findFirst().orElseThrow();

  @Test
  void whatWasTypedOverALayoutWaitsUntilAnotherIsBegun() {
    DraftLeft left = new DraftLeft();
    left.of(EIGHT).title("Launch, as it is");
    assertThat(left.of(EIGHT).layout().title()).isEqualTo("Launch, as it is");
    assertThat(left.of(OTHER).layout()).isEqualTo(OTHER);
    assertThat(left.of(EIGHT).layout()).isEqualTo(EIGHT);
  }
}
