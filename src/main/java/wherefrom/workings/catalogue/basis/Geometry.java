package wherefrom.workings.catalogue.basis;

import wherefrom.workings.maths.DoubleDouble;
import wherefrom.workings.maths.DualNumber;

/** Volumes and areas that several workings share. */
public final class Geometry {
  public static final DualNumber PI = DualNumber.of(DoubleDouble.PI);

  private Geometry() {}

  /** The area of a disc: π·D²/4. */
  public static DualNumber disc(DualNumber diameter) {
    return PI.times(diameter.squared()).times(0.25);
  }

  /** The volume of a cylinder: π·D²·h/4. */
  public static DualNumber cylinder(DualNumber diameter, DualNumber height) {
    return disc(diameter).times(height);
  }
}
