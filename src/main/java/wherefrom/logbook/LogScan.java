package wherefrom.logbook;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import wherefrom.job.LoggedEntry;

/** Reads a logbook's files in order, as far as they are sound. It writes nothing. */
final class LogScan {

  /** The last lines that count: from the one before the last entry on. */
  private final List<FolderScan.Link> recent = new ArrayList<>();

  private final LineReader lines = new LineReader();
  private final List<LoggedEntry> entries = new ArrayList<>();
  private final List<CutLine> cuts = new ArrayList<>();
  private Optional<String> tip = Optional.of("");
  private Optional<Trouble> trouble = Optional.empty();
  private boolean reading = true;
  private boolean lastWhole;
  private int lastNumber;
  private long lastSize;
  private int lastLine;
  private int voided;

  private LogScan() {}

  static FolderScan of(Path folder, LogDisk disk) throws IOException {
    LogScan scan = new LogScan();
    for (Map.Entry<Integer, Path> file : LogFiles.in(folder, disk).entrySet()) {
      scan.lastNumber = file.getKey();
      scan.file(String.valueOf(file.getValue().getFileName()), disk.read(file.getValue()));
    }
    return scan.scanned();
  }

  /** Reads files that lie in memory, by name in their order. */
  static FolderScan of(SortedMap<String, byte[]> files) {
    LogScan scan = new LogScan();
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      scan.lastNumber++;
      scan.file(file.getKey(), file.getValue());
    }
    return scan.scanned();
  }

  private FolderScan scanned() {
    return new FolderScan(
        entries,
        tip.orElse(""),
        recent,
        lastNumber,
        lastSize,
        lastLine,
        lastWhole,
        cuts,
        voided,
        trouble);
  }

  private void file(String name, byte[] bytes) {
    Pieces pieces = new Pieces(bytes);
    lastWhole = false;
    lastSize = bytes.length;
    if (!pieces.hasNext()) {
      cuts.add(new CutLine(name, 1, 0, 0));
    }
    while (pieces.hasNext()) {
      LineSlice piece = pieces.next();
      boolean whole = piece.isWhole();
      lastLine = piece.length();
      if (!reading) {
        trouble = trouble.map(found -> found.withBehind(whole));
      } else if (whole) {
        take(name, piece);
      } else {
        broken(name, piece, !pieces.hasNext());
      }
      lastWhole = reading && whole;
    }
  }

  private void broken(String name, LineSlice piece, boolean last) {
    if (last && !piece.holdsAnotherEntry()) {
      cuts.add(new CutLine(name, piece.line(), piece.offset(), piece.length()));
      return;
    }
    stop(name, piece, "its check sum does not agree", false);
    if (piece.line() == 1 && recent.isEmpty() && !piece.holdsAnotherEntry()) {
      // Only the first header is lost: the entries behind it are guarded by sums of their own.
      reading = true;
      tip = Optional.empty();
    }
  }

  private void take(String name, LineSlice piece) {
    try {
      if (piece.line() == 1) {
        header(LogHeader.read(piece), piece, name);
      } else {
        entry(lines.read(piece, entries.size() + 1L, tip), piece);
      }
    } catch (EntryCodec.UnknownTypeException e) {
      stop(name, piece, DiskErrors.of(e), true);
    } catch (IOException e) {
      stop(name, piece, DiskErrors.of(e), false);
    }
  }

  private void header(LogHeader header, LineSlice piece, String name) throws IOException {
    follow(header.after());
    if (header.version() > LogHeader.VERSION) {
      stop(name, piece, "its format is version " + header.version(), true);
      // What this version understands of it is read all the same.
      reading = true;
    }
    link(new FolderScan.Link(lines.sum(piece), false));
  }

  /**
   * Finds the line that a file follows. It is the last one, but for a line that failed when it was
   * written and may yet have reached the disk: that one does not count.
   */
  private void follow(String after) throws IOException {
    int at = recent.size();
    int dropped = 0;
    while (at > 0 && !recent.get(at - 1).sum().equals(after)) {
      at--;
      dropped += recent.get(at).entry() ? 1 : 0;
    }
    boolean found = at > 0 || (after.isEmpty() && dropped == entries.size());
    if (!found || dropped > 1) {
      throw new IOException("it does not follow the file before it");
    }
    voided += dropped;
    entries.subList(entries.size() - dropped, entries.size()).clear();
    recent.subList(at, recent.size()).clear();
  }

  /** Of the lines before an entry only one can be followed yet: the last. */
  private void entry(LoggedEntry entry, LineSlice piece) {
    entries.add(entry);
    if (recent.size() > 1) {
      recent.subList(0, recent.size() - 1).clear();
    }
    link(new FolderScan.Link(lines.sum(piece), true));
  }

  private void link(FolderScan.Link next) {
    recent.add(next);
    tip = Optional.of(next.sum());
  }

  private void stop(String name, LineSlice piece, String why, boolean newer) {
    reading = false;
    if (trouble.isEmpty()) {
      trouble = Optional.of(new Trouble(name, piece.line(), piece.offset(), why, newer, 0, 0));
    }
  }
}
