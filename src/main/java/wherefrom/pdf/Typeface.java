package wherefrom.pdf;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * One face of the print font: how wide words run, and which characters it has. Not safe for use by
 * several threads.
 */
public final class Typeface {
  /** Height of the capitals in parts of the font's size. */
  public static final double CAP_HEIGHT = 0.75;

  private static final String TAILS = "gjpqy,;()[]{}|_@Q";
  private static final double ROUNDING = 1e-6;

  /** Characters below this are measured beforehand. */
  private static final int COMMON = 0x180;

  private static final int REPLACEMENT = '?';
  private static final int NOTHING = -1;

  private final Glyphs own;
  private final String spareFile;
  private Optional<Glyphs> spare = Optional.empty();
  private final double[] common = new double[COMMON];

  private Typeface(String file, String spareFile) {
    this.own = Glyphs.load(file);
    this.spareFile = spareFile;
    Arrays.setAll(common, one -> own.has(one) ? own.advance(one) : Double.NaN);
  }

  public static Typeface regular() {
    return new Typeface("B612-Regular.ttf", "DejaVuSans.ttf");
  }

  public static Typeface bold() {
    return new Typeface("B612-Bold.ttf", "DejaVuSans-Bold.ttf");
  }

  public Glyphs own() {
    return own;
  }

  /** Letters of other scripts that the print font lacks; read from their file when first wanted. */
  public Glyphs spare() {
    Glyphs letters = spare.orElseGet(() -> Glyphs.load(spareFile));
    spare = Optional.of(letters);
    return letters;
  }

  private Glyphs glyphs(int character) {
    return own.has(character) ? own : spare();
  }

  private boolean has(int character) {
    return own.has(character) || spare().has(character);
  }

  /** Words set from one of the two fonts. */
  public record Run(String text, boolean spare) {}

  /** The words cut where the font changes; they must be {@link #clean}. */
  public List<Run> runs(String clean) {
    if (isPlain(clean)) {
      return List.of(new Run(clean, false));
    }
    List<Run> runs = new ArrayList<>();
    int from = 0;
    for (int at = 0; at < clean.length(); ) {
      boolean now = isSpare(clean, at);
      int next = clean.offsetByCodePoints(at, 1);
      if (next == clean.length() || isSpare(clean, next) != now) {
        runs.add(new Run(clean.substring(from, next), now));
        from = next;
      }
      at = next;
    }
    return runs;
  }

  private boolean isSpare(String clean, int at) {
    return !own.has(clean.codePointAt(at));
  }

  /** The width of words whose capitals are 1 mm high; the words must be {@link #clean}. */
  public double width(String clean) {
    double width = 0;
    for (int at = 0; at < clean.length(); ) {
      int character = clean.codePointAt(at);
      double known = character < COMMON ? common[character] : Double.NaN;
      width += Double.isNaN(known) ? glyphs(character).advance(character) : known;
      at += Character.charCount(character);
    }
    return width / CAP_HEIGHT;
  }

  /** What neither font has of a text, each sign once; a question mark stands for it on paper. */
  public String lacking(String text) {
    if (isPlain(text)) {
      return "";
    }
    StringBuilder lacking = new StringBuilder();
    Normalizer.normalize(text, Normalizer.Form.NFC)
        .codePoints()
        .distinct()
        .filter(character -> cleaned(character) == REPLACEMENT && character != REPLACEMENT)
        .forEach(lacking::appendCodePoint);
    return lacking.toString();
  }

  /**
   * The words with what the font lacks replaced: spaces for control characters, the plain letter
   * for one with an unknown accent, a question mark for the rest.
   */
  public String clean(String text) {
    if (isPlain(text)) {
      return text.strip();
    }
    StringBuilder clean = new StringBuilder();
    Normalizer.normalize(text, Normalizer.Form.NFC)
        .codePoints()
        .forEach(character -> append(clean, character));
    return clean.toString().strip();
  }

  private static boolean isPlain(String text) {
    for (int at = 0; at < text.length(); at++) {
      if (text.charAt(at) < ' ' || text.charAt(at) > '~') {
        return false;
      }
    }
    return true;
  }

  private void append(StringBuilder clean, int character) {
    int shown = cleaned(character);
    if (shown != NOTHING) {
      clean.appendCodePoint(shown);
    }
  }

  private int cleaned(int character) {
    if (Character.isISOControl(character) || Character.isSpaceChar(character)) {
      return ' ';
    }
    if (Character.getType(character) == Character.FORMAT) {
      return NOTHING;
    }
    if (has(character)) {
      return character;
    }
    String parts = Normalizer.normalize(Character.toString(character), Normalizer.Form.NFKD);
    return has(parts.codePointAt(0)) ? parts.codePointAt(0) : REPLACEMENT;
  }

  /** The words, or as many as fit into a width with an ellipsis; capitals are 1 mm high. */
  public String shorten(String clean, double width) {
    if (width(clean) <= width + ROUNDING) {
      return clean;
    }
    int end = clean.length();
    while (end > 0 && width(clean.substring(0, end).stripTrailing() + "…") > width) {
      end = clean.offsetByCodePoints(end, -1);
    }
    return clean.substring(0, end).stripTrailing() + "…";
  }

  public static boolean hasTail(String text) {
    return text.chars().anyMatch(character -> TAILS.indexOf(character) >= 0 || character > 0x7F);
  }

  public static boolean hasAccentedCapital(String text) {
    return text.codePoints().anyMatch(character -> character > 0x7F && character != '…');
  }
}
