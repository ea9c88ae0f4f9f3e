package wherefrom.logbook;

import java.util.List;
import java.util.Optional;
import wherefrom.job.LoggedEntry;

/**
 * What was read of a logbook.
 *
 * @param entries the entries that count, oldest first
 * @param tip the chain sum of the last line that counts; empty while there is none
 * @param lastNumber the highest number of a file; 0 when there is none
 * @param lastWhole whether the last file can be gone on with
 * @param cuts the cut ends of files, in the order of the files
 * @param voided entries that were whole on disk, but failed when they were written and do not count
 * @param trouble where reading stopped before the end
 */
record Scanned(
    List<LoggedEntry> entries,
    String tip,
    int lastNumber,
    boolean lastWhole,
    List<Cut> cuts,
    int voided,
    Optional<Trouble> trouble) {

  Scanned {
    entries = List.copyOf(entries);
    cuts = List.copyOf(cuts);
  }

  /** The cut end of the last file; earlier ones have been stepped over. */
  Optional<Cut> lastCut() {
    return lastWhole || cuts.isEmpty() ? Optional.empty() : Optional.of(cuts.get(cuts.size() - 1));
  }
}
