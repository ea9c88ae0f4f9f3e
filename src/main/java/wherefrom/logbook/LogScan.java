package wherefrom.logbook;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.job.LoggedEntry;

/** Reads a logbook's files in order, as far as they are sound. It writes nothing. */
final class LogScan {

  /** A line that counts: its chain sum, and its entry unless it is a header. */
  private record Link(String sum, Optional<LoggedEntry> entry) {}

  private final List<Link> chain = new ArrayList<>();
  private final List<Cut> cuts = new ArrayList<>();
  private Optional<String> tip = Optional.of("");
  private Optional<Trouble> trouble = Optional.empty();
  private boolean reading = true;
  private boolean lastWhole;
  private int voided;
  private int count;

  private LogScan() {}

  static Scanned of(Path folder, LogDisk disk) throws IOException {
    LogScan scan = new LogScan();
    int last = 0;
    for (Map.Entry<Integer, Path> file : LogFiles.in(folder, disk).entrySet()) {
      last = file.getKey();
      scan.file(String.valueOf(file.getValue().getFileName()), disk.read(file.getValue()));
    }
    List<LoggedEntry> entries =
        scan.chain.stream().map(Link::entry).flatMap(Optional::stream).toList();
    return new Scanned(
        entries, scan.tip.orElse(""), last, scan.lastWhole, scan.cuts, scan.voided, scan.trouble);
  }

  private void file(String name, byte[] bytes) {
    List<Piece> pieces = Piece.split(bytes);
    lastWhole = false;
    if (pieces.isEmpty()) {
      cuts.add(new Cut(name, 1, 0, 0));
      return;
    }
    for (int at = 0; at < pieces.size(); at++) {
      Piece piece = pieces.get(at);
      if (!reading) {
        trouble = trouble.map(found -> found.withBehind(piece));
      } else if (piece.isWhole()) {
        take(name, piece);
      } else {
        broken(name, piece, at == pieces.size() - 1);
      }
    }
    lastWhole = reading && pieces.get(pieces.size() - 1).isWhole();
  }

  private void broken(String name, Piece piece, boolean last) {
    if (last && !piece.holdsAnotherEntry()) {
      cuts.add(new Cut(name, piece.line(), piece.offset(), piece.bytes().length));
      return;
    }
    stop(name, piece, "its check sum does not agree", false);
    if (piece.line() == 1 && chain.isEmpty() && !piece.holdsAnotherEntry()) {
      // Only the first header is lost: the entries behind it are guarded by sums of their own.
      reading = true;
      tip = Optional.empty();
    }
  }

  private void take(String name, Piece piece) {
    try {
      if (piece.line() == 1) {
        header(LogHeader.read(piece.bytes()), piece, name);
      } else {
        link(piece, Optional.of(LogLine.read(piece.bytes(), count + 1L, tip)));
      }
    } catch (EntryCodec.UnknownTypeException e) {
      stop(name, piece, Reasons.of(e), true);
    } catch (IOException e) {
      stop(name, piece, Reasons.of(e), false);
    }
  }

  private void header(LogHeader header, Piece piece, String name) throws IOException {
    follow(header.after());
    if (header.version() > LogHeader.VERSION) {
      stop(name, piece, "its format is version " + header.version(), true);
      // What this version understands of it is read all the same.
      reading = true;
    }
    link(piece, Optional.empty());
  }

  /**
   * Finds the line that a file follows. It is the last one, but for a line that failed when it was
   * written and may yet have reached the disk: that one does not count.
   */
  private void follow(String after) throws IOException {
    int at = chain.size();
    int dropped = 0;
    while (at > 0 && !chain.get(at - 1).sum().equals(after)) {
      at--;
      dropped += chain.get(at).entry().isPresent() ? 1 : 0;
    }
    boolean found = at > 0 || after.isEmpty();
    if (!found || dropped > 1) {
      throw new IOException("it does not follow the file before it");
    }
    voided += dropped;
    count -= dropped;
    chain.subList(at, chain.size()).clear();
  }

  private void link(Piece piece, Optional<LoggedEntry> entry) {
    String sum = Sums.chain(piece.bytes());
    chain.add(new Link(sum, entry));
    count += entry.isPresent() ? 1 : 0;
    tip = Optional.of(sum);
  }

  private void stop(String name, Piece piece, String why, boolean newer) {
    reading = false;
    if (trouble.isEmpty()) {
      trouble = Optional.of(new Trouble(name, piece.line(), piece.offset(), why, newer, 0, 0));
    }
  }
}
