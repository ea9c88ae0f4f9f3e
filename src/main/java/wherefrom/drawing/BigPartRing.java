package wherefrom.drawing;

import java.util.List;
import java.util.Optional;
import wherefrom.engine.Arrangement;
import wherefrom.engine.Bank;
import wherefrom.engine.Layout;
import wherefrom.parts.BigPartKind;
import wherefrom.parts.BigPartName;

/**
 * A ring on the engine round the place of a big part, where the layout tells where that is. No
 * cover and no manifold is drawn: they look otherwise on every engine.
 */
public final class BigPartRing {
  /** How far the ring stands off the valley's edge, the crank and the camshaft, in bore pitches. */
  private static final double ROOM = 0.06;

  private static final double CRANK = 0.46;
  private static final double CAM = 0.14;
  private static final double FRONT = 0.62;

  private final EngineGeometry at;

  private BigPartRing(EngineGeometry at) {
    this.at = at;
  }

  /** The side on which it is seen. */
  public static View sideOf(BigPartKind kind) {
    return switch (kind) {
      case PAN, OIL_PUMP, CRANKSHAFT, FLYWHEEL, REAR_SEAL -> View.BELOW;
      default -> View.ABOVE;
    };
  }

  /** Whether the layout of an engine tells where it is. */
  public static boolean isTold(Layout layout, BigPartName name) {
    return switch (name.kind()) {
      case DISTRIBUTOR, FUEL_PUMP, BRACKET, OIL_PUMP, OWN -> false;
      case INTAKE, CARBURETOR -> layout.arrangement() == Arrangement.V;
      default -> true;
    };
  }

  /** Its ring; empty where the layout does not tell its place. */
  public static List<Shape> of(EngineGeometry at, BigPartName name) {
    return new BigPartRing(at).box(name).map(box -> ring(at, box)).orElse(List.of());
  }

  private static List<Shape> ring(EngineGeometry at, Bounds box) {
    double unit = at.glass().unit();
    double radius = 0.08 * at.pitch();
    return List.of(
        new Shape.Slab(box, radius, Role.HALO, Role.HALO.width() * unit),
        new Shape.Slab(box, radius, Role.RING, Role.RING.width() * unit));
  }

  private Optional<Bounds> box(BigPartName name) {
    if (at.view() != sideOf(name.kind()) || !isTold(at.layout(), name)) {
      return Optional.empty();
    }
    return switch (name.kind()) {
      case EXHAUST -> bank(name, at.outward().outer() - 0.10, at.outward().stub());
      case VALVE_COVER, HEAD -> bank(name, at.outward().inner(), at.outward().outer());
      case ROCKER_SHAFT -> bank(name, at.outward().stud() - 0.14, at.outward().stud() + 0.14);
      case INTAKE, CARBURETOR -> Optional.of(valley());
      case LIFTER_COVER -> bank(name, at.outward().lifter() - 0.14, at.outward().inner() - ROOM);
      case WATER_PUMP, DAMPER, FRONT_COVER, TIMING_SET -> Optional.of(front());
      case CAMSHAFT -> camshaft();
      case PAN, CRANKSHAFT -> Optional.of(along(name.kind() == BigPartKind.PAN));
      case FLYWHEEL, REAR_SEAL -> Optional.of(rear());
      case DISTRIBUTOR, FUEL_PUMP, BRACKET, OIL_PUMP, OWN -> Optional.empty();
    };
  }

  /** A strip along the cylinders of a bank; without a bank of its own along the only one. */
  private Optional<Bounds> bank(BigPartName name, double from, double to) {
    Optional<Bank> bank =
        at.layout().banks().stream()
            .filter(one -> name.bank().isEmpty() || one.name().equals(name.bank()))
            .findFirst();
    return bank.map(one -> strip(one, from, to));
  }

  private Bounds strip(Bank bank, double from, double to) {
    List<Integer> cylinders = bank.cylinders();
    double left = at.boreX(cylinders.get(0)) - AboveCastings.BANK_END * at.pitch();
    double right =
        at.boreX(cylinders.get(cylinders.size() - 1)) + AboveCastings.BANK_END * at.pitch();
    double one = at.row(cylinders.get(0)).at(from, 0).y();
    double other = at.row(cylinders.get(0)).at(to, 0).y();
    return Bounds.between(left, Math.min(one, other), right, Math.max(one, other));
  }

  /** Between the banks of a V; elsewhere the layout does not tell the intake's side. */
  private Bounds valley() {
    double half = (at.outward().inner() - ROOM) * at.pitch();
    return Bounds.between(at.front(), at.axis() - half, at.rear(), at.axis() + half);
  }

  /** Under the lifters of one row, on the crank's line of two. */
  private Optional<Bounds> camshaft() {
    if (!at.isTwo()) {
      double lifter = at.outward().lifter();
      return Optional.of(strip(at.layout().banks().get(0), lifter - CAM, lifter + CAM));
    }
    double half = CAM * at.pitch();
    return Optional.of(Bounds.between(at.front(), at.axis() - half, at.rear(), at.axis() + half));
  }

  private Bounds front() {
    double half = FRONT * at.pitch();
    return Bounds.between(at.left(), at.axis() - half, at.front(), at.axis() + half);
  }

  private Bounds rear() {
    double half = FRONT * at.pitch();
    return Bounds.between(at.rear(), at.axis() - half, at.left() + at.width(), at.axis() + half);
  }

  private Bounds along(boolean whole) {
    double half = (whole ? EngineGeometry.RAIL_EDGE : CRANK) * at.pitch();
    return Bounds.between(at.front(), at.axis() - half, at.rear(), at.axis() + half);
  }
}
