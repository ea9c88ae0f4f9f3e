package wherefrom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.job.BuiltVersion;
import wherefrom.job.ports.Program;

/** What went wrong is in the log, which never grows. */
class RunLogTest {
  @TempDir Path folder;

  private static LogRecord fault(String words, Throwable thrown) {
    LogRecord record = new LogRecord(Level.SEVERE, words);
    record.setThrown(thrown);
    return record;
  }

  private List<Path> files() throws IOException {
    try (Stream<Path> inside = Files.list(folder)) {
      return inside.sorted().toList();
    }
  }

  @Test
  void nothingIsWrittenBeforeThereIsSomethingToSay() throws IOException {
    RunLog log = new RunLog(folder.resolve("settings"));
    log.publish(new LogRecord(Level.FINE, "a detail"));
    log.close();
    assertThat(files()).isEmpty();
  }

  @Test
  void aFaultIsThereWithItsTraceAndInTheReport() {
    RunLog log = new RunLog(folder.resolve("settings %h"));
    log.publish(fault("Nobody caught this", new StackOverflowError("too deep")));
    log.close();
    assertThat(new Program("1.0", folder.resolve("settings %h")).report())
        .startsWith("Wherefrom 1.0\n")
        .contains("java.version: " + System.getProperty("java.version"))
        .contains("Nobody caught this", "StackOverflowError: too deep", "at wherefrom.RunLogTest");
  }

  @Test
  void theLogTakesTurnsAndStaysSmall() throws IOException {
    RunLog log = new RunLog(folder);
    for (int line = 0; line < 3_000; line++) {
      log.publish(fault("line " + line, new IOException("x".repeat(300))));
    }
    log.close();
    long bytes = 0;
    for (Path file : files()) {
      bytes += Files.size(file);
    }
    assertThat(files()).hasSize(3);
    assertThat(bytes).isLessThan(1_000_000);
    assertThat(new Program("", folder).report()).contains("line 2999").doesNotContain("line 0\n");
  }

  @Test
  void whereItCannotBeOpenedTheProgramGoesOn() throws IOException {
    Path blocked = Files.writeString(folder.resolve("a file"), "");
    RunLog log = new RunLog(blocked);
    log.publish(fault("unheard", new IOException()));
    log.close();
    assertThat(new Program("", blocked).report()).contains("nothing was logged");
  }

  /** The whole program, with a thread that dies of an error. */
  @Test
  void whatNobodyCaughtInAnyThreadIsLogged() throws Exception {
    Path java = Path.of(System.getProperty("java.home"), "bin", "java");
    assumeTrue(Files.isExecutable(java), "java");
    List<String> call = new ArrayList<>(List.of(java.toString(), "-cp"));
    call.add(System.getProperty("java.class.path"));
    call.addAll(List.of(Dying.class.getName(), folder.toString()));
    Process process = new ProcessBuilder(call).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(said).isZero();
    assertThat(said).doesNotContain("Exception", "at wherefrom");
    assertThat(Files.readString(folder.resolve("wherefrom-log-0.txt")))
        .contains("Nobody caught this in worker 7", "AssertionError: it broke");
  }

  /** A program in which a thread dies. */
  public static final class Dying {
    private Dying() {}

    public static void main(String[] words) throws InterruptedException {
      RunLog.begin(Path.of(words[0]));
      Thread thread =
          new Thread(
              () -> {
                throw new AssertionError("it broke");
              },
              "worker 7");
      thread.start();
      thread.join();
    }
  }

  @Test
  void theVersionIsThatOfTheBuild() throws IOException {
    String pom = Files.readString(Path.of("pom.xml"));
    String version = pom.replaceFirst("(?s).*?<version>([^<]+)</version>.*", "$1");
    assumeTrue(!BuiltVersion.get().equals("unknown"), "a build that fills the version in");
    assertThat(BuiltVersion.get()).isEqualTo(version);
  }
}
