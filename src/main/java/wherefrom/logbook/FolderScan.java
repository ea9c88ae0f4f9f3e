package wherefrom.logbook;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import wherefrom.job.LoggedEntry;

/**
 * What was read of a logbook.
 *
 * @param entries the entries that count, oldest first
 * @param tip the chain sum of the last line that counts; empty while there is none
 * @param recent the last lines that count, from the one before the last entry on
 * @param lastNumber the highest number of a file; 0 when there is none
 * @param lastSize its size in bytes
 * @param lastLine the length of its last line, without its end
 * @param lastWhole whether the last file can be gone on with
 * @param cuts the cut ends of files, in the order of the files
 * @param voided entries that were whole on disk, but failed when they were written and do not count
 * @param trouble where reading stopped before the end
 */
record FolderScan(
    List<LoggedEntry> entries,
    String tip,
    List<Link> recent,
    int lastNumber,
    long lastSize,
    int lastLine,
    boolean lastWhole,
    List<CutLine> cuts,
    int voided,
    Optional<Trouble> trouble) {

  /**
   * A line that counts.
   *
   * @param sum its chain sum
   * @param entry whether it is an entry; else it is a header
   */
  record Link(String sum, boolean entry) {}

  FolderScan {
    recent = List.copyOf(recent);
    entries = List.copyOf(entries);
    cuts = List.copyOf(cuts);
  }

  /**
   * Whether this is the history that ends with a line.
   *
   * @param line the chain sum of that line; empty for none
   * @param failed the chain sum of an entry that may stand behind it and does not count
   */
  boolean isAt(String line, Optional<String> failed) {
    int at = recent.size();
    while (at > 0 && !recent.get(at - 1).sum().equals(line)) {
      at--;
      Link behind = recent.get(at);
      if (behind.entry() && !failed.equals(Optional.of(behind.sum()))) {
        return false;
      }
    }
    return at > 0 || line.isEmpty();
  }

  /** Whether no job was begun: it was interrupted before its first entry. */
  boolean isUnused() {
    return entries.isEmpty() && trouble.isEmpty();
  }

  /** That no job was begun in a folder, in a sentence. */
  static String unused(Path folder) {
    return "No job was started in "
        + folder
        + ". It was interrupted before anything was kept. Start it again there, or"
        + " remove the folder.";
  }

  /** What there is to say of it: where it is damaged, or its end cut; empty when it is sound. */
  String sentence() {
    return trouble
        .map(found -> found.sentence(entries.size()))
        .or(() -> lastCut().map(CutLine::sentence))
        .orElse("");
  }

  /** The cut end of the last file; earlier ones have been stepped over. */
  Optional<CutLine> lastCut() {
    return lastWhole || cuts.isEmpty() ? Optional.empty() : Optional.of(cuts.get(cuts.size() - 1));
  }
}
