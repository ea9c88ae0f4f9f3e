package wherefrom.scan.grease;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BiPredicate;
import wherefrom.engine.ReadyLayouts;
import wherefrom.job.print.TagFace;
import wherefrom.job.print.TagFaces;
import wherefrom.parts.LabelFrame;
import wherefrom.parts.Orientation;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Places;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagSymbol;
import wherefrom.print.PrintedLabels;

/**
 * A printed label from near by. Labels of ours are drawn from the sheet PDF and lie turned by half
 * a turn, which brings the symbol to the left and the words, upside down, to the right.
 *
 * @param plane what it reflects
 * @param half from the symbol's centre to its edge, in blocks
 */
record LabelArt(Plane plane, double half) {
  /** Width of the printed block of symbol, quiet zone, frame and margin, in pixels. */
  static final int BLOCK = 480;

  private static final int KEPT = 200;
  private static final double INK = 0.06;
  private static final double PAPER = 0.9;
  private static final double MODULE = BLOCK / (double) LabelFrame.WIDTH;
  private static final Map<String, BufferedImage> DRAWN =
      new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, BufferedImage> eldest) {
          return size() > KEPT;
        }
      };

  private static final PrintedLabels.Print SAMPLE = PrintedLabels.of(face(someTag()), BLOCK);
  static final int PAPER_WIDTH = SAMPLE.image().getWidth();
  static final int PAPER_HEIGHT = SAMPLE.image().getHeight();

  /** Centre of the symbol. */
  static final double CENTRE_X = PAPER_WIDTH - SAMPLE.symbolX();

  static final double CENTRE_Y = PAPER_HEIGHT - SAMPLE.symbolY();

  /** The label of one of our tags, from the sheet PDF. */
  static LabelArt of(TagCode code) {
    return new LabelArt(reflectance(drawn(code)), TagSymbol.SIZE / 2.0 / LabelFrame.WIDTH);
  }

  /** The label of one of our tags with something else than its symbol inside the frame. */
  static LabelArt framed(TagCode code, int modules, BiPredicate<Integer, Integer> dark) {
    BufferedImage image = copy(drawn(code));
    square(image, TagSymbol.SIZE * MODULE, modules, dark);
    return new LabelArt(reflectance(image), TagSymbol.SIZE / 2.0 / LabelFrame.WIDTH);
  }

  /** A code on plain paper: no label of ours. */
  static LabelArt plain(int modules, BiPredicate<Integer, Integer> dark) {
    BufferedImage image =
        new BufferedImage(PAPER_WIDTH, PAPER_HEIGHT, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D graphics = image.createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, PAPER_WIDTH, PAPER_HEIGHT);
    graphics.dispose();
    double side = BLOCK * modules / (modules + 8.0);
    square(image, side, modules, dark);
    return new LabelArt(reflectance(image), side / 2 / BLOCK);
  }

  private static synchronized BufferedImage drawn(TagCode code) {
    return DRAWN.computeIfAbsent(
        code.digits(), made -> upsideDown(PrintedLabels.of(face(code), BLOCK).image()));
  }

  /** Words of an invented V8 on whatever the code stands for. */
  private static TagFace face(TagCode code) {
    var places = Places.of(ReadyLayouts.find("v8-odd-even").orElseThrow(), PartKind.alwaysOn());
    Place place = places.get(code.item() % places.size());
    return new TagFace(
        code,
        place.figures(),
        place.kind().word(),
        place.spot().words(),
        "Barn find",
        Orientation.NONE,
        1,
        false);
  }

  private static TagCode someTag() {
    return TagFaces.actions().get(0).code();
  }

  private static BufferedImage upsideDown(BufferedImage image) {
    BufferedImage turned = new BufferedImage(image.getWidth(), image.getHeight(), image.getType());
    Graphics2D graphics = turned.createGraphics();
    graphics.drawImage(
        image,
        AffineTransform.getQuadrantRotateInstance(
            2, image.getWidth() / 2.0, image.getHeight() / 2.0),
        null);
    graphics.dispose();
    return turned;
  }

  private static BufferedImage copy(BufferedImage image) {
    BufferedImage copy = new BufferedImage(image.getWidth(), image.getHeight(), image.getType());
    copy.setData(image.getRaster());
    return copy;
  }

  private static void square(
      BufferedImage image, double side, int modules, BiPredicate<Integer, Integer> dark) {
    Graphics2D graphics = image.createGraphics();
    double left = CENTRE_X - side / 2;
    double top = CENTRE_Y - side / 2;
    double module = side / modules;
    graphics.setColor(Color.WHITE);
    graphics.fill(new Rectangle2D.Double(left - 1, top - 1, side + 2, side + 2));
    graphics.setColor(Color.BLACK);
    for (int row = 0; row < modules; row++) {
      for (int column = 0; column < modules; column++) {
        if (dark.test(row, column)) {
          graphics.fill(
              new Rectangle2D.Double(
                  left + (modules - 1 - column) * module,
                  top + (modules - 1 - row) * module,
                  module,
                  module));
        }
      }
    }
    graphics.dispose();
  }

  private static Plane reflectance(BufferedImage image) {
    Plane plane = Plane.of(image);
    for (int at = 0; at < plane.values.length; at++) {
      plane.values[at] = (float) (INK + (PAPER - INK) * plane.values[at]);
    }
    return plane;
  }
}
