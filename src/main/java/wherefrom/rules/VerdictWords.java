package wherefrom.rules;

import java.util.List;
import wherefrom.parts.Part;

/**
 * What a verdict says, the same wherever it is said: on the glass, at the command line, in the
 * logbook.
 *
 * @param facts at most three lines that can be read from the engine
 * @param against the same of a part that sits in its place: without that place and the hand
 * @param small one small line more; may be empty
 * @param sentence what is so, in one or two sentences
 * @param advice what to do now, in a sentence; may be empty
 * @param first what leads out of it
 */
public record VerdictWords(
    List<Fact> facts,
    List<Fact> against,
    String small,
    String sentence,
    String advice,
    WayOut first) {

  public VerdictWords {
    facts = List.copyOf(facts);
    against = List.copyOf(against);
    if (facts.size() > 3) {
      throw new IllegalArgumentException("more than three lines: " + facts);
    }
  }

  static VerdictWords of(
      List<Fact> facts, String small, String sentence, String advice, WayOut first) {
    return new VerdictWords(facts, facts, small, sentence, advice, first);
  }

  VerdictWords against(List<Fact> lines) {
    return new VerdictWords(facts, lines, small, sentence, advice, first);
  }

  /** The lines as they stand on the glass. */
  public List<String> lines() {
    return facts.stream().map(Fact::line).toList();
  }

  /** The sentence, then what to do. */
  public String told() {
    return (sentence + " " + advice).strip();
  }

  /** {@code a rocker}, {@code the old one}: a part in the hand. */
  static String hand(Part part) {
    return (part.fresh() ? "a new " : "a ") + part.kind().word();
  }
}
