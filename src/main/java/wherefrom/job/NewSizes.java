package wherefrom.job;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import wherefrom.job.entry.PartReplaced;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;

/** The sizes and sorts of new parts, as they were said when the parts were taken on. */
final class NewSizes {
  private final Map<Integer, PartReplaced> taken = new HashMap<>();

  private NewSizes() {}

  static NewSizes of(EngineJob job) {
    NewSizes sizes = new NewSizes();
    for (LoggedEntry logged : job.standing()) {
      if (logged.entry() instanceof PartReplaced replaced) {
        sizes.taken.put(replaced.newItem(), replaced);
      }
    }
    return sizes;
  }

  /** How far the part is from standard; empty where nobody said. */
  Optional<Amount> findSize(int item) {
    return Optional.ofNullable(taken.get(item))
        .filter(one -> !one.size().isEmpty())
        .flatMap(
            one ->
                Unit.find(one.unit()).map(unit -> new Amount(new BigDecimal(one.size()), unit)));
  }

  /** Of which other sort it is; empty where nobody said. */
  Optional<String> findSort(int item) {
    return Optional.ofNullable(taken.get(item)).map(PartReplaced::sort).filter(s -> !s.isEmpty());
  }
}
