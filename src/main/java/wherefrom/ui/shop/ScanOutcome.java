package wherefrom.ui.shop;

import wherefrom.rules.Cue;

/** What came of a scan or a tap: how it sounds, and a sentence. */
record ScanOutcome(Cue cue, String sentence) {
  static ScanOutcome right(String sentence) {
    return new ScanOutcome(Cue.RIGHT, sentence);
  }

  static ScanOutcome ask(String sentence) {
    return new ScanOutcome(Cue.ASK, sentence);
  }
}
