package wherefrom.logbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import wherefrom.job.LogbookException;
import wherefrom.job.LoggedEntry;

/**
 * The lines of a logbook that lies elsewhere than in files: the same bytes, guarded by the same
 * sums, so that a job goes there and comes back as it was.
 */
public final class LogLines {

  /**
   * An entry's line.
   *
   * @param headers the headers that stand before it where it begins a file, each ended by a line
   *     feed; empty elsewhere
   * @param line without its line feed
   */
  @SuppressWarnings("ArrayRecordComponent")
  public record Line(byte[] headers, byte[] line) {}

  /**
   * What was read.
   *
   * @param tip the chain sum of the last line that counts
   * @param trouble what does not agree, in a sentence; empty when all does
   */
  public record Read(List<LoggedEntry> entries, String tip, String trouble) {
    public Read {
      entries = List.copyOf(entries);
    }
  }

  private LogLines() {}

  /** The header of a logbook's first file, ended by a line feed. */
  public static byte[] header() {
    try {
      return Sums.ended(new LogHeader(LogHeader.VERSION, "", 1).line());
    } catch (IOException e) {
      throw new IllegalStateException("a header is always written", e);
    }
  }

  /** What the line behind a header, or behind another line, says of it. */
  public static String sum(byte[] line) {
    int feed = line.length > 0 && line[line.length - 1] == '\n' ? 1 : 0;
    return Sums.chain(line, 0, line.length - feed);
  }

  /** The SHA-256 of a job's files one behind the other, in hexadecimal. */
  public static String digest(List<byte[]> files) {
    MessageDigest sum = Sums.sha256();
    files.forEach(sum::update);
    return HexFormat.of().formatHex(sum.digest());
  }

  /**
   * The line of an entry.
   *
   * @param before the chain sum of the line before it
   */
  public static byte[] line(LoggedEntry logged, String before) {
    try {
      return LogLine.of(logged, before);
    } catch (IOException e) {
      throw new LogbookException("The step could not be written down.", e);
    }
  }

  /**
   * The entry of a line that follows another.
   *
   * @throws IOException with what does not agree
   */
  public static LoggedEntry next(byte[] line, long sequence, String before) throws IOException {
    LineSlice slice = new LineSlice(1, line, 0, line.length, true);
    if (!slice.isWhole()) {
      throw new IOException("its check sum does not agree");
    }
    return LogLine.read(slice, sequence, Optional.of(before));
  }

  /** Reads lines as files are read, with the same checks. */
  public static Read read(List<Line> lines) {
    FolderScan scanned = LogScan.of(files(lines));
    return new Read(scanned.entries(), scanned.tip(), scanned.sentence());
  }

  /** The lines as a job's files, by name. */
  public static SortedMap<String, byte[]> files(List<Line> lines) {
    List<ByteArrayOutputStream> files = new ArrayList<>();
    for (Line line : lines) {
      Pieces headers = new Pieces(line.headers());
      while (headers.hasNext()) {
        LineSlice header = headers.next();
        files.add(new ByteArrayOutputStream());
        write(files, header.file(), header.offset(), header.length());
      }
      write(files, line.line(), 0, line.line().length);
    }
    SortedMap<String, byte[]> named = new TreeMap<>();
    for (int at = 0; at < files.size(); at++) {
      named.put(LogFiles.name(at + 1), files.get(at).toByteArray());
    }
    return named;
  }

  private static void write(List<ByteArrayOutputStream> files, byte[] line, int from, int length) {
    ByteArrayOutputStream file = files.get(files.size() - 1);
    file.write(line, from, length);
    file.write('\n');
  }

  /**
   * The lines of a job's files that count, cut ends and void entries left out.
   *
   * @throws IOException with a sentence where the logbook is damaged
   */
  public static List<Line> of(Path job) throws IOException {
    FolderScan scanned = JobFolder.scan(job);
    if (scanned.trouble().isPresent()) {
      throw new IOException(scanned.sentence());
    }
    List<LineSlice> counting = new ArrayList<>();
    for (Map.Entry<Integer, Path> file : LogFiles.in(job, new RealDisk()).entrySet()) {
      Pieces pieces = new Pieces(new RealDisk().read(file.getValue()));
      while (pieces.hasNext()) {
        LineSlice piece = pieces.next();
        if (piece.isWhole()) {
          follow(counting, piece);
        }
      }
    }
    return joined(counting);
  }

  /** What stands behind the line that a header follows was void, and goes. */
  private static void follow(List<LineSlice> counting, LineSlice piece) throws IOException {
    if (piece.line() == 1) {
      String after = LogHeader.read(piece).after();
      while (!counting.isEmpty() && !counting.get(counting.size() - 1).sum().equals(after)) {
        counting.remove(counting.size() - 1);
      }
    }
    counting.add(piece);
  }

  private static List<Line> joined(List<LineSlice> counting) {
    List<Line> lines = new ArrayList<>();
    ByteArrayOutputStream headers = new ByteArrayOutputStream();
    for (LineSlice piece : counting) {
      if (piece.line() == 1) {
        headers.writeBytes(Sums.ended(piece.bytes()));
      } else {
        lines.add(new Line(headers.toByteArray(), piece.bytes()));
        headers.reset();
      }
    }
    return lines;
  }
}
