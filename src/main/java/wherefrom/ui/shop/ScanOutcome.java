package wherefrom.ui.shop;

import wherefrom.rules.Cue;
import wherefrom.text.Words;

/**
 * What came of a scan or a tap: how it sounds, and a sentence.
 *
 * @param taken whether anything was logged; what was not is said over the whole screen
 */
record ScanOutcome(Cue cue, String sentence, boolean taken) {
  /** A sentence that begins with a place begins with a capital. */
  ScanOutcome {
    sentence = Words.capital(sentence);
  }

  static ScanOutcome right(String sentence) {
    return new ScanOutcome(Cue.RIGHT, sentence, true);
  }

  /** It is logged, and something about it is not as it should be. */
  static ScanOutcome ask(String sentence) {
    return new ScanOutcome(Cue.ASK, sentence, true);
  }

  static ScanOutcome refused(String sentence) {
    return new ScanOutcome(Cue.ASK, sentence, false);
  }
}
