package wherefrom.pdf;

import java.util.Optional;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;
import wherefrom.drawing.DrawnAs;
import wherefrom.drawing.Role;

/** With what a shape is filled and lined on paper. */
record PrintInk(Optional<PDColor> filled, Optional<PDColor> lined) {
  private static final PDColor BLACK = color(0x000000);
  private static final PDColor DARK = color(0x333B3D);
  private static final PDColor GREY = color(0x7C8789);
  private static final PDColor WHITE = color(0xFFFFFF);
  private static final PDColor CAST = color(0xEDF0EE);
  private static final PDColor DEEP = color(0xDCE2DF);
  private static final PDColor FITTED = color(0xCDE6F6);
  private static final PDColor FITTED_HOLLOW = color(0xF2F9FD);
  private static final PDColor FIT = color(0xBFE0F5);
  private static final PDColor STOP = color(0x8B0000);

  private static PDColor color(int rgb) {
    float[] parts = {(rgb >> 16) / 255f, ((rgb >> 8) & 0xFF) / 255f, (rgb & 0xFF) / 255f};
    return new PDColor(parts, PDDeviceRGB.INSTANCE);
  }

  boolean hasFill() {
    return filled.isPresent();
  }

  boolean hasLine() {
    return lined.isPresent();
  }

  PDColor fill() {
    return filled.orElse(BLACK);
  }

  PDColor line() {
    return lined.orElse(BLACK);
  }

  /** The ink of a shape; of a part's in a look. Nothing is "here" on paper. */
  static PrintInk of(Role role, DrawnAs look) {
    return role.isOfPart() ? part(role, look) : other(role);
  }

  private static PrintInk part(Role role, DrawnAs look) {
    if (role == Role.BAND) {
      return filled(BLACK);
    }
    return switch (look) {
      case OUT -> lined(DARK);
      case FAINT -> lined(GREY);
      case FITTED, HERE -> fitted(role);
      case IN, ABSENT -> role == Role.LINE ? lined(BLACK) : both(WHITE, BLACK);
    };
  }

  private static PrintInk fitted(Role role) {
    return switch (role) {
      case LINE -> lined(BLACK);
      case FASTENER -> both(BLACK, BLACK);
      case HOLLOW -> both(FITTED_HOLLOW, BLACK);
      default -> both(FITTED, BLACK);
    };
  }

  private static PrintInk other(Role role) {
    return switch (role) {
      case CAST -> both(CAST, BLACK);
      case DEEP -> both(DEEP, BLACK);
      case METAL, PLATE, DASHED_PLATE, PAPER -> both(WHITE, BLACK);
      case STAND -> both(CAST, GREY);
      case BACK -> filled(CAST);
      case EDGE, AXIS, RULE -> lined(GREY);
      case OPENING, WHITE, LETTER_ON_INK -> filled(WHITE);
      case NAME -> filled(DARK);
      case FIT -> both(FIT, BLACK);
      case STOP -> both(STOP, WHITE);
      case HALO, WRONG_GAP -> lined(WHITE);
      case INK, ON_PAPER, NUMBER, LETTER, LETTER_ON_PAPER -> filled(BLACK);
      default -> lined(BLACK);
    };
  }

  private static PrintInk both(PDColor fill, PDColor line) {
    return new PrintInk(Optional.of(fill), Optional.of(line));
  }

  private static PrintInk filled(PDColor fill) {
    return new PrintInk(Optional.of(fill), Optional.empty());
  }

  private static PrintInk lined(PDColor line) {
    return new PrintInk(Optional.empty(), Optional.of(line));
  }
}
