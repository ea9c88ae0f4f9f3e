package wherefrom.workings.chart;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One axis with figures at round steps.
 *
 * @param words what is measured, with its unit
 * @param least the value at its beginning
 * @param most the value at its end
 * @param ticks the figures
 * @param named whether the ticks are names, all of which must be read
 * @param gap what is left out of it; empty where it is whole
 */
public record Axis(
    String words, double least, double most, List<Tick> ticks, boolean named, Optional<Gap> gap) {
  private static final int WANTED = 5;
  private static final double ROOM = 0.04;

  /** How much of a broken axis the few have, and how much is left white between. */
  private static final double FEW = 0.2;

  private static final double BREAK = 0.06;
  private static final int FEW_TICKS = 2;

  /**
   * A stretch without values that is left out, so that what lies far off flattens nothing.
   *
   * @param below whether what lies far off is below the others
   */
  public record Gap(double from, double to, boolean below) {}

  /** A figure beside the axis. */
  public record Tick(double at, String words) {}

  public Axis {
    ticks = List.copyOf(ticks);
  }

  /** An axis that shows all these values with a little room, and round figures. */
  public static Axis covering(String words, double least, double most) {
    double span = most > least ? most - least : Math.max(Math.abs(most), 1) * 0.1;
    double low = least - ROOM * span;
    double high = most + ROOM * span;
    return new Axis(words, low, high, ticks(low, high, WANTED), false, Optional.empty());
  }

  private static List<Tick> ticks(double low, double high, int wanted) {
    double step = step((high - low) / wanted);
    List<Tick> ticks = new ArrayList<>();
    for (long n = (long) Math.ceil(low / step - 1e-9); n * step <= high + 1e-9 * step; n++) {
      ticks.add(new Tick(n * step, figure(n, step)));
    }
    return ticks;
  }

  /**
   * An axis that leaves out a stretch; its words say so.
   *
   * @param gap lies within; no value does
   */
  static Axis broken(String words, double least, double most, Gap gap) {
    double many = gap.below() ? most - gap.to() : gap.from() - least;
    double few = gap.below() ? gap.from() - least : most - gap.to();
    double room = ROOM * many;
    double aside = Math.max(few * ROOM, many / WANTED);
    double low = least - (gap.below() ? aside : room);
    double high = most + (gap.below() ? room : aside);
    Gap inner =
        new Gap(
            gap.from() + (gap.below() ? aside : room),
            gap.to() - (gap.below() ? room : aside),
            gap.below());
    List<Tick> ticks = new ArrayList<>();
    ticks.addAll(ticks(low, inner.from(), gap.below() ? FEW_TICKS : WANTED));
    ticks.addAll(ticks(inner.to(), high, gap.below() ? WANTED : FEW_TICKS));
    return new Axis(words + "; the axis is broken", low, high, ticks, false, Optional.of(inner));
  }

  /** An axis of names at 1, 2, 3 and so on. */
  public static Axis ofNames(String words, List<String> names) {
    List<Tick> ticks = new ArrayList<>();
    for (int at = 0; at < names.size(); at++) {
      ticks.add(new Tick(at + 1.0, names.get(at)));
    }
    return new Axis(words, 0.5, names.size() + 0.5, ticks, true, Optional.empty());
  }

  /** 1, 2 or 5 times a power of ten, at least as large. */
  private static double step(double raw) {
    double power = Math.pow(10, Math.floor(Math.log10(raw)));
    for (double factor : new double[] {1, 2, 5}) {
      if (factor * power >= raw * (1 - 1e-9)) {
        return factor * power;
      }
    }
    return 10 * power;
  }

  private static String figure(long n, double step) {
    int decimals = Math.max(0, (int) -Math.floor(Math.log10(step) + 1e-9));
    return BigDecimal.valueOf(step)
        .multiply(BigDecimal.valueOf(n))
        .setScale(decimals, RoundingMode.HALF_UP)
        .toPlainString();
  }

  /** Where a value lies, 0 at the beginning and 1 at the end; values outside are brought to it. */
  public double part(double value) {
    if (gap.isEmpty()) {
      return within((value - least) / (most - least));
    }
    Gap out = gap.get();
    double first = firstShare(out);
    if (value <= out.from()) {
      return first * within((value - least) / (out.from() - least));
    }
    double second = first + BREAK;
    return value < out.to()
        ? first + BREAK * (value - out.from()) / (out.to() - out.from())
        : second + (1 - second) * within((value - out.to()) / (most - out.to()));
  }

  private static double firstShare(Gap out) {
    return out.below() ? FEW : 1 - FEW - BREAK;
  }

  private static double within(double part) {
    return Math.max(0, Math.min(1, part));
  }
}
