package wherefrom.drawing;

/** Damper and cover at the front, flange and flywheel at the rear. */
final class FrontAndRear {
  private static final int TEETH = 15;

  private final ShapeCollector out;
  private final EngineGeometry at;
  private final double pitch;

  private FrontAndRear(ShapeCollector out, EngineGeometry at) {
    this.out = out;
    this.at = at;
    this.pitch = at.pitch();
  }

  /**
   * Draws them.
   *
   * @param half half the height of the flange, in pitches
   */
  static void draw(ShapeCollector out, EngineGeometry at, double half) {
    FrontAndRear ends = new FrontAndRear(out, at);
    ends.damper();
    ends.cover();
    ends.flange(half);
    ends.flywheel(Math.min(half + 0.03, 0.86));
  }

  private void upright(double x, double half, double wide, double round) {
    out.slab(
        x, at.axis() - half * pitch, wide * pitch, 2 * half * pitch, round * pitch, Role.METAL);
  }

  private void damper() {
    upright(at.left(), 0.34, 0.05, 0.01);
    upright(at.left() + 0.045 * pitch, 0.40, 0.05, 0.01);
    upright(at.left() + 0.09 * pitch, 0.40, 0.05, 0.01);
    upright(at.left() + 0.135 * pitch, 0.10, 0.03, 0);
  }

  private void cover() {
    double back = at.front();
    double bend = back - 0.14 * pitch;
    double face = back - EngineGeometry.COVER * pitch + 0.01 * pitch;
    double axis = at.axis();
    out.outline(
        Pen.at(back, axis - 0.52 * pitch)
            .toX(bend)
            .quad(face, axis - 0.50 * pitch, face, axis - 0.36 * pitch)
            .toY(axis + 0.36 * pitch)
            .quad(face, axis + 0.50 * pitch, bend, axis + 0.52 * pitch)
            .toX(back)
            .close(),
        Role.CAST);
    for (double bolt : new double[] {-0.40, -0.16, 0.16, 0.40}) {
      out.disc(back - 0.045 * pitch, axis + bolt * pitch, 0.022 * pitch, Role.METAL);
    }
  }

  private void flange(double half) {
    double wide = EngineGeometry.FLANGE * pitch;
    double x = at.rear();
    double top = at.axis() - half * pitch;
    double bottom = at.axis() + half * pitch;
    out.outline(Pen.at(x, top).toX(x + wide).toY(bottom).toX(x).close(), Role.CAST);
  }

  private void flywheel(double half) {
    double x = at.rear() + EngineGeometry.FLANGE * pitch;
    double wide = EngineGeometry.WHEEL - 0.03;
    upright(x + 0.02 * pitch, half, wide, 0.01);
    double root = x + 0.085 * pitch;
    double tip = x + (EngineGeometry.WHEEL - 0.01) * pitch;
    Pen teeth = Pen.at(root, at.axis() - TEETH * half * pitch / 16).toX(tip);
    for (int tooth = 1 - TEETH; tooth <= TEETH; tooth++) {
      teeth.move(root, at.axis() + tooth * half * pitch / 16).toX(tip);
    }
    out.outline(teeth, Role.TEETH);
  }
}
