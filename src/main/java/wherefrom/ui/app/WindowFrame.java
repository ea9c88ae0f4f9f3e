package wherefrom.ui.app;

import wherefrom.ui.controls.ScreenAnswer;

/** What the context needs of the window around it. */
interface WindowFrame {
  /** How wide the window is, in pixels; 0 before it is laid out. */
  double getWidth();

  /** How high the window is, in pixels; 0 before it is laid out. */
  double getHeight();

  /** Shows a sentence that stays until it is put away, or something else is done. */
  void say(String sentence);

  /** Something else is scanned: what was said before is not about it. */
  void superseded();

  /** Another job is on the bench, or none: what was said of the one before is over. */
  void jobChanged();

  /** A code that the screen cannot take has an answer of its own over the whole screen. */
  void refuse(ScreenAnswer answer);

  /** Sizes everything anew, as the settings say. */
  void rescale();

  /** Takes the colors that the settings say. */
  void look();

  /** Whether the next scan is the set-up card. */
  void expectSetUpCard(boolean expected);

  /** The scanner's settings were changed by hand. */
  void scannerChanged();

  /** The live camera lets its device go for a moment, or may have it again. */
  void lendCamera(boolean away);

  /** Shows how far long work is, with a key that stops it. */
  void working(LongWork work);

  /** Long work has ended. */
  void ended(LongWork work);

  /** A job was copied to the second folder, or could not be. */
  void copied();
}
