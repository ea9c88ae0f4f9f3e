package wherefrom.workings.catalogue.basis;

import wherefrom.workings.maths.DoubleDouble;
import wherefrom.workings.maths.Dual;

/** Volumes and areas that several workings share. */
public final class Geometry {
  public static final Dual PI = Dual.of(DoubleDouble.PI);

  private Geometry() {}

  /** The area of a disc: π·D²/4. */
  public static Dual disc(Dual diameter) {
    return PI.times(diameter.squared()).times(0.25);
  }

  /** The volume of a cylinder: π·D²·h/4. */
  public static Dual cylinder(Dual diameter, Dual height) {
    return disc(diameter).times(height);
  }
}
