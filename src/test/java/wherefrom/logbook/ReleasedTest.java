package wherefrom.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.job.LogbookCondition;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.ports.CheckFinding;
import wherefrom.quantity.AmountReading;
import wherefrom.quantity.AmountText;

/**
 * Logbooks that the first release wrote, kept as files: never to be written anew. Every later
 * version opens them, finds every field in them and goes on in them.
 */
class ReleasedTest {
  private static final Path KEPT = Path.of("src", "test", "logbooks");

  @TempDir Path folder;

  private Path copy(String name) throws IOException {
    Path job = Files.createDirectory(folder.resolve(name));
    for (Path file : LogFiles.in(KEPT.resolve(name), new RealDisk()).values()) {
      Files.copy(file, job.resolve(file.getFileName()));
    }
    return job;
  }

  @ParameterizedTest
  @CsvSource({"first-demo, 147, 87", "first-steps, 125, 91", "first-cut, 125, 91"})
  void itOpensAndGoesOn(String name, int entries, int parts) throws IOException {
    Path job = copy(name);
    FileShelf shelf = new FileShelf(folder, Clock.systemUTC(), () -> 1);
    assertThat(new FileChecks().check(job))
        .extracting(CheckFinding::severity)
        .doesNotContain(CheckFinding.Severity.WARNING)
        .contains(
            name.equals("first-demo")
                ? CheckFinding.Severity.DAMAGED // its photographs were not kept with it
                : CheckFinding.Severity.SOUND);
    try (OpenJob open = shelf.open(job)) {
      assertThat(open.condition()).isInstanceOf(LogbookCondition.Sound.class);
      assertThat(open.history()).hasSize(entries);
      assertThat(open.state().parts().size()).isEqualTo(parts);
      open.record(new NoteAdded(1, "later"));
    }
    try (OpenJob again = shelf.open(job)) {
      assertThat(again.condition()).isInstanceOf(LogbookCondition.Sound.class);
      assertThat(again.history()).hasSize(entries + 1);
    }
  }

  /** Later versions may know more fields, never fewer, and none with another value. */
  @ParameterizedTest
  @CsvSource({"first-demo", "first-steps", "first-cut"})
  void everyFieldIsUnderstoodAsItWasWritten(String name) throws IOException {
    List<JsonNode> written = new ArrayList<>();
    for (Path file : LogFiles.in(KEPT.resolve(name), new RealDisk()).values()) {
      for (String line : Files.readAllLines(file)) {
        if (line.startsWith("{\"seq\"") && line.endsWith("\"}")) {
          written.add(EntryCodec.MAPPER.readTree(line));
        }
      }
    }
    List<LoggedEntry> read = LogScan.of(KEPT.resolve(name), new RealDisk()).entries();
    assertThat(read).hasSameSizeAs(written);
    for (int at = 0; at < read.size(); at++) {
      JsonNode line = written.get(at);
      LoggedEntry entry = read.get(at);
      assertThat(entry.sequence()).isEqualTo(line.path("seq").asLong());
      assertThat(entry.time()).hasToString(line.path("time").asText());
      assertThat(EntryTypes.of(entry.entry())).isEqualTo(line.path("type").asText());
      JsonNode now = EntryCodec.body(entry.entry());
      assertThat(holds(now, line.path("body"))).as(line + " is now " + now).isTrue();
    }
  }

  private static boolean holds(JsonNode now, JsonNode then) {
    if (then.isObject()) {
      return then.properties().stream()
          .allMatch(field -> holds(now.path(field.getKey()), field.getValue()));
    }
    if (then.isArray()) {
      return now.size() == then.size()
          && IntStream.range(0, then.size()).allMatch(at -> holds(now.get(at), then.get(at)));
    }
    return now.toString().equals(then.toString()) || isSameAmount(now.asText(), then.asText());
  }

  /** A stage of a torque card stood as it was typed: {@code 20Nm} is {@code 20 N·m}. */
  private static boolean isSameAmount(String now, String then) {
    return AmountText.read(now) instanceof AmountReading.Understood
        && AmountText.read(now).equals(AmountText.read(then));
  }

  @Test
  void mostKindsOfTheFirstReleaseStandInThem() throws IOException {
    Set<String> kinds = new HashSet<>();
    for (String name : List.of("first-demo", "first-steps", "first-cut")) {
      LogScan.of(KEPT.resolve(name), new RealDisk())
          .entries()
          .forEach(entry -> kinds.add(EntryTypes.of(entry.entry())));
    }
    assertThat(kinds).hasSizeGreaterThanOrEqualTo(25);
  }
}
