package wherefrom.logbook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.JobOpened;

/** The opening of a job where it stands in almost every logbook: in the second line. */
final class OpeningLine {
  private static final byte[] TYPE = ascii("\"type\":\"job-opened\"");
  private static final byte[] ENGINE = ascii("\"engine\":");
  private static final int SHORT = 4096;
  private static final int LONG = 1 << 20;

  private final LineSlice header;
  private final LineSlice line;

  private OpeningLine(LineSlice header, LineSlice line) {
    this.header = header;
    this.line = line;
  }

  /** Of the first file of a logbook; empty where it stands elsewhere, or is no whole line. */
  static Optional<OpeningLine> of(Path job) {
    Path file = job.resolve(LogFiles.name(1));
    try {
      Optional<OpeningLine> found = in(HeldFiles.read(file, 0, SHORT));
      return found.isPresent() ? found : in(HeldFiles.read(file, 0, LONG));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static Optional<OpeningLine> in(byte[] bytes) {
    Pieces pieces = new Pieces(bytes);
    if (!pieces.hasNext()) {
      return Optional.empty();
    }
    LineSlice header = pieces.next();
    if (!pieces.hasNext()) {
      return Optional.empty();
    }
    LineSlice line = pieces.next();
    return line.isWhole() && line.holds(TYPE)
        ? Optional.of(new OpeningLine(header, line))
        : Optional.empty();
  }

  /** Whether it can be the opening of the job with this engine number: a quick no. */
  boolean mayBeOf(int engine) {
    return line.holds(ascii("\"engine\":" + engine + ","));
  }

  /** The engine number that it speaks of, without looking at anything else. */
  Optional<Integer> findEngine() {
    return line.findNumber(ENGINE);
  }

  /** What it says; empty where it does not follow its header. */
  Optional<JobOpened> find() {
    try {
      JobEntry entry = LogLine.read(line, 1, Optional.of(header.sum())).entry();
      return entry instanceof JobOpened opened && header.isWhole()
          ? Optional.of(opened)
          : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }
}
