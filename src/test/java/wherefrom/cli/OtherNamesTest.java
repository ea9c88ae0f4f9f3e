package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Names that no font has are said before they are printed; the work goes on. */
class OtherNamesTest {
  private static final String WHOLE_LINE = "\"東 V8\" does not print whole";

  @TempDir Path folder;

  @Test
  void aNameThatDoesNotPrintIsSaidOnStandardError() {
    Shop shop = new Shop(folder);
    String job = shop.path("far");
    assertThat(
            shop.right("job", "new", "--folder", job, "--layout", "v8-odd-even", "--name", "東 V8")
                .err())
        .contains(WHOLE_LINE);
    assertThat(
            shop.right(
                    "tags",
                    "--job",
                    job,
                    "--stock",
                    "a4-3x8-63.5x33.9",
                    "--out",
                    shop.path("far.pdf"))
                .err())
        .contains("a question mark will stand for 東");
    assertThat(shop.right("record", "--job", job, "--out", shop.path("record.pdf")).err())
        .contains(WHOLE_LINE);
  }

  @Test
  void aNameInGreekIsNoMatter() {
    Shop shop = new Shop(folder);
    String job = shop.path("near");
    assertThat(
            shop.right("job", "new", "--folder", job, "--layout", "v8-odd-even", "--name", "Ωμέγα")
                .err())
        .isEmpty();
    assertThat(shop.right("record", "--job", job, "--out", shop.path("again.pdf")).err()).isEmpty();
  }
}
