package wherefrom.rules;

import wherefrom.rules.consequence.Consequence;
import wherefrom.text.Words;

/**
 * A part that a rule forbids to fit.
 *
 * @param rule the rule's short name, such as {@code R1}
 * @param reason why, in a sentence
 * @param source where the rule comes from, or "common practice, no source"
 * @param since the entry from which on it holds
 * @param check the check that lifts it once the work is done, by its key; empty where only another
 *     part will do
 */
public record Ban(String rule, String reason, String source, long since, String check) {

  /**
   * {@code Have the housing machined again (rule 23; common practice, no source)}, no full stop.
   */
  public String words() {
    String why = Words.withoutStop(reason);
    return why + " (" + Consequence.ruleWords(rule) + "; " + source + ")";
  }
}
