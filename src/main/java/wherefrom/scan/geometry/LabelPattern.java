package wherefrom.scan.geometry;

import java.util.ArrayList;
import java.util.List;
import wherefrom.parts.LabelFrame;
import wherefrom.parts.SymbolLayout;

/**
 * What is alike on every label, as points with an expected value from -1 dark to 1 light: finder,
 * timing and format patterns, quiet zone, frame and margin. The points fall into four zones, one
 * for each quarter of the label, because light and dirt differ from one side to the other.
 */
public final class LabelPattern {
  static final int ZONES = 4;
  private static final double BLUR = 0.9;

  final int size;

  /** Where each zone's points of the symbol begin, then those round it, then the end. */
  final int[] parts = new int[2 * ZONES + 1];

  final double[] u;
  final double[] v;

  /** Sharp and blurred values; each zone has mean 0 and mean square 1. */
  final float[] sharp;

  final float[] soft;

  final TurnedPlaces turned;

  private final int quiet;
  private final int frame;
  private final int margin;

  public LabelPattern(int quiet, int frame, int margin) {
    this.quiet = quiet;
    this.frame = frame;
    this.margin = margin;
    List<double[]> symbol = new ArrayList<>();
    symbolPoints(symbol);
    List<double[]> label = new ArrayList<>();
    labelPoints(label);
    List<double[]> points = new ArrayList<>();
    for (int part = 0; part < 2 * ZONES; part++) {
      parts[part] = points.size();
      int wanted = part % ZONES;
      (part < ZONES ? symbol : label)
          .stream().filter(point -> zoneOf(point) == wanted).forEach(points::add);
    }
    size = points.size();
    parts[2 * ZONES] = size;
    u = new double[size];
    v = new double[size];
    sharp = new float[size];
    soft = new float[size];
    for (int at = 0; at < size; at++) {
      u[at] = points.get(at)[0];
      v[at] = points.get(at)[1];
      sharp[at] = (float) ideal(u[at], v[at]);
      soft[at] = (float) blurred(u[at], v[at]);
    }
    turned = new TurnedPlaces(u, v);
    normalise(sharp);
    normalise(soft);
  }

  public static LabelPattern printed() {
    return new LabelPattern(LabelFrame.QUIET_ZONE, LabelFrame.FRAME, LabelFrame.MARGIN);
  }

  private static int zoneOf(double[] point) {
    return (point[0] < 0 ? 0 : 1) + (point[1] < 0 ? 0 : 2);
  }

  /** Points of a zone, those of the symbol and those round it. */
  int count(int zone) {
    return parts[zone + 1] - parts[zone] + parts[zone + ZONES + 1] - parts[zone + ZONES];
  }

  /** From the centre to the frame's outer edge, in modules. */
  public double frameHalf() {
    return Pose.HALF + quiet + frame;
  }

  /** From the centre to the frame's inner edge: half the side of the white window. */
  public double windowHalf() {
    return Pose.HALF + quiet;
  }

  /** Thickness of the frame in modules. */
  public double frameWidth() {
    return frame;
  }

  public boolean hasFrame() {
    return frame > 0;
  }

  private static void symbolPoints(List<double[]> points) {
    for (int row = 0; row < SymbolLayout.SIZE; row++) {
      for (int column = 0; column < SymbolLayout.SIZE; column++) {
        if (SymbolLayout.isFixed(row, column)) {
          points.add(new double[] {column - 10, row - 10});
        }
      }
    }
  }

  private void labelPoints(List<double[]> points) {
    ring(points, Pose.HALF + Math.min(1, quiet / 2.0), 2);
    if (quiet > 2) {
      ring(points, Pose.HALF + quiet - 0.8, 2.5);
    }
    if (frame > 0) {
      ring(points, Pose.HALF + quiet + 0.5, 2);
      ring(points, Pose.HALF + quiet + frame - 0.5, 2);
    }
    if (margin > 0) {
      ring(points, Pose.HALF + quiet + frame + margin / 2.0, 2);
    }
  }

  private static void ring(List<double[]> points, double half, double spacing) {
    int count = (int) Math.round(2 * half / spacing);
    double step = 2 * half / count;
    for (int at = 0; at < count; at++) {
      double along = -half + at * step;
      points.add(new double[] {along, -half});
      points.add(new double[] {half, along});
      points.add(new double[] {-along, half});
      points.add(new double[] {-half, -along});
    }
  }

  /** Expected value at a place; 0 in the data region, where tags differ. */
  double ideal(double pu, double pv) {
    double reach = Math.max(Math.abs(pu), Math.abs(pv));
    if (reach >= Pose.HALF) {
      double beyond = reach - Pose.HALF;
      return beyond >= quiet && beyond < quiet + frame ? -1 : 1;
    }
    int row = (int) Math.floor(pv + Pose.HALF);
    int column = (int) Math.floor(pu + Pose.HALF);
    if (!SymbolLayout.isFixed(row, column)) {
      return 0;
    }
    return SymbolLayout.isFixedDark(row, column) ? -1 : 1;
  }

  private double blurred(double pu, double pv) {
    double sum = 0;
    double weights = 0;
    for (double dv = -2.25; dv <= 2.25; dv += 0.25) {
      for (double du = -2.25; du <= 2.25; du += 0.25) {
        double weight = Math.exp(-(du * du + dv * dv) / (2 * BLUR * BLUR));
        sum += weight * ideal(pu + du, pv + dv);
        weights += weight;
      }
    }
    return sum / weights;
  }

  private void normalise(float[] values) {
    for (int zone = 0; zone < ZONES; zone++) {
      double sum = 0;
      double squares = 0;
      int count = 0;
      for (int part = zone; part < 2 * ZONES; part += ZONES) {
        for (int at = parts[part]; at < parts[part + 1]; at++) {
          sum += values[at];
          squares += values[at] * values[at];
          count++;
        }
      }
      double mean = sum / count;
      double deviation = Math.sqrt(squares / count - mean * mean);
      for (int part = zone; part < 2 * ZONES; part += ZONES) {
        for (int at = parts[part]; at < parts[part + 1]; at++) {
          values[at] = (float) ((values[at] - mean) / deviation);
        }
      }
    }
  }
}
