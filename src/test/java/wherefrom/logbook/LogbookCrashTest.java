package wherefrom.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.job.LogbookCondition;
import wherefrom.job.LogbookException;
import wherefrom.job.LoggedEntry;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.NoteAdded;

/** Cuts and changes logbook files, and proves that opening them leaves every byte as it was. */
class LogbookCrashTest {
  private static final Instant TIME = Instant.parse("2026-03-01T12:00:00Z");
  private static final int ENTRIES = 9;

  @TempDir private Path shelf;
  private final List<JobEntry> written = new ArrayList<>();
  private byte[] whole = {};
  private List<Integer> lineEnds = List.of();

  @BeforeEach
  void writeALogbook() throws IOException {
    Path folder = shelf.resolve("whole");
    RandomEntries random = new RandomEntries(new Random(3));
    try (LogbookFile logbook = LogbookFile.create(folder)) {
      for (int at = 0; at < ENTRIES; at++) {
        JobEntry entry = at == 2 ? new NoteAdded(0, "Größe 部品 \"{\\\"seq\\\":\"") : random.any();
        written.add(entry);
        Written.append(logbook, TIME, entry);
      }
    }
    whole = Files.readAllBytes(folder.resolve(LogFiles.name(1)));
    List<Integer> ends = new ArrayList<>();
    for (int at = 0; at < whole.length; at++) {
      if (whole[at] == '\n') {
        ends.add(at);
      }
    }
    lineEnds = ends;
    assertThat(lineEnds).hasSize(ENTRIES + 1);
  }

  /** Entries whose line ends within the first bytes. */
  private int wholeEntries(int bytes) {
    return (int) Math.max(0, lineEnds.stream().filter(end -> end < bytes).count() - 1);
  }

  private Path damaged(byte[] bytes) throws IOException {
    Path folder = shelf.resolve("damaged");
    Files.createDirectories(folder);
    Files.deleteIfExists(folder.resolve(LogFiles.name(2)));
    Files.write(folder.resolve(LogFiles.name(1)), bytes);
    return folder;
  }

  private static List<JobEntry> entries(LogbookFile logbook) {
    return logbook.entries().stream().map(LoggedEntry::entry).toList();
  }

  @Test
  void cutAnywhereAtMostTheLastEntryIsLostAndWorkGoesOn() throws IOException {
    NoteAdded next = new NoteAdded(0, "after the cut");
    for (int length = 0; length <= whole.length; length++) {
      byte[] cut = Arrays.copyOf(whole, length);
      Path folder = damaged(cut);
      int kept = wholeEntries(length);
      try (LogbookFile logbook = LogbookFile.open(folder)) {
        assertThat(entries(logbook)).as("cut at " + length).isEqualTo(written.subList(0, kept));
        boolean clean = lineEnds.contains(length - 1);
        assertThat(logbook.condition())
            .as("cut at " + length)
            .isInstanceOf(clean ? LogbookCondition.Sound.class : LogbookCondition.CutLine.class);
        Written.append(logbook, TIME, next);
      }
      byte[] after = Files.readAllBytes(folder.resolve(LogFiles.name(1)));
      assertThat(Sums.digest(Arrays.copyOf(after, length))).isEqualTo(Sums.digest(cut));
      try (LogbookFile again = LogbookFile.open(folder)) {
        assertThat(again.condition()).isInstanceOf(LogbookCondition.Sound.class);
        List<JobEntry> wanted = new ArrayList<>(written.subList(0, kept));
        wanted.add(next);
        assertThat(entries(again)).isEqualTo(wanted);
      }
    }
  }

  @Test
  void aCutFileIsNotTouchedAtAllWhenItIsOnlyOpened() throws IOException {
    byte[] cut = Arrays.copyOf(whole, whole.length - 5);
    Path folder = damaged(cut);
    LogbookFile.open(folder).close();
    assertThat(Files.readAllBytes(folder.resolve(LogFiles.name(1)))).isEqualTo(cut);
    assertThat(folder.resolve(LogFiles.name(2))).doesNotExist();
  }

  /** Every bit of every byte near line ends, one bit of every other byte. */
  @Test
  void aChangedBitAnywhereIsNeverTakenForSound() throws IOException {
    Random random = new Random(11);
    for (int at = 0; at < whole.length; at++) {
      boolean nearEnd = lineEnds.contains(at) || lineEnds.contains(at - 1) || at < 20;
      for (int bit = 0; bit < (nearEnd ? 8 : 1); bit++) {
        flip(at, nearEnd ? bit : random.nextInt(8));
      }
    }
  }

  private void flip(int at, int bit) throws IOException {
    byte[] changed = whole.clone();
    changed[at] ^= (byte) (1 << bit);
    Path folder = damaged(changed);
    String where = "byte " + at + ", bit " + bit;
    int before = (int) lineEnds.stream().filter(end -> end < at).count() - 1;
    try (LogbookFile logbook = LogbookFile.open(folder)) {
      boolean inLastLine = at > lineEnds.get(ENTRIES - 1);
      if (inLastLine) {
        assertThat(logbook.condition()).as(where).isInstanceOf(LogbookCondition.CutLine.class);
        assertThat(entries(logbook)).as(where).isEqualTo(written.subList(0, ENTRIES - 1));
      } else {
        assertThat(logbook.condition()).as(where).isInstanceOf(LogbookCondition.ReadOnly.class);
        assertThat(logbook.condition().sentence()).as(where).contains("logbook-0001.jsonl, line ");
        assertThat(entries(logbook)).as(where).isEqualTo(readable(at, before));
        assertThat(appendIsRefused(logbook)).as(where).isTrue();
      }
    }
    assertThat(Sums.digest(Files.readAllBytes(folder.resolve(LogFiles.name(1)))))
        .as(where)
        .isEqualTo(Sums.digest(changed));
  }

  /** Up to the damage; all of them where only the header is damaged. */
  private List<JobEntry> readable(int at, int before) {
    if (at < lineEnds.get(0)) {
      return written;
    }
    return written.subList(0, Math.max(0, before));
  }

  private static boolean appendIsRefused(LogbookFile logbook) {
    try {
      Written.append(logbook, TIME, new NoteAdded(0, "no"));
      return false;
    } catch (LogbookException e) {
      return true;
    }
  }

  @Test
  void linesExchangedTakenOutOrRepeatedAreDamage() throws IOException {
    List<byte[]> lines = new ArrayList<>();
    int from = 0;
    for (int end : lineEnds) {
      lines.add(Arrays.copyOfRange(whole, from, end + 1));
      from = end + 1;
    }
    List<byte[]> exchanged = new ArrayList<>(lines);
    exchanged.set(3, lines.get(4));
    exchanged.set(4, lines.get(3));
    List<byte[]> takenOut = new ArrayList<>(lines);
    takenOut.remove(3);
    List<byte[]> repeated = new ArrayList<>(lines);
    repeated.add(3, lines.get(2));
    for (List<byte[]> changed : List.of(exchanged, takenOut, repeated)) {
      try (LogbookFile logbook = LogbookFile.open(damaged(joined(changed)))) {
        assertThat(logbook.condition().writable()).isFalse();
        assertThat(entries(logbook)).isEqualTo(written.subList(0, 2));
        assertThat(logbook.condition().sentence())
            .contains("line 4", (changed.size() - 4) + " whole lines", "0 broken");
      }
    }
  }

  private static byte[] joined(List<byte[]> lines) {
    int length = lines.stream().mapToInt(line -> line.length).sum();
    byte[] all = new byte[length];
    int at = 0;
    for (byte[] line : lines) {
      System.arraycopy(line, 0, all, at, line.length);
      at += line.length;
    }
    return all;
  }

  @Test
  void aMissingFileInTheMiddleIsDamage() throws IOException {
    Path folder = damaged(Arrays.copyOf(whole, whole.length - 3));
    try (LogbookFile second = LogbookFile.open(folder)) {
      Written.append(second, TIME, new NoteAdded(0, "second file"));
    }
    byte[] cutAgain = Files.readAllBytes(folder.resolve(LogFiles.name(2)));
    Files.write(
        folder.resolve(LogFiles.name(2)),
        joined(
            List.of(cutAgain, "{\"seq\":10,".getBytes(java.nio.charset.StandardCharsets.UTF_8))));
    try (LogbookFile third = LogbookFile.open(folder)) {
      Written.append(third, TIME, new NoteAdded(0, "third file"));
    }
    assertThat(folder.resolve(LogFiles.name(3))).exists();
    Files.move(folder.resolve(LogFiles.name(2)), shelf.resolve("aside"));
    try (LogbookFile logbook = LogbookFile.open(folder)) {
      assertThat(logbook.condition().writable()).isFalse();
      assertThat(entries(logbook)).isEqualTo(written.subList(0, ENTRIES - 1));
      assertThat(logbook.condition().sentence())
          .contains("logbook-0003.jsonl", "does not follow the file before it");
    }
    Files.delete(folder.resolve(LogFiles.name(3)));
  }
}
