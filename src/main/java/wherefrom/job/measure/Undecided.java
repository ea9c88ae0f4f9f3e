package wherefrom.job.measure;

import java.util.List;
import wherefrom.inspection.Look;
import wherefrom.job.BearingClearance;
import wherefrom.job.EngineJob;
import wherefrom.job.MeasuredResult;
import wherefrom.job.OilClearances;
import wherefrom.job.PairClearance;
import wherefrom.job.PairClearances;

/**
 * All that its uncertainty leaves open, to be measured better: the one list that a window and a
 * command line show.
 *
 * @param results readings of which at least one value is too near its limit
 * @param bearings oil clearances too near theirs
 * @param pairs other clearances too near theirs, or worked out of readings that cannot go together
 */
public record Undecided(
    List<MeasuredResult> results, List<BearingClearance> bearings, List<PairClearance> pairs) {

  public static Undecided of(EngineJob job) {
    return new Undecided(
        job.measures().all().stream().filter(Undecided::isOpen).toList(),
        new OilClearances(job).list().stream().filter(one -> one.look() == Look.SUSPECT).toList(),
        new PairClearances(job)
            .measured().stream().filter(one -> one.look() == Look.SUSPECT).toList());
  }

  /** Another value may be rejected already: this one is still not known. */
  private static boolean isOpen(MeasuredResult result) {
    return result.judgements().stream().anyMatch(judged -> judged.look() == Look.SUSPECT);
  }

  public int count() {
    return results.size() + bearings.size() + pairs.size();
  }
}
