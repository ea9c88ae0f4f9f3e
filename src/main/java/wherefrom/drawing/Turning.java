package wherefrom.drawing;

import java.util.ArrayList;
import java.util.List;

/** Shapes turned: end for end, back to front as in a mirror, or lying as a lower half does. */
final class Turning {
  private final Bounds box;
  private final boolean sideways;
  private final boolean over;

  private Turning(Bounds box, boolean sideways, boolean over) {
    this.box = box;
    this.sideways = sideways;
    this.over = over;
  }

  /**
   * The shapes, turned round the middle of a box.
   *
   * @param sideways whether left becomes right
   * @param over whether up becomes down
   */
  static List<Shape> of(List<Shape> shapes, Bounds box, boolean sideways, boolean over) {
    Turning turning = new Turning(box, sideways, over);
    return shapes.stream().map(turning::turned).toList();
  }

  private double x(double at) {
    return sideways ? 2 * box.middleX() - at : at;
  }

  private double y(double at) {
    return over ? 2 * box.middleY() - at : at;
  }

  private Shape turned(Shape shape) {
    Turner turner = new Turner();
    shape.draw(turner);
    return turner.made;
  }

  /** The pieces of an outline, turned one by one. */
  private final class StepTurner implements PathStep.Pen<RuntimeException> {
    private final List<PathStep> made = new ArrayList<>();

    @Override
    public void move(PathStep.Move move) {
      made.add(new PathStep.Move(x(move.x()), y(move.y())));
    }

    @Override
    public void line(PathStep.Line line) {
      made.add(new PathStep.Line(x(line.x()), y(line.y())));
    }

    @Override
    public void curve(PathStep.Curve curve) {
      made.add(
          new PathStep.Curve(
              x(curve.x1()),
              y(curve.y1()),
              x(curve.x2()),
              y(curve.y2()),
              x(curve.x()),
              y(curve.y())));
    }

    @Override
    public void close(PathStep.Close close) {
      made.add(close);
    }
  }

  /** Words keep their way up: they only stand where they belong then. */
  private final class Turner implements Shape.Pen<RuntimeException> {
    private Shape made = new Shape.Disc(0, 0, 0, Role.LINE, 0);

    @Override
    public void outline(Shape.Outline outline) {
      StepTurner steps = new StepTurner();
      outline.steps().forEach(step -> step.draw(steps));
      made = new Shape.Outline(steps.made, outline.role(), outline.width());
    }

    @Override
    public void disc(Shape.Disc disc) {
      made = new Shape.Disc(x(disc.x()), y(disc.y()), disc.radius(), disc.role(), disc.width());
    }

    @Override
    public void slab(Shape.Slab slab) {
      Bounds was = slab.bounds();
      Bounds now =
          Bounds.between(
              Math.min(x(was.x()), x(was.right())),
              Math.min(y(was.y()), y(was.bottom())),
              Math.max(x(was.x()), x(was.right())),
              Math.max(y(was.y()), y(was.bottom())));
      made = new Shape.Slab(now, slab.radius(), slab.role(), slab.width());
    }

    @Override
    public void words(Shape.Words words) {
      made =
          new Shape.Words(
              x(words.x()),
              y(words.y()),
              words.text(),
              words.size(),
              words.bold(),
              words.side(),
              words.role());
    }
  }
}
