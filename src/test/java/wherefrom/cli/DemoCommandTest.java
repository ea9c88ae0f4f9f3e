package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoCommandTest {
  @TempDir Path folder;

  @Test
  void theDemoIsCopiedOutAndCanBeWorkedOn() {
    Shop shop = new Shop(folder);
    String demo = shop.path("deep/demo");
    assertThat(shop.right("demo", "--folder", demo).out()).contains(demo);
    assertThat(shop.right("check", "--job", demo).status()).isZero();
    assertThat(shop.right("places", "--job", demo).rows()).hasSizeGreaterThan(70);
    assertThat(shop.right("resume", "--job", demo).out()).isNotBlank();
  }

  @Test
  void aFolderThatIsThereIsLeftAlone() {
    Shop shop = new Shop(folder);
    String job = shop.begin("mine");
    Map<String, String> before = Shop.contents(folder);
    Shop.Outcome outcome = shop.run("demo", "--folder", job);
    assertThat(outcome.status()).isEqualTo(2);
    assertThat(outcome.err()).contains("exists already");
    assertThat(Shop.contents(folder)).isEqualTo(before);
  }
}
