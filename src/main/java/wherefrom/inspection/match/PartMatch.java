package wherefrom.inspection.match;

import java.util.Locale;
import java.util.Optional;

/**
 * Which recorded part an untagged one may be. It is a proposal: only a person accepts it.
 *
 * @param found the untagged part
 * @param best the recorded part that the cheapest assignment of the whole group gives
 * @param confidence how likely that is, 0 to 1, over all ways to match the whole group
 * @param runnerUp the next likely, with its confidence
 */
public record PartMatch(
    String found,
    String best,
    double confidence,
    Optional<String> runnerUp,
    double runnerUpConfidence,
    Certainty certainty) {

  /** What may be said. */
  public enum Certainty {
    CERTAIN("certain from its readings"),
    LIKELY("likely"),
    CANNOT_TELL("can't tell"),
    MATCHES_NONE("matches none: its readings are far from every record");

    private final String words;

    Certainty(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /** In a sentence, with the runner-up. */
  public String sentence() {
    if (certainty == Certainty.MATCHES_NONE) {
      return "Number " + found + ": " + certainty.words() + ".";
    }
    return "Number "
        + found
        + ": "
        + certainty.words()
        + ", "
        + best
        + " "
        + percent(confidence)
        + runnerUp.map(next -> ", next " + next + " " + percent(runnerUpConfidence)).orElse("")
        + ".";
  }

  /** A likelihood in words; never rounded up to 100 %. */
  public static String percent(double share) {
    double floor = Math.floor(share * 10_000) / 100;
    return floor >= 99.99 ? "over 99.9 %" : String.format(Locale.ROOT, "%.0f %%", floor);
  }
}
