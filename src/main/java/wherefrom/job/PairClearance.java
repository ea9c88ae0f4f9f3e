package wherefrom.job;

import java.util.List;
import java.util.Optional;
import wherefrom.engine.BoreSpot;
import wherefrom.engine.Spot;
import wherefrom.engine.Spots;
import wherefrom.engine.ValveSpot;
import wherefrom.inspection.Look;
import wherefrom.inspection.measure.ClearancePair;
import wherefrom.inspection.measure.Judgement;
import wherefrom.workings.ResultValue;

/**
 * The clearance of one pair of surfaces at one place, worked out from the readings of both.
 *
 * @param where the place, as {@link ClearancePair#where} names it
 * @param sequence the latest entry that it rests on; 0 where neither is measured
 * @param missing what is still to be measured; empty when the clearance is known
 * @param facings the least and the most where readings face each other, in the pair's order
 * @param range the least and the most of all; there whenever nothing is missing and it fits
 * @param judgement of the range: the worse of its least and its most
 * @param said why the readings give none; empty where they do
 */
public record PairClearance(
    ClearancePair pair,
    String where,
    long sequence,
    List<String> missing,
    List<At> facings,
    Optional<ClearanceRange> range,
    Optional<Judgement> judgement,
    String said) {

  /** The least and the most clearance where readings face each other. */
  public record At(ClearancePair.Facing facing, ResultValue least, ResultValue most) {}

  public PairClearance {
    missing = List.copyOf(missing);
    facings = List.copyOf(facings);
  }

  /** {@code cylinder 3}, {@code cylinder 3, exhaust}, {@code cam bearing 2}. */
  public String words() {
    return Spots.find(where).map(PairClearance::words).orElse(where);
  }

  /** The same in few words: {@code cylinder 3}, {@code 3 EX}. */
  public String brief() {
    return Spots.find(where)
        .map(spot -> spot instanceof ValveSpot ? spot.figures() : words(spot))
        .orElse(where);
  }

  private static String words(Spot spot) {
    return spot instanceof BoreSpot bore ? "cylinder " + bore.number() : spot.words();
  }

  public Look look() {
    return said.isEmpty() ? judgement.map(Judgement::look).orElse(Look.NOT_LOOKED) : Look.SUSPECT;
  }

  /** In a sentence: the clearance with its answer, or what is missing. */
  public String sentence() {
    if (!missing.isEmpty()) {
      return "Still to measure: " + String.join(", ", missing) + ".";
    }
    if (!said.isEmpty()) {
      return said;
    }
    return judgement
        .map(judged -> pair.title() + " " + judged.sentence())
        .or(
            () ->
                range.map(
                    known -> pair.title() + " clearance " + known.text() + ", no limit typed yet."))
        .orElse("");
  }
}
