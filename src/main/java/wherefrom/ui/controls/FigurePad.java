package wherefrom.ui.controls;

/** A pad on which figures are put together, by touch or from a real keyboard. */
public interface FigurePad {
  /** The figures so far; empty when none. */
  String typed();

  /** Takes one character; what does not belong in a figure is left out. */
  void type(String character);

  /** Takes the last character back. */
  void erase();

  /** The figures, and all that is chosen with them, stand as they do now again when it is run. */
  Runnable remember();
}
