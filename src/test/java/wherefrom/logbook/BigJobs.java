package wherefrom.logbook;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import wherefrom.job.LoggedEntry;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.entry.LookRecorded;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.entry.PartOut;
import wherefrom.job.entry.ReadingsTaken;

/**
 * Jobs of any length, written at once: the first demo, then its looks, readings and notes again.
 */
final class BigJobs {
  private static final Instant BEGUN = Instant.parse("2026-03-01T12:00:00Z");
  private static final List<Class<?>> AGAIN =
      List.of(LookRecorded.class, ReadingsTaken.class, NoteAdded.class, PartOut.class);

  private final JobOpened opened;
  private final List<JobEntry> first;
  private final List<JobEntry> again;

  BigJobs() throws IOException {
    List<JobEntry> demo =
        LogScan.of(Path.of("demo-data"), new RealDisk()).entries().stream()
            .map(LoggedEntry::entry)
            .toList();
    opened = (JobOpened) demo.get(0);
    first = demo.subList(1, demo.size());
    again = first.stream().filter(entry -> AGAIN.contains(entry.getClass())).toList();
  }

  /** Writes a job of so many entries. */
  void write(Path job, String name, int engine, int entries) {
    try {
      Files.createDirectories(job);
      try (OutputStream out = Files.newOutputStream(job.resolve(LogFiles.name(1)))) {
        byte[] line = new LogHeader(LogHeader.VERSION, "", 1).line();
        out.write(Sums.ended(line));
        for (int sequence = 1; sequence <= entries; sequence++) {
          JobEntry entry = entry(sequence, name, engine);
          Instant time = BEGUN.plusSeconds(sequence);
          line = LogLine.of(new LoggedEntry(sequence, time, entry), Sums.chain(line));
          out.write(Sums.ended(line));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private JobEntry entry(int sequence, String name, int engine) {
    if (sequence == 1) {
      return JobOpened.of(name, engine, opened.layout(), opened.kinds(), opened.units());
    }
    int at = sequence - 2;
    return at < first.size() ? first.get(at) : again.get(at % again.size());
  }
}
