package wherefrom.ui.hands;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What each step of a run took: how many parts it was about, how many scans and presses. */
final class Tally {

  /** One step. */
  static final class Step {
    private final String words;
    private final int parts;
    private int scans;
    private int presses;

    private Step(String words, int parts) {
      this.words = words;
      this.parts = parts;
    }

    int acts() {
      return scans + presses;
    }

    double scansEach() {
      return (double) scans / parts;
    }

    double pressesEach() {
      return (double) presses / parts;
    }
  }

  private final String hand;
  private final List<Step> steps = new ArrayList<>();

  Tally(String hand) {
    this.hand = hand;
  }

  /**
   * Begins the next step.
   *
   * @param parts how many parts it is about; 1 for what is done once
   */
  Step step(String words, int parts) {
    Step step = new Step(words, parts);
    steps.add(step);
    return step;
  }

  private Step now() {
    return steps.get(steps.size() - 1);
  }

  void scan() {
    now().scans++;
  }

  void press() {
    now().presses++;
  }

  /** One line a step: parts, scans, presses, and both for each part. */
  String table() {
    StringBuilder all = new StringBuilder();
    all.append(
        String.format("%n%-34s %5s %5s %7s %9s%n", hand, "parts", "scans", "presses", "each"));
    for (Step step : steps) {
      all.append(
          String.format(
              Locale.ROOT,
              "%-34s %5d %5d %7d %4.1f+%4.1f%n",
              step.words,
              step.parts,
              step.scans,
              step.presses,
              step.scansEach(),
              step.pressesEach()));
    }
    return all.toString();
  }
}
