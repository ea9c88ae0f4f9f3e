package wherefrom.job;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.PartReplaced;
import wherefrom.job.entry.PartSort;
import wherefrom.quantity.Amount;

/** The sizes and sorts of new parts, as they were said when the parts were taken on. */
final class NewSizes {
  private final Map<Integer, PartReplaced> taken = new HashMap<>();

  /** Takes over what was said before. */
  void goOn(NewSizes before) {
    taken.putAll(before.taken);
  }

  void take(JobEntry entry) {
    if (entry instanceof PartReplaced replaced) {
      taken.put(replaced.newItem(), replaced);
    }
  }

  /** {@code , size 0.010 in, roller}; empty where nothing was said. */
  static String words(PartReplaced replaced) {
    String size = replaced.size().map(NewSizes::words).orElse("");
    return size + (replaced.sort().isSame() ? "" : ", " + replaced.sort().text());
  }

  private static String words(Amount size) {
    return size.number().signum() == 0 ? ", standard" : ", size " + size.text();
  }

  /** How far the part is from standard; empty where nobody said. */
  Optional<Amount> findSize(int item) {
    return Optional.ofNullable(taken.get(item)).flatMap(PartReplaced::size);
  }

  /** Of which other sort it is; empty where nobody said. */
  Optional<PartSort> findSort(int item) {
    return Optional.ofNullable(taken.get(item))
        .map(PartReplaced::sort)
        .filter(sort -> !sort.isSame());
  }
}
