package wherefrom.job;

import java.util.List;
import java.util.Optional;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.Judgement;
import wherefrom.text.Words;
import wherefrom.workings.ResultValue;

/**
 * The oil clearance of one bearing, worked out from the readings of its pieces.
 *
 * @param journal the journal that runs in it
 * @param words {@code main 2} or {@code rod 3}
 * @param sequence the latest entry that it rests on; 0 where nothing was measured
 * @param missing what is still to be measured; empty when the clearance is known
 * @param clearance of the mean of the journal and of the walls
 * @param range the least and the most over the positions; there whenever the clearance is
 * @param judgement of the range: the worse of its least and its most
 * @param said how it was worked out, or why the readings give none
 */
public record BearingClearance(
    Subject.AFeature journal,
    String words,
    long sequence,
    List<String> missing,
    Optional<ResultValue> clearance,
    Optional<ClearanceRange> range,
    Optional<Judgement> judgement,
    String said) {

  public BearingClearance {
    missing = List.copyOf(missing);
  }

  public Look look() {
    return judgement.map(Judgement::look).orElse(Look.NOT_LOOKED);
  }

  /** In a sentence: the clearance with its answer, or what is missing. */
  public String sentence() {
    if (!missing.isEmpty()) {
      return "Still to measure: " + String.join(", ", missing) + ".";
    }
    return judgement
        .map(judged -> Words.capital(judged.sentence()))
        .or(() -> range.map(known -> "Oil clearance " + known.text() + ", no limit typed yet."))
        .orElse(said);
  }
}
