package wherefrom.ui.shop;

import wherefrom.rules.Cue;

/** What came of a scan or a tap: how it sounds, and a sentence. */
record Came(Cue cue, String sentence) {
  static Came right(String sentence) {
    return new Came(Cue.RIGHT, sentence);
  }

  static Came ask(String sentence) {
    return new Came(Cue.ASK, sentence);
  }
}
