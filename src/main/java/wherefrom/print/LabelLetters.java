package wherefrom.print;

import wherefrom.pdf.Typeface;

/** Both faces of the print font. Not safe for use by several threads. */
record LabelLetters(Typeface regular, Typeface bold) {

  static LabelLetters load() {
    return new LabelLetters(Typeface.regular(), Typeface.bold());
  }

  Typeface face(boolean isBold) {
    return isBold ? bold : regular;
  }

  /** A line of words that starts at x, as wide as it runs. */
  PaperMark.Words words(String text, boolean isBold, double x, double baseline, double capMm) {
    return words(text, isBold, x, baseline, capMm, false);
  }

  /** The same, white for a black ground. */
  PaperMark.Words white(String text, boolean isBold, double x, double baseline, double capMm) {
    return words(text, isBold, x, baseline, capMm, true);
  }

  private PaperMark.Words words(
      String text, boolean isBold, double x, double baseline, double capMm, boolean white) {
    Typeface face = face(isBold);
    String clean = face.clean(text);
    return new PaperMark.Words(clean, isBold, x, baseline, capMm, face.width(clean) * capMm, white);
  }
}
