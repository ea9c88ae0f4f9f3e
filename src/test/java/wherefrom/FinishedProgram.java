package wherefrom;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
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

  /** With its settings and what it last said below a folder. */
  static FinishedProgram in(Path folder) throws IOException, InterruptedException {
    assertThat(JAR).exists();
    return new FinishedProgram(folder, archive(folder).toString());
  }

  /** One archive for all that start this jar; the first makes it, and the others wait for that. */
  private static Path archive(Path folder) throws IOException, InterruptedException {
    long built = Files.getLastModifiedTime(JAR).toMillis();
    Path archive = JAR.resolveSibling("classes-" + built + ".jsa");
    Path gate = JAR.resolveSibling("classes.lock");
    try (FileChannel channel =
            FileChannel.open(gate, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        FileLock held = channel.lock()) {
      assertThat(held.isValid()).isTrue();
      if (!Files.exists(archive)) {
        Path made = folder.resolve("classes.jsa");
        new FinishedProgram(folder, made.toString()).train();
        Files.move(made, archive);
      }
    }
    return archive;
  }

  private void train() throws IOException, InterruptedException {
    String demo = folder.resolve("archived").toString();
    run(words("-Xshare:auto", "demo", "--folder", demo));
    String record = folder.resolve("archived.pdf").toString();
    run(words("-XX:ArchiveClassesAtExit=" + archive, "record", "--job", demo, "--out", record));
  }

  /** The words of a command line that run it. */
  List<String> words() {
    return words("-XX:SharedArchiveFile=" + archive);
  }

  private List<String> words(String option, String... more) {
    List<String> words = new ArrayList<>(List.of(JAVA, "-XX:TieredStopAtLevel=1"));
    words.addAll(List.of("-XX:+UseSerialGC", "-Xlog:disable", option));
    words.add("-Dwherefrom.home=" + folder.resolve("home"));
    words.addAll(List.of("-jar", JAR.toString()));
    words.addAll(List.of(more));
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
