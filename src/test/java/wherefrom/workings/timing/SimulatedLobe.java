package wherefrom.workings.timing;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;

/**
 * A lobe of known timing: each flank a profile from the nose (0) to the seat (1), as wide as that
 * flank. The profiles are those of cam design books, from memory: harmonic, cycloidal, polynomials
 * 2-p-q-r-s, and constant acceleration that jumps, as of the arcs of an old cam.
 */
record SimulatedLobe(
    double nose, double full, double before, double after, Profile rising, Profile falling) {

  /** The lift over the full lift, and how sharply the nose is rounded. */
  record Profile(DoubleUnaryOperator lift, double sharpness) {
    static Profile of(DoubleUnaryOperator lift) {
      double near = 1e-3;
      return new Profile(lift, (1 - lift.applyAsDouble(near)) / (near * near));
    }
  }

  private static final List<Profile> PROFILES =
      List.of(
          Profile.of(x -> Math.pow(Math.cos(Math.PI / 2 * x), 2)),
          Profile.of(x -> 1 - x + Math.sin(2 * Math.PI * x) / (2 * Math.PI)),
          Profile.of(polynomial(2, 6, 8, 10, 12)),
          Profile.of(polynomial(2, 4, 6, 8, 10)),
          Profile.of(polynomial(2, 8, 14, 20, 26)),
          Profile.of(arcs(0.2)),
          Profile.of(arcs(0.3)),
          Profile.of(arcs(0.4)));

  /** 1 + Σ c·x^e with no lift, speed, acceleration and jerk at the seat: cₑ = −Π o/(o − e). */
  private static DoubleUnaryOperator polynomial(int... exponents) {
    return x -> {
      double sum = 1;
      for (int one : exponents) {
        double factor = -1;
        for (int other : exponents) {
          factor *= other == one ? 1 : (double) other / (other - one);
        }
        sum += factor * Math.pow(x, one);
      }
      return sum;
    };
  }

  /** Up with one constant acceleration for a part of the way, then down with another. */
  private static DoubleUnaryOperator arcs(double part) {
    return x -> 1 - x < part ? (1 - x) * (1 - x) / part : 1 - x * x / (1 - part);
  }

  /**
   * Unequal flanks differ in width by up to a quarter, or in profile with the acceleration the same
   * on both sides of the nose.
   */
  static SimulatedLobe draw(boolean equal, SplittableRandom random) {
    double nose = 100 + 16 * random.nextDouble();
    double full = 0.25 + 0.11 * random.nextDouble();
    double width = 115 + 35 * random.nextDouble();
    Profile one = PROFILES.get(random.nextInt(PROFILES.size()));
    if (equal) {
      return new SimulatedLobe(nose, full, width, width, one, one);
    }
    Profile other = random.nextBoolean() ? one : PROFILES.get(random.nextInt(PROFILES.size()));
    double ratio = Math.sqrt(other.sharpness() / one.sharpness());
    if (other.equals(one) || ratio < 0.75 || ratio > 1.33) {
      double after = width * (0.8 + 0.45 * random.nextDouble());
      return new SimulatedLobe(nose, full, width, after, one, one);
    }
    return new SimulatedLobe(nose, full, width, width * ratio, one, other);
  }

  double lift(double degrees) {
    double off = degrees - nose;
    double part = off < 0 ? -off / before : off / after;
    return part >= 1 ? 0 : full * (off < 0 ? rising : falling).lift().applyAsDouble(part);
  }

  /** Where the flank begins or ends: −1 before the nose, 1 after it. */
  double seat(int side) {
    return nose + side * (side < 0 ? before : after);
  }

  double opening(double lift) {
    return crossing(seat(-1), lift);
  }

  double closing(double lift) {
    return crossing(seat(1), lift);
  }

  private double crossing(double seat, double lift) {
    double low = seat;
    double high = nose;
    for (int halving = 0; halving < 60; halving++) {
      double middle = (low + high) / 2;
      if (lift(middle) < lift) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }
}
