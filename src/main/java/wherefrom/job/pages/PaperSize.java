package wherefrom.job.pages;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Sheets that a printer takes; sides in mm. */
public enum PaperSize {
  A4(210, 297),
  A3(297, 420),
  LETTER(215.9, 279.4);

  /** Where paper is Letter (from memory). */
  private static final Set<String> LETTER_COUNTRIES =
      Set.of("BZ", "CA", "CL", "CO", "CR", "GT", "MX", "NI", "PA", "PH", "PR", "SV", "US", "VE");

  private final double width;
  private final double height;

  PaperSize(double width, double height) {
    this.width = width;
    this.height = height;
  }

  /** The short side. */
  public double width() {
    return width;
  }

  /** The long side. */
  public double height() {
    return height;
  }

  /** What lies in most printers of a country. */
  public static PaperSize usual(Locale here) {
    return LETTER_COUNTRIES.contains(here.getCountry()) ? LETTER : A4;
  }

  /** The size of this name, in any case of letters. */
  public static Optional<PaperSize> find(String name) {
    return Stream.of(values())
        .filter(size -> size.name().equals(name.toUpperCase(Locale.ROOT)))
        .findFirst();
  }
}
