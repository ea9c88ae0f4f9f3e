package wherefrom.drawing;

import java.util.List;
import wherefrom.engine.Layout;
import wherefrom.engine.LifterType;
import wherefrom.engine.RockerMount;
import wherefrom.parts.PartKind;

/** The outline of a kind of part as it is on an engine, in a square, for keys and lists. */
public final class KindOutline {
  private static final int COILS = 4;

  private final ShapeCollector out;
  private final Bounds square;
  private final Layout layout;
  private final Glass glass;

  private KindOutline(Layout layout, Bounds square, Glass glass) {
    this.layout = layout;
    this.square = square;
    this.glass = glass;
    this.out = new ShapeCollector(glass);
  }

  /** Its shapes; caps and shells bear an R or an M, as those of rods and mains are alike. */
  public static List<Shape> of(PartKind kind, Layout layout, Bounds square, Glass glass) {
    KindOutline outline = new KindOutline(layout, square, glass);
    outline.draw(kind);
    return outline.out.shapes();
  }

  /** A pushrod that stands as high as its box and is as thick as that is wide. */
  public static List<Shape> pushrod(Bounds box, Glass glass) {
    ShapeCollector out = new ShapeCollector(glass);
    new TopEndShapes(out, glass.unit()).pushrod(box);
    return out.shapes();
  }

  private Bounds box(double x, double y, double width, double height) {
    double side = square.width();
    return new Bounds(square.x() + x * side, square.y() + y * side, width * side, height * side);
  }

  private void draw(PartKind kind) {
    switch (kind) {
      case ROCKER, PIVOT, PUSHROD, LIFTER -> topEnd(kind);
      case KEEPERS, RETAINER, SPRING, VALVE -> valve(kind);
      default -> bottomEnd(kind);
    }
  }

  private void topEnd(PartKind kind) {
    boolean shaft = layout.rockers() == RockerMount.SHAFT;
    TopEndShapes shapes = new TopEndShapes(out, glass.unit());
    switch (kind) {
      case ROCKER -> new RockerShapes(out, box(0, 0.18, 1, 0.72)).draw(shaft);
      case PIVOT -> {
        if (shaft) {
          shapes.bushing(box(0.16, 0.16, 0.68, 0.68));
        } else {
          shapes.pivot(box(0.16, 0.2, 0.68, 0.7));
        }
      }
      case PUSHROD -> shapes.pushrod(box(0.42, 0, 0.16, 1));
      default -> {
        boolean roller = layout.lifters() == LifterType.ROLLER;
        shapes.lifter(box(0.25, 0.04, 0.5, 0.92), roller);
      }
    }
  }

  private void valve(PartKind kind) {
    ValveShapes shapes = new ValveShapes(out, glass.unit());
    switch (kind) {
      case KEEPERS -> shapes.keepers(box(0.08, 0.12, 0.84, 0.76));
      case RETAINER -> shapes.retainer(box(0, 0.16, 1, 0.66));
      case SPRING -> shapes.spring(box(0.22, 0.03, 0.56, 0.94), COILS);
      default -> shapes.valve(box(0.18, 0, 0.64, 1));
    }
  }

  private void bottomEnd(PartKind kind) {
    BottomEndShapes shapes = new BottomEndShapes(out);
    double least = glass.px(3);
    switch (kind) {
      case ROD_CAP -> shapes.rodCap(box(0.02, 0.34, 0.96, 0.60));
      case ROD_SHELL -> shapes.shell(box(0.06, 0.22, 0.88, 0.56), true, least);
      case ROD -> shapes.rod(box(0.12, 0, 0.76, 1));
      case PISTON -> shapes.piston(box(0.1, 0.1, 0.8, 0.8));
      case MAIN_CAP -> shapes.mainCap(box(0, 0.30, 1, 0.62));
      case MAIN_SHELL -> shapes.shell(box(0, 0.18, 1, 0.64), true, least);
      default -> shapes.camBearing(box(0.06, 0.06, 0.9, 0.88));
    }
    letter(kind);
  }

  private void letter(PartKind kind) {
    double size = Math.max(glass.letter(), 0.5 * square.width());
    double down =
        switch (kind) {
          case ROD_CAP -> 0.34 + 0.96 * BottomEndShapes.BORE - 0.19;
          case ROD_SHELL -> 0.78 - 0.40 * 0.56;
          case MAIN_CAP -> 0.30 + 0.33 - 0.20;
          case MAIN_SHELL -> 0.82 - 0.40 * 0.64;
          default -> 0;
        };
    if (down > 0) {
      boolean ofRod = kind == PartKind.ROD_CAP || kind == PartKind.ROD_SHELL;
      double y = square.y() + down * square.width();
      out.words(
          square.middleX(), y, ofRod ? "R" : "M", Math.min(size, glass.letter()), Role.NUMBER);
    }
  }
}
