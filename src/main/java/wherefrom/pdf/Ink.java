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

  private final int rgb;

  Ink(int rgb) {
    this.rgb = rgb;
  }

  PDColor color() {
    float[] parts = {(rgb >> 16) / 255f, ((rgb >> 8) & 0xFF) / 255f, (rgb & 0xFF) / 255f};
    return new PDColor(parts, PDDeviceRGB.INSTANCE);
  }
}
