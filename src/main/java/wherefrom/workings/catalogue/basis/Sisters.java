package wherefrom.workings.catalogue.basis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Note;
import wherefrom.workings.Source;
import wherefrom.workings.Terms;
import wherefrom.workings.maths.DualNumber;

/**
 * Readings of one surface. They differ by wear alone, so one that stands far from the rest may be a
 * slip and is asked back.
 */
public final class Sisters {
  /** Of a bore, in mm: 0.010 in, which its wear seldom reaches (common practice, no source). */
  public static final double BORE = 0.254;

  /** Of a journal, a stem or a lifter, in mm: 0.005 in (common practice, no source). */
  public static final double SHAFT = 0.127;

  private static final int FEWEST = 3;

  private Sisters() {}

  /**
   * How far one reading is from the median of all, which one slip cannot carry away.
   *
   * @return 0 where there are fewer than three in all
   */
  public static double distance(double[] readings, int at) {
    if (readings.length < FEWEST) {
      return 0;
    }
    double[] sorted = readings.clone();
    Arrays.sort(sorted);
    int half = sorted.length / 2;
    double median = sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    return Math.abs(readings[at] - median);
  }

  /** A question for each reading that stands farther off than so many mm. */
  public static List<Note> ask(Terms terms, List<AmountInput> inputs, double far) {
    double[] sizes = inputs.stream().map(terms::get).mapToDouble(DualNumber::toDouble).toArray();
    List<Note> questions = new ArrayList<>();
    for (int at = 0; at < sizes.length; at++) {
      double distance = distance(sizes, at);
      if (distance > far) {
        questions.add(question(terms, inputs.get(at), distance));
      }
    }
    return questions;
  }

  private static Note question(Terms terms, AmountInput input, double distance) {
    Unit unit = terms.lengthUnit();
    return Note.question(
        "far-" + input.key(),
        input.words()
            + " "
            + terms.text(input)
            + " is "
            + Amount.of(distance, Unit.MILLIMETRE).to(unit).rounded(unit.decimals()).text()
            + " from the other readings. Read it again.",
        Source.commonPractice());
  }
}
