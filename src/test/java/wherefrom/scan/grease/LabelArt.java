package wherefrom.scan.grease;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.SplittableRandom;
import java.util.function.BiPredicate;

/**
 * A printed label at high resolution: the block with the symbol at the left, words and the typed
 * code beside it. The block is {@link #BLOCK} pixels wide whatever is printed round the symbol, so
 * that designs compare at equal label width.
 */
final class LabelArt {
  static final int BLOCK = 480;
  static final int PAPER_WIDTH = 930;
  static final int PAPER_HEIGHT = 496;

  /** Centre of the symbol. */
  static final double CENTRE = PAPER_HEIGHT / 2.0;

  private LabelArt() {}

  /** Ink 0.06, paper 0.9. */
  static Plane draw(
      LabelDesign design,
      int modules,
      BiPredicate<Integer, Integer> dark,
      String words,
      SplittableRandom random) {
    BufferedImage image =
        new BufferedImage(PAPER_WIDTH, PAPER_HEIGHT, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D graphics = image.createGraphics();
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, PAPER_WIDTH, PAPER_HEIGHT);
    graphics.setColor(Color.BLACK);
    double module = BLOCK / (double) design.width();
    double outer = (PAPER_HEIGHT - BLOCK) / 2.0 + design.margin() * module;
    if (design.frame() > 0) {
      double side = BLOCK - 2 * design.margin() * module;
      graphics.fill(new Rectangle2D.Double(outer, outer, side, side));
      graphics.setColor(Color.WHITE);
      double thick = design.frame() * module;
      graphics.fill(
          new Rectangle2D.Double(outer + thick, outer + thick, side - 2 * thick, side - 2 * thick));
      graphics.setColor(Color.BLACK);
    }
    double symbolSide = 21 * module;
    drawSymbol(graphics, CENTRE - symbolSide / 2, symbolSide / modules, modules, dark);
    drawWords(graphics, words, random);
    graphics.dispose();
    Plane plane = Plane.of(image);
    for (int at = 0; at < plane.values.length; at++) {
      plane.values[at] = 0.06f + 0.84f * plane.values[at];
    }
    return plane;
  }

  private static void drawSymbol(
      Graphics2D graphics,
      double origin,
      double module,
      int modules,
      BiPredicate<Integer, Integer> dark) {
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
    for (int row = 0; row < modules; row++) {
      for (int column = 0; column < modules; column++) {
        if (dark.test(row, column)) {
          graphics.fill(
              new Rectangle2D.Double(
                  origin + column * module, origin + row * module, module, module));
        }
      }
    }
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
  }

  private static void drawWords(Graphics2D graphics, String words, SplittableRandom random) {
    int left = PAPER_HEIGHT + 8;
    graphics.setFont(new Font(Font.SANS_SERIF, Font.BOLD, 120));
    graphics.drawString(words.substring(0, Math.min(4, words.length())), left, 140);
    graphics.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 48));
    graphics.drawString("pushrod  up", left, 230);
    graphics.drawString("Job " + (char) ('A' + random.nextInt(26)), left, 300);
    graphics.setFont(new Font(Font.MONOSPACED, Font.BOLD, 64));
    graphics.drawString(words, left, 380);
    graphics.fillRect(left, 455, PAPER_WIDTH - left - 30, 4);
  }
}
