package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.ui.sample.ClosedWindow;

/** Closing the window ends the program, in a Java machine of its own. */
class ClosingTest {
  private static final long SECONDS = 120;

  @TempDir Path folder;

  @Test
  void closingTheWindowWithTheCameraOnEndsTheProgramOnceAllIsWritten()
      throws IOException, InterruptedException {
    Path said = folder.resolve("said.txt");
    Path written = folder.resolve("written");
    Process program =
        new ProcessBuilder(
                List.of(
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-Dglass.platform=Monocle",
                    "-Dmonocle.platform=Headless",
                    "-Dprism.order=sw",
                    "-Djava.awt.headless=true",
                    "-Dwherefrom.home=" + folder.resolve("home"),
                    "-cp",
                    System.getProperty("java.class.path"),
                    ClosedWindow.class.getName(),
                    written.toString()))
            .redirectErrorStream(true)
            .redirectOutput(said.toFile())
            .start();
    try {
      boolean ended = program.waitFor(SECONDS, TimeUnit.SECONDS);
      assertThat(ended).as(Files.readString(said)).isTrue();
      assertThat(program.exitValue()).as(Files.readString(said)).isZero();
      assertThat(Files.readString(said)).containsPattern("closed after [0-9]{2,} pictures");
      assertThat(Files.readString(said)).doesNotContain("Unsupported JavaFX");
      assertThat(written).hasSize((long) ClosedWindow.PIECES * ClosedWindow.PIECE);
    } finally {
      program.destroyForcibly();
    }
  }
}
