package wherefrom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo engine between its two days, by a shell script that knows only the command line. */
class BetweenIT {
  private static final Path JAR =
      Path.of(System.getProperty("wherefrom.target", "target"), "wherefrom.jar").toAbsolutePath();
  private static final String JAVA =
      Path.of(System.getProperty("java.home"), "bin", "java").toString();

  @TempDir Path folder;

  private List<String> program(String... more) {
    List<String> words =
        new ArrayList<>(
            List.of(JAVA, "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xlog:disable"));
    words.addAll(List.of(more));
    words.add("-Dwherefrom.home=" + folder.resolve("home"));
    words.addAll(List.of("-jar", JAR.toString()));
    return words;
  }

  private String run(List<String> words) throws IOException, InterruptedException {
    Path output = folder.resolve("output");
    Process process =
        new ProcessBuilder(words).redirectErrorStream(true).redirectOutput(output.toFile()).start();
    int status = process.waitFor();
    String said = Files.readString(output);
    assertThat(status).as(said).isZero();
    return said;
  }

  /** Scores of short calls start twice as fast from an archive of the classes they load. */
  private String archive() throws IOException, InterruptedException {
    String archive = folder.resolve("classes.jsa").toString();
    String demo = folder.resolve("demo").toString();
    List<String> copy = program("-XX:ArchiveClassesAtExit=" + archive);
    copy.addAll(List.of("demo", "--folder", demo));
    run(copy);
    List<String> record = program("-XX:ArchiveClassesAtExit=" + archive);
    record.addAll(
        List.of("record", "--job", demo, "--out", folder.resolve("record.pdf").toString()));
    run(record);
    return archive;
  }

  @Test
  void aShellScriptCarriesTheDemoThroughEverythingBetweenTheTwoDays()
      throws IOException, InterruptedException {
    assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "bash runs the script");
    assertThat(JAR).exists();
    List<String> words = new ArrayList<>(List.of("/bin/bash", "src/test/sh/between.sh"));
    words.addAll(program("-XX:SharedArchiveFile=" + archive()));
    assertThat(run(words)).contains("carried from the first look to its record");
  }
}
