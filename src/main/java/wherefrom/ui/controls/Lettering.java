package wherefrom.ui.controls;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Makes words in the sizes of letters that the window has. Their letters follow the scale of the
 * moment, so that they can change their size where they stand.
 */
public abstract class Lettering {
  /** So many letters stand in one line of a verdict. */
  private static final int WHOLE_LINE = 30;

  /** The scale of the moment. */
  public abstract Scale scale();

  /** The brief words where the person's text is large: whole sentences would fill the glass. */
  public String brief(String whole, String brief) {
    return isLarge() ? brief : whole;
  }

  /** Whether the person's text is so large for the glass that whole sentences would fill it. */
  public boolean isLarge() {
    return scale().isLarge();
  }

  /** Working text: 6.4 mm capitals where they fit, never under 4.5, times the person's factor. */
  public FitText text(String words) {
    return fit(words, Scale.WORKING_MM, Scale.SMALL_MM, false);
  }

  /** Small text, as for lists: 4.5 mm capitals times the person's factor. */
  public FitText small(String words) {
    return fit(words, Scale.SMALL_MM, Scale.SMALL_MM, false);
  }

  /** Small text that has one place: its letters lose the person's factor where it is long. */
  public FitText told(String words) {
    return stepping(words, Scale.SMALL_MM, false);
  }

  /** A number in a figure that is as large as its room: it grows as far as the figure lets it. */
  public FitText number(String words) {
    return stepping(words, Scale.SMALL_MM, true);
  }

  /** A letter or a short word on a key of a pad: as large as its key lets it be. */
  FitText pad(String words) {
    return stepping(words, Scale.WORKING_MM, true);
  }

  private FitText stepping(String words, double largestMm, boolean bold) {
    return new FitText(
        () -> scale().fontPx(largestMm) * scale().textFactor(),
        () -> scale().fontPx(Scale.SMALL_MM),
        bold,
        words);
  }

  /** A heading: bold working text. */
  public FitText heading(String words) {
    return fit(words, Scale.WORKING_MM, Scale.SMALL_MM, true);
  }

  /** A verdict or a place: 20 mm capitals, 10 where the words are many. */
  public FitText verdict(String words) {
    return new FitText(
        () -> scale().fontPx(Scale.VERDICT_MM),
        () -> scale().fontPx(Scale.LEAST_VERDICT_MM),
        true,
        words);
  }

  /** A verdict above a sentence whose large letters need the room: its own may be smaller then. */
  FitText headlines(String words) {
    double least = isLarge() ? leastLineMm() : Scale.LEAST_VERDICT_MM;
    return new FitText(
        () -> scale().fontPx(Scale.VERDICT_MM),
        () -> scale().fontPx(Math.min(Scale.LEAST_VERDICT_MM, least)),
        true,
        words);
  }

  /**
   * The lines of a verdict: 20 mm capitals where they fit, never under 6.4; the person's factor
   * does not make them larger. A short line is never broken.
   */
  public FitText lines(List<String> lines) {
    String words =
        lines.stream()
            .map(line -> line.length() <= WHOLE_LINE ? line.replace(' ', '\u00a0') : line)
            .collect(Collectors.joining("\n"));
    return new FitText(
        () -> scale().fontPx(Scale.VERDICT_MM), () -> scale().fontPx(leastLineMm()), true, words);
  }

  private double leastLineMm() {
    return Math.max(Scale.WORKING_MM, Scale.SMALL_MM * scale().textFactor());
  }

  /** Text between two heights of capitals in mm, both times the person's factor. */
  public FitText fit(String words, double largestMm, double leastMm, boolean bold) {
    return new FitText(
        () -> scale().fontPx(largestMm) * scale().textFactor(),
        () -> scale().fontPx(leastMm) * scale().textFactor(),
        bold,
        words);
  }
}
