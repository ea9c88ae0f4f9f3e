package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What every command says to a call, on both streams, as text and as JSON, with its exit status, is
 * what was approved. With {@code -Dapprove=true} the files are written anew: read their difference
 * before you commit it.
 */
class ApprovedAnswersTest {
  private static final Path FILES = Path.of("src/test/resources/wherefrom/cli/approved");

  @TempDir Path folder;

  static List<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(FILES)) {
      return files.sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyCallIsAnsweredAsApproved(Path file) throws IOException {
    String approved = Files.readString(file);
    String said = new Session(folder).run(approved);
    if (Boolean.getBoolean("approve")) {
      Files.writeString(file, said);
    }
    assertThat(said).isEqualTo(Files.readString(file));
  }

  private static String calls(Path file) {
    try {
      return Session.calls(Files.readString(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void everyCommandAndEveryOptionIsCalled() throws IOException {
    String calls = String.join("\n", files().stream().map(ApprovedAnswersTest::calls).toList());
    Shop shop = new Shop(folder);
    for (String name : EveryCommandTest.names(shop)) {
      List<String> lines = calls.lines().filter(line -> line.startsWith("$ " + name)).toList();
      for (String option : EveryCommandTest.options(shop, name)) {
        assertThat(lines).as(name + " " + option).anyMatch(line -> line.contains(option));
      }
    }
  }
}
