package wherefrom.ui.controls;

import javafx.scene.layout.Region;

/** The field above a board's letters: what is asked for, and what is typed so far. */
final class BoardField {
  /** The field's own, left and right together. */
  private static final double PADDING_PX = 24;

  /** What is asked for stands before so much of what is typed, at least. */
  private static final String BEGUN = ": abcdefgh_";

  /** Before so much where two lines hold it. */
  private static final String LONGER = BEGUN + "abcdef";

  private final Touch touch;
  private final String prompt;
  private final FitText words;

  BoardField(Touch touch, String prompt) {
    this.touch = touch;
    this.prompt = prompt;
    words = touch.text("");
    words.getStyleClass().add("field");
  }

  /** What stands before the letters: a question ends in its own mark, all else in a colon. */
  static String before(String prompt) {
    return prompt.endsWith("?") || prompt.endsWith("!") ? prompt + " " : prompt + ": ";
  }

  Region view() {
    return words;
  }

  /** How high it is: what is asked for is read before the first letters that are typed. */
  double high(double width) {
    double inner = width - PADDING_PX;
    FitText longer = touch.text(prompt + LONGER);
    FitText begun = longer.leastLines(inner) <= 2 ? longer : touch.text(prompt + BEGUN);
    return Math.ceil(begun.minHeight(inner) + PADDING_PX / 2);
  }

  /**
   * Shows what is typed; where there is not room for all, its end is seen.
   *
   * @param message a sentence in its place; empty for none
   */
  void show(String typed, String message, double left, double top, double width, double height) {
    Panes.place(words, left, top, width, height);
    String shown = typed + "_";
    if (!message.isEmpty()) {
      say(message, shown, width, height);
      return;
    }
    words.setWords(before(prompt) + shown);
    boolean whole = true;
    while (!fits(width, height) && !shown.isEmpty()) {
      words.setWords(whole ? shown : "…" + shown);
      shown = shown.substring(shown.offsetByCodePoints(0, whole ? 0 : 1));
      whole = false;
    }
  }

  /** A message goes with the next letter, so that what was typed may give way to it. */
  private void say(String message, String typed, double width, double height) {
    words.setWords(message + " " + typed);
    if (!fits(width, height)) {
      words.setWords(message);
    }
  }

  private boolean fits(double width, double height) {
    return words.fits(width - PADDING_PX, height - PADDING_PX / 2);
  }
}
