package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.job.photos.Photos;
import wherefrom.logbook.JobArchives;

class HelpAndReportTest {
  @TempDir Path folder;

  @Test
  void theVersionIsTold() {
    assertThat(new Shop(folder).right("--version").out()).isEqualTo("Wherefrom 1.2.3\n");
  }

  @Test
  void helpIsGivenHoweverItIsAskedFor() {
    Shop shop = new Shop(folder);
    String fit = shop.right("fit", "--help").out();
    assertThat(fit).contains("Usage: wherefrom fit --job=DIR");
    assertThat(shop.right("fit", "-h").out()).isEqualTo(fit);
    assertThat(shop.right("help", "fit").out()).isEqualTo(fit);
    assertThat(shop.right("help", "shop", "slip").out()).contains("wherefrom shop slip");
    assertThat(shop.right("help", "shop").out()).contains("  send   Puts tagged parts");
    String all = shop.right("--help").out();
    assertThat(all).contains("--version", "report");
    assertThat(shop.right("-h").out()).isEqualTo(all);
    assertThat(shop.right("help").out()).isEqualTo(all);
    assertThat(shop.right().out()).isEqualTo(all);
    assertThat(shop.run("help", "me").err()).startsWith("There is no command \"me\".");
  }

  @Test
  void aReportHoldsNothingOfAJobUnlessItIsWanted() throws IOException {
    Shop shop = new Shop(folder);
    String job = shop.begin("Secret launch");
    Path settings = Files.createDirectory(folder.resolve(".settings"));
    Files.writeString(settings.resolve("wherefrom-log-0.txt"), "SEVERE: a fault\n");
    String report = shop.right("report", "--out", "-").out();
    assertThat(report).startsWith("Wherefrom 1.2.3\n").contains("os.name: ", "SEVERE: a fault");
    assertThat(report).doesNotContain("Secret", "v8-odd-even");
    Path file = folder.resolve("report.txt");
    shop.right("report", "--out", file.toString(), "--job", job);
    assertThat(Files.readString(file)).contains("SEVERE: a fault", "Secret launch");
    assertThat(shop.run("report", "--out", file.toString()).err()).contains("--replace");
  }

  /** A library that fails to load is an error, no exception: it gets a sentence all the same. */
  @Test
  void anErrorInACommandIsToldAndLogged() throws IOException {
    Photos broken =
        new Photos() {
          @Override
          public String add(Path job, Path picture, Set<String> named) {
            throw new UnsatisfiedLinkError("no such library");
          }

          @Override
          public Set<String> names(Path picture) {
            return Set.of();
          }

          @Override
          public boolean isThere(Path job, String name) {
            return false;
          }

          @Override
          public Path locate(Path job, String name) {
            return job;
          }
        };
    Shop shop = new Shop(folder, broken, new JobArchives());
    String job = shop.begin("job");
    Path picture = Files.createFile(folder.resolve("x.png"));
    Shop.Outcome outcome = shop.run("photo", "--job", job, "lobe@3EX", picture.toString());
    assertThat(outcome.status()).isEqualTo(2);
    assertThat(outcome.err())
        .startsWith("This is a fault in Wherefrom, not in the call: ")
        .contains("no such library", "wherefrom report --out F.txt");
  }
}
