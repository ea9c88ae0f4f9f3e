package wherefrom.workings.chart;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * One axis with figures at round steps.
 *
 * @param words what is measured, with its unit
 * @param least the value at its beginning
 * @param most the value at its end
 * @param ticks the figures
 * @param named whether the ticks are names, all of which must be read
 */
public record Axis(String words, double least, double most, List<Tick> ticks, boolean named) {
  private static final int WANTED = 5;
  private static final double ROOM = 0.04;

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
    double step = step((high - low) / WANTED);
    List<Tick> ticks = new ArrayList<>();
    for (long n = (long) Math.ceil(low / step - 1e-9); n * step <= high + 1e-9 * step; n++) {
      ticks.add(new Tick(n * step, figure(n, step)));
    }
    return new Axis(words, low, high, ticks, false);
  }

  /** An axis of names at 1, 2, 3 and so on. */
  public static Axis ofNames(String words, List<String> names) {
    List<Tick> ticks = new ArrayList<>();
    for (int at = 0; at < names.size(); at++) {
      ticks.add(new Tick(at + 1.0, names.get(at)));
    }
    return new Axis(words, 0.5, names.size() + 0.5, ticks, true);
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
  double part(double value) {
    return Math.max(0, Math.min(1, (value - least) / (most - least)));
  }
}
