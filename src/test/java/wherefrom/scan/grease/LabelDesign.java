package wherefrom.scan.grease;

import wherefrom.parts.LabelFrame;
import wherefrom.parts.TagSymbol;

/** What is printed round the symbol, in modules. */
record LabelDesign(int quiet, int frame, int margin) {
  static final LabelDesign PRINTED =
      new LabelDesign(LabelFrame.QUIET_ZONE, LabelFrame.FRAME, LabelFrame.MARGIN);
  static final LabelDesign PLAIN = new LabelDesign(4, 0, 0);

  int inset() {
    return quiet + frame + margin;
  }

  int width() {
    return TagSymbol.SIZE + 2 * inset();
  }
}
