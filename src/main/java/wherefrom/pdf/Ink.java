package wherefrom.pdf;

import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;

/** What words and lines of a page are printed with; each is told by its lightness alone. */
public enum Ink {
  BLACK(0x000000),
  /** Second words. */
  DARK(0x333B3D),
  /** Thin lines. */
  GREY(0x7C8789),
  /** The stretch within a limit. */
  BAND(0xDCE2DF),
  WHITE(0xFFFFFF);

  private final PDColor color;

  Ink(int rgb) {
    float[] parts = {(rgb >> 16) / 255f, ((rgb >> 8) & 0xFF) / 255f, (rgb & 0xFF) / 255f};
    this.color = new PDColor(parts, PDDeviceRGB.INSTANCE);
  }

  PDColor color() {
    return color;
  }
}
