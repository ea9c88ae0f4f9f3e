package wherefrom.logbook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import wherefrom.job.entry.NoteAdded;

/** Another program, as far as the operating system is concerned. */
final class SecondProgram {
  private SecondProgram() {}

  /**
   * Opens a job, keeps as many steps as it is told to, and says what it could do; without a number
   * it writes a word behind the end of a file.
   */
  public static void main(String[] arguments) throws IOException {
    if (arguments.length == 1) {
      Files.writeString(Path.of(arguments[0]), "cut", StandardOpenOption.APPEND);
      return;
    }
    try (LogbookFile logbook = LogbookFile.open(Path.of(arguments[0]))) {
      boolean writable = logbook.condition().writable();
      for (int step = 0; writable && step < Integer.parseInt(arguments[1]); step++) {
        Written.append(logbook, Instant.EPOCH, new NoteAdded(step, "theirs"));
      }
      System.out.print(writable ? "writes" : "reads");
    }
  }

  /** Runs it to its end: {@code reads} or {@code writes}. */
  static String on(Path job, int steps) throws IOException {
    Process process = start(SecondProgram.class, job.toString(), String.valueOf(steps));
    return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
  }

  /**
   * Writes a word behind the end of a file: not from the program that holds it, which would lose
   * its lock by closing the file.
   */
  static void writeBehind(Path file) throws IOException, InterruptedException {
    start(SecondProgram.class, file.toString()).waitFor();
  }

  /** A Java program of the tests in a process of its own. */
  static Process start(Class<?> program, String... arguments) throws IOException {
    List<String> call = new ArrayList<>();
    call.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    call.addAll(List.of("-XX:TieredStopAtLevel=1", "-Xshare:auto", "-cp"));
    call.add(System.getProperty("java.class.path"));
    call.add(program.getName());
    call.addAll(List.of(arguments));
    return new ProcessBuilder(call).redirectError(ProcessBuilder.Redirect.INHERIT).start();
  }
}
