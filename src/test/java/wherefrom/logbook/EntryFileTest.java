package wherefrom.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.job.LoggedEntry;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.NoteAdded;

/** Every kind of entry through a real logbook file. */
class EntryFileTest {
  private static final Instant TIME = Instant.parse("2026-03-01T12:00:00Z");

  @TempDir Path folder;

  /** The kinds come from the sealed type itself: one whose fields have no samples fails here. */
  @Test
  void everyKindIsReadBackEqual() {
    RandomEntries random = new RandomEntries(new Random(23));
    List<JobEntry> written = new ArrayList<>();
    for (int round = 0; round < 5; round++) {
      RandomEntries.kinds().forEach(kind -> written.add(random.of(kind)));
    }
    Set<Class<?>> kinds = new HashSet<>();
    written.forEach(entry -> kinds.add(entry.getClass()));
    assertThat(kinds).containsExactlyInAnyOrder(JobEntry.class.getPermittedSubclasses());
    Path job = folder.resolve("job");
    try (LogbookFile logbook = LogbookFile.create(job)) {
      written.forEach(entry -> Written.append(logbook, TIME, entry));
    }
    try (LogbookFile logbook = LogbookFile.open(job)) {
      assertThat(logbook.condition().writable()).isTrue();
      assertThat(logbook.entries()).extracting(LoggedEntry::entry).isEqualTo(written);
    }
  }

  @Test
  void aFileOfALaterVersionIsNotTouched() throws IOException {
    Path job = Files.createDirectory(folder.resolve("later"));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    bytes.write(new LogHeader(LogHeader.VERSION + 1, "", 1).line());
    bytes.write('\n');
    bytes.write("{\"something\":\"new\"}\n".getBytes(StandardCharsets.UTF_8));
    Path file = Files.write(job.resolve(LogFiles.name(1)), bytes.toByteArray());
    try (LogbookFile logbook = LogbookFile.open(job)) {
      assertThat(logbook.condition().writable()).isFalse();
      assertThat(logbook.condition().sentence()).contains("newer version of Wherefrom");
      assertThat(logbook.entries()).isEmpty();
    }
    assertThat(Files.readAllBytes(file)).isEqualTo(bytes.toByteArray());
  }

  @Test
  void aKindOfALaterVersionStopsReadingThereAndIsSaid() throws IOException {
    Path job = folder.resolve("kind");
    try (LogbookFile logbook = LogbookFile.create(job)) {
      Written.append(logbook, TIME, new NoteAdded(0, "before"));
      Written.append(logbook, TIME, new NoteAdded(0, "marked"));
    }
    Path file = job.resolve(LogFiles.name(1));
    List<String> lines = new ArrayList<>(Files.readAllLines(file));
    ObjectNode last = (ObjectNode) EntryCodec.MAPPER.readTree(lines.get(2));
    last.remove("crc");
    last.put("type", "part-dreamt");
    lines.set(2, new String(LogLine.seal(last), StandardCharsets.UTF_8));
    Files.write(file, lines);
    byte[] before = Files.readAllBytes(file);
    try (LogbookFile logbook = LogbookFile.open(job)) {
      assertThat(logbook.condition().writable()).isFalse();
      assertThat(logbook.condition().sentence()).contains("newer version", "part-dreamt");
      assertThat(logbook.entries()).hasSize(1);
    }
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
  }
}
