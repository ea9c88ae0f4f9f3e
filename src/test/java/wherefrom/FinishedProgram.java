package wherefrom;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The finished jar as a command. Scripts start it a hundred times: an archive of the classes that
 * it loads halves the time of each.
 */
final class FinishedProgram {
  private static final Path JAR =
      Path.of(System.getProperty("wherefrom.target", "target"), "wherefrom.jar").toAbsolutePath();
  static final String JAVA = Path.of(System.getProperty("java.home"), "bin", "java").toString();

  private final Path folder;
  private final String archive;

  private FinishedProgram(Path folder, String archive) {
    this.folder = folder;
    this.archive = archive;
  }

  /** With its settings, its archive and what it last said below a folder. */
  static FinishedProgram in(Path folder) throws IOException, InterruptedException {
    assertThat(JAR).exists();
    String archive = folder.resolve("classes.jsa").toString();
    FinishedProgram program = new FinishedProgram(folder, archive);
    String demo = folder.resolve("archived").toString();
    program.run(program.archiving("demo", "--folder", demo));
    String record = folder.resolve("archived.pdf").toString();
    program.run(program.archiving("record", "--job", demo, "--out", record));
    return program;
  }

  private List<String> archiving(String... more) {
    List<String> words = words("-XX:ArchiveClassesAtExit=" + archive);
    words.addAll(List.of(more));
    return words;
  }

  /** The words of a command line that run it. */
  List<String> words() {
    return words("-XX:SharedArchiveFile=" + archive);
  }

  private List<String> words(String option) {
    List<String> words = new ArrayList<>(List.of(JAVA, "-XX:TieredStopAtLevel=1"));
    words.addAll(List.of("-XX:+UseSerialGC", "-Xlog:disable", option));
    words.add("-Dwherefrom.home=" + folder.resolve("home"));
    words.addAll(List.of("-jar", JAR.toString()));
    return words;
  }

  /** What a command says on both streams; it has to end well. */
  String run(List<String> words) throws IOException, InterruptedException {
    return run(words, Path.of("").toAbsolutePath());
  }

  /** The same, in another folder. */
  String run(List<String> words, Path where) throws IOException, InterruptedException {
    Path output = folder.resolve("output");
    ProcessBuilder process = new ProcessBuilder(words).directory(where.toFile());
    process.redirectErrorStream(true).redirectOutput(output.toFile());
    int status = process.start().waitFor();
    String said = Files.readString(output);
    assertThat(status).as(said).isZero();
    return said;
  }
}
