package wherefrom.job;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.size.CutSurface;

/** What each journal and bore was cut to, by the changes made and the shop's lines come back. */
final class SurfaceCuts {
  private final EngineJob job;
  private final Map<String, List<LastCut>> cuts = new HashMap<>();

  private SurfaceCuts(EngineJob job) {
    this.job = job;
  }

  static SurfaceCuts of(EngineJob job) {
    SurfaceCuts cuts = new SurfaceCuts(job);
    job.told().cutsBefore().forEach(cuts::take);
    job.told().work().forEach(cuts::take);
    return cuts;
  }

  private void take(MadeChange made) {
    Change change = made.change();
    if (change.kind() == ChangeKind.CRANK_CHANGED) {
      LastCut other = new LastCut(made.sequence(), Optional.empty(), true);
      put(CutSurface.ROD_JOURNAL, "", other);
      put(CutSurface.MAIN_JOURNAL, "", other);
    }
    CutSurface.find(change.kind())
        .ifPresent(
            surface ->
                put(surface, change.where(), new LastCut(made.sequence(), change.size(), false)));
  }

  private void put(CutSurface surface, String where, LastCut cut) {
    List<String> all = where.isEmpty() ? surface.listWhere(job.layout()) : List.of(where);
    all.forEach(one -> cuts.computeIfAbsent(key(surface, one), any -> new ArrayList<>()).add(cut));
  }

  private static String key(CutSurface surface, String where) {
    return surface.subject(where).key();
  }

  /** The last cut. */
  Optional<LastCut> find(CutSurface surface, String where) {
    return findBefore(surface, where, Long.MAX_VALUE);
  }

  /** The last cut before an entry. */
  Optional<LastCut> findBefore(CutSurface surface, String where, long sequence) {
    return cuts.getOrDefault(key(surface, where), List.of()).stream()
        .filter(cut -> cut.sequence() < sequence)
        .reduce((earlier, later) -> later);
  }
}
