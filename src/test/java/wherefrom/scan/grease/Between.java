package wherefrom.scan.grease;

import java.util.SplittableRandom;
import wherefrom.job.reader.Corner;

/**
 * What comes between a label and its picture: film, a finger, a shutter that takes row after row.
 * Common practice, no source; severity runs from 0 to 1.
 */
final class Between {
  /** Nothing moved. */
  static final Shear NO_SHEAR = new Shear(0, 0, 1, 0, 0);

  private Between() {}

  /** A finger from one side over a part of the block, its edge a little out of focus. */
  static void finger(
      Plane frame, double[] centre, double block, double severity, SplittableRandom hand) {
    double turn = 2 * Math.PI * hand.nextDouble();
    double radius = block * (0.11 + 0.05 * severity);
    double tip = block * (0.52 - 0.36 * severity * (0.6 + 0.4 * hand.nextDouble()));
    double aside = block * 0.5 * (hand.nextDouble() - 0.5);
    double skin = 0.3 + 0.3 * hand.nextDouble();
    double soft = block * 0.012;
    for (int y = 0; y < frame.height; y++) {
      for (int x = 0; x < frame.width; x++) {
        double dx = x - centre[0];
        double dy = y - centre[1];
        double along = dx * Math.cos(turn) + dy * Math.sin(turn) - tip - radius;
        double across = -dx * Math.sin(turn) + dy * Math.cos(turn) - aside;
        double from = Math.hypot(Math.min(0, along), across);
        double share = 1 / (1 + Math.exp((from - radius) / soft));
        double round = skin * (1 - 0.35 * Math.min(1, from / radius));
        int at = y * frame.width + x;
        frame.values[at] = (float) (frame.values[at] * (1 - share) + round * share);
      }
    }
  }

  /** Milky film whose folds shift what is behind them and shine. */
  static void bag(
      Plane frame, double[] centre, double block, double severity, SplittableRandom hand) {
    SmoothNoise film = new SmoothNoise(hand);
    Plane before = frame.copy();
    double haze = 0.1 + 0.4 * severity;
    double shift = block * 0.02 * severity;
    double scale = block * 0.45;
    double ray = 3 + 5 * hand.nextDouble();
    for (int y = 0; y < frame.height; y++) {
      for (int x = 0; x < frame.width; x++) {
        double u = (x - centre[0]) / scale + 20;
        double v = (y - centre[1]) / scale + 20;
        double lie = film.at(u, v);
        double bent = shift * (2 * film.at(v + 9, u + 4) - 1);
        double fold = Math.pow(Math.abs(Math.sin(ray * lie * Math.PI)), 40);
        float behind = before.sample(x + bent, y - bent);
        double veiled = behind * (1 - haze) + haze * (0.45 + 0.2 * lie);
        frame.values[y * frame.width + x] = (float) (veiled + severity * 0.75 * fold);
      }
    }
  }

  /** How far the hand moved and shook while the rows were read, drawn at random. */
  static Shear shear(double block, int height, double severity, SplittableRandom hand) {
    double lean = 0.3 * severity * (hand.nextBoolean() ? 1 : -1);
    double swing = block * 0.022 * severity;
    double wave = block * (0.6 + 0.6 * hand.nextDouble());
    return new Shear(lean, swing, wave, 2 * Math.PI * hand.nextDouble(), height / 2.0);
  }

  /**
   * Rows moved aside.
   *
   * @param lean pixels aside for each row
   * @param swing how far they sway, in pixels
   * @param wave rows from one sway to the next
   */
  record Shear(double lean, double swing, double wave, double from, double middle) {
    private double aside(double y) {
      return lean * (y - middle) + swing * Math.sin(2 * Math.PI * y / wave + from);
    }

    Corner of(Corner corner) {
      return new Corner(corner.x() + aside(corner.y()), corner.y());
    }

    /** The same frame where nothing moved. */
    Plane of(Plane frame) {
      if (lean == 0 && swing == 0) {
        return frame;
      }
      Plane moved = new Plane(frame.width, frame.height);
      for (int y = 0; y < frame.height; y++) {
        double aside = aside(y);
        for (int x = 0; x < frame.width; x++) {
          moved.values[y * frame.width + x] = frame.sample(x - aside, y);
        }
      }
      return moved;
    }
  }
}
