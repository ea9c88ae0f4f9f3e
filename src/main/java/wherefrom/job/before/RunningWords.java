package wherefrom.job.before;

import java.util.List;
import wherefrom.inspection.measure.Sample;
import wherefrom.job.MeasuredResult;
import wherefrom.quantity.Amount;

/** A pressure of the running engine in words, with the speed that it was read at. */
final class RunningWords {
  private RunningWords() {}

  /** {@code Oil pressure, hot, idle: 12 psi ± 1 psi at 700 rpm.} */
  static String of(MeasuredResult result) {
    String value = result.findValue("value").orElseThrow().text();
    List<Sample> samples = result.samples();
    return result.plan().title()
        + ": "
        + value
        + at(samples.get(samples.size() - 1), samples)
        + ".";
  }

  private static String at(Sample last, List<Sample> samples) {
    return samples.size() < 2 ? "" : " at " + Amount.of(last.mean(), last.unit()).rounded(0).text();
  }
}
