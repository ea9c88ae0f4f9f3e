package wherefrom.doors;

import java.util.Locale;

/**
 * What the inputs at one door came to.
 *
 * @param inputs how many came
 * @param refused how many of them were refused with a sentence
 * @param nanos the processor time of all, in nanoseconds
 * @param longest the processor time of the dearest, in nanoseconds
 * @param most the memory that the dearest asked for, in bytes
 */
record Tally(int inputs, int refused, long nanos, long longest, long most) {

  Tally and(Tally other) {
    return new Tally(
        inputs + other.inputs,
        refused + other.refused,
        nanos + other.nanos,
        Math.max(longest, other.longest),
        Math.max(most, other.most));
  }

  String words() {
    return String.format(
        Locale.ROOT,
        "%d inputs, %d refused, %.3f ms each, at most %.0f ms and %.1f MB",
        inputs,
        refused,
        nanos / 1e6 / inputs,
        longest / 1e6,
        most / 1e6);
  }
}
