package wherefrom.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.job.LogbookException;
import wherefrom.job.LoggedEntry;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.entry.PartOut;

/** Disks that take a few bytes at a time, none, or no more. */
class FullDiskTest {
  private static final Instant TIME = Instant.parse("2026-03-01T12:00:00Z");
  private static final NoteAdded FIRST = new NoteAdded(0, "first");

  /** A real disk with so much room. */
  private static final class SmallDisk implements LogDisk {
    private final RealDisk real = new RealDisk();
    private long room;
    private int mostAtOnce = Integer.MAX_VALUE;

    SmallDisk(long room) {
      this.room = room;
    }

    @Override
    public List<Path> list(Path folder) throws IOException {
      return real.list(folder);
    }

    @Override
    public byte[] read(Path file) throws IOException {
      return real.read(file);
    }

    @Override
    public Named look(Path file, int tail) throws IOException {
      return real.look(file, tail);
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
      real.rename(from, to);
    }

    @Override
    public Output create(Path file) throws IOException {
      return limited(real.create(file));
    }

    @Override
    public Output append(Path file) throws IOException {
      return limited(real.append(file));
    }

    @Override
    public void delete(Path file) throws IOException {
      room += Files.exists(file) ? Files.size(file) : 0;
      real.delete(file);
    }

    @Override
    public void forceFolder(Path folder) throws IOException {
      real.forceFolder(folder);
    }

    private Output limited(Output out) {
      return new Output() {
        @Override
        public int write(ByteBuffer bytes) throws IOException {
          int some = (int) Math.min(Math.min(room, mostAtOnce), bytes.remaining());
          if (some == 0 && room == 0) {
            throw new IOException("No space left on device");
          }
          int written = out.write(bytes.slice(bytes.position(), some));
          bytes.position(bytes.position() + written);
          room -= written;
          return written;
        }

        @Override
        public void force() throws IOException {
          out.force();
        }

        @Override
        public void close() throws IOException {
          out.close();
        }
      };
    }
  }

  private static List<JobEntry> entries(LogbookFile logbook) {
    return logbook.entries().stream().map(LoggedEntry::entry).toList();
  }

  private static List<JobEntry> reopened(Path folder) {
    try (LogbookFile logbook = LogbookFile.open(folder)) {
      assertThat(logbook.condition().writable()).isTrue();
      return entries(logbook);
    }
  }

  @Test
  void writesAreLoopedUntilAllBytesAreTaken(@TempDir Path folder) {
    SmallDisk disk = new SmallDisk(Long.MAX_VALUE);
    disk.mostAtOnce = 3;
    try (LogbookFile logbook = LogbookFile.create(folder, disk)) {
      Written.append(logbook, TIME, FIRST);
      Written.append(logbook, TIME, new PartOut(2));
    }
    assertThat(reopened(folder)).containsExactly(FIRST, new PartOut(2));
  }

  @Test
  void aDiskThatTakesNothingIsNotAskedForEver(@TempDir Path folder) {
    SmallDisk disk = new SmallDisk(Long.MAX_VALUE);
    try (LogbookFile logbook = LogbookFile.create(folder, disk)) {
      Written.append(logbook, TIME, FIRST);
      disk.mostAtOnce = 0;
      assertThatThrownBy(() -> Written.append(logbook, TIME, new PartOut(2)))
          .isInstanceOf(LogbookException.class)
          .hasMessageContaining("could not be kept");
      disk.mostAtOnce = Integer.MAX_VALUE;
      Written.append(logbook, TIME, new PartOut(3));
    }
    assertThat(reopened(folder)).containsExactly(FIRST, new PartOut(3));
  }

  /** However many bytes fit, what was confirmed stays and work goes on once there is room. */
  @Test
  void aFullDiskLosesNothingThatWasConfirmed(@TempDir Path shelf) throws IOException {
    for (int room = 0; room < 500; room++) {
      Path folder = shelf.resolve("room-" + room);
      LogbookFile.create(folder).close();
      try (LogbookFile logbook = LogbookFile.create(folder)) {
        Written.append(logbook, TIME, FIRST);
      }
      SmallDisk disk = new SmallDisk(room);
      try (LogbookFile logbook = LogbookFile.open(folder, disk)) {
        int kept = 0;
        try {
          while (kept < 50) {
            Written.append(logbook, TIME, new PartOut(kept + 1));
            kept++;
          }
        } catch (LogbookException e) {
          assertThat(e).hasMessageContaining("The step could not be kept: the disk is full. ");
        }
        // A second attempt on the full disk changes nothing either.
        assertThatThrownBy(() -> Written.append(logbook, TIME, new NoteAdded(0, "x".repeat(600))))
            .isInstanceOf(LogbookException.class);
        assertThat(entries(logbook)).hasSize(kept + 1);
        disk.room = Long.MAX_VALUE;
        Written.append(logbook, TIME, new PartOut(1000));
        assertThat(reading(folder)).hasSize(kept + 2).contains(new PartOut(1000));
      }
      assertThat(reopened(folder)).endsWith(new PartOut(1000));
      assertThat(numberOfFiles(folder)).isLessThanOrEqualTo(3);
    }
  }

  private static List<JobEntry> reading(Path folder) {
    try (LogbookFile logbook = LogbookFile.read(folder)) {
      return entries(logbook);
    }
  }

  private static long numberOfFiles(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().endsWith(".jsonl")).count();
    }
  }
}
