package wherefrom.job.money;

import java.util.Optional;
import wherefrom.job.entry.GoodsWay;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Measured;
import wherefrom.quantity.Unit;

/**
 * What a thing that came is measured with, where none of the job's own tools is. A caliper is too
 * coarse for the wall of a shell, and its flat jaws do not reach into the curve (from memory).
 */
public enum UsualTool {
  CALIPER("A caliper", "0.001", "0.03"),
  BALL_MICROMETER("A ball-anvil micrometer", "0.0002", "0.005");

  private final String words;
  private final String inch;
  private final String metric;

  /** The most that it is off either way (from memory). */
  UsualTool(String words, String inch, String metric) {
    this.words = words;
    this.inch = inch;
    this.metric = metric;
  }

  public static UsualTool of(GoodsWay way) {
    return way == GoodsWay.WALL ? BALL_MICROMETER : CALIPER;
  }

  public String words() {
    return words;
  }

  /** {@code off by 0.001 in or 0.03 mm at most}. */
  public String offWords() {
    return "off by %s or %s at most".formatted(inch().text(), metric().text());
  }

  /** The standard uncertainty of a reading in inches or millimeters. */
  Optional<Amount> findOff(Amount reading) {
    Amount most = reading.unit() == Unit.INCH ? inch() : metric();
    return Measured.ofLimits(reading, most).standardUncertainty();
  }

  private Amount inch() {
    return Amount.of(inch, Unit.INCH);
  }

  private Amount metric() {
    return Amount.of(metric, Unit.MILLIMETRE);
  }
}
