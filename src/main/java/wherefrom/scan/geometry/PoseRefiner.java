package wherefrom.scan.geometry;

import wherefrom.scan.grey.Level;
import wherefrom.scan.grey.Pyramid;

/**
 * Moves a pose until the pattern lies over the picture best: Levenberg–Marquardt over the four
 * corners and, for a bent tag, the bend and its axis; points that never fit lose their weight.
 */
public final class PoseRefiner {
  private static final double OUTLIER = 1.2;
  private static final int[] NONE = {};
  private final PatternFit fit;
  private final float[] residual;
  private final float[] trial;
  private final float[][] slope;
  private final float[] weight;
  private final float[] weighted;
  private final double[][] normal = new double[Pose.PARAMETERS][Pose.PARAMETERS];
  private final double[] gradient = new double[Pose.PARAMETERS];
  private final double[] steps = new double[Pose.PARAMETERS];
  private final LinearSolver solver = new LinearSolver(Pose.PARAMETERS);

  /** Points that are left out. */
  private int[] hidden = NONE;

  public PoseRefiner(PatternFit fit) {
    this.fit = fit;
    residual = new float[fit.size()];
    trial = new float[fit.size()];
    slope = new float[Pose.PARAMETERS][fit.size()];
    weight = new float[fit.size()];
    weighted = new float[fit.size()];
  }

  /** With the blurred pattern on a coarse level: pulls in a pose that is a module off. */
  public Pose coarse(Pyramid pyramid, Pose pose, int rounds) {
    Level level = pyramid.withAtLeast(0.9, pose.narrowModule());
    return improve(level, pose, fit.expected(true), rounds);
  }

  public Pose sharp(Pyramid pyramid, Pose pose, int rounds) {
    Level level = pyramid.withAtLeast(1.8, pose.narrowModule());
    return improve(level, pose, fit.expected(false), rounds);
  }

  /** The same by those points of a bent tag alone that face the camera where it lies now. */
  public Pose facing(Pyramid pyramid, Pose pose, int rounds) {
    hidden = fit.hidden(pose);
    Pose improved = sharp(pyramid, pose, rounds);
    hidden = NONE;
    return improved;
  }

  /** As {@link #coarse}, by those points alone. */
  public Pose coarseFacing(Pyramid pyramid, Pose pose, int rounds) {
    hidden = fit.hidden(pose);
    Pose improved = coarse(pyramid, pose, rounds);
    hidden = NONE;
    return improved;
  }

  private Pose improve(Level level, Pose pose, PatternValues expected, int rounds) {
    double[] values = pose.values().clone();
    int free = pose.isBent() ? Pose.PARAMETERS : Pose.BEND;
    double module = pose.module();
    double damping = 0.02;
    fit.residuals(level, values, expected, residual);
    double cost = cost(residual);
    for (int round = 0; round < rounds; round++) {
      fit.slopes(level, values, steps(module), free, slope);
      normalEquations(free);
      boolean better = false;
      double gained = 0;
      for (int attempt = 0; attempt < 4 && !better; attempt++) {
        double[] moved = move(values, free, damping);
        fit.residuals(level, moved, expected, trial);
        double now = cost(trial);
        better = now < cost && new Pose(moved).isSound();
        damping *= better ? 0.3 : 6;
        if (better) {
          gained = cost - now;
          cost = now;
          System.arraycopy(moved, 0, values, 0, values.length);
          System.arraycopy(trial, 0, residual, 0, trial.length);
        }
      }
      if (!better || gained < 2e-3 * cost) {
        break;
      }
    }
    return new Pose(values);
  }

  private double cost(float[] residuals) {
    for (int at : hidden) {
      residuals[at] = 0;
    }
    double sum = 0;
    for (float one : residuals) {
      double square = one * one;
      sum += square / (1 + square / (OUTLIER * OUTLIER));
    }
    return sum;
  }

  private double[] steps(double module) {
    for (int p = 0; p < Pose.PARAMETERS; p++) {
      steps[p] = p < Pose.BEND ? 0.25 * module : p == Pose.BEND ? 0.004 : 0.03;
    }
    return steps;
  }

  private void normalEquations(int free) {
    for (int at = 0; at < residual.length; at++) {
      float share = 1 / (1 + residual[at] * residual[at] / (float) (OUTLIER * OUTLIER));
      weight[at] = share * share;
    }
    for (int at : hidden) {
      weight[at] = 0;
    }
    for (int p = 0; p < free; p++) {
      float[] own = slope[p];
      for (int at = 0; at < weighted.length; at++) {
        weighted[at] = weight[at] * own[at];
      }
      gradient[p] = -product(weighted, residual);
      for (int q = 0; q <= p; q++) {
        normal[p][q] = product(weighted, slope[q]);
      }
    }
  }

  /** The sum of products, in four sums that need not wait for each other. */
  private static double product(float[] one, float[] other) {
    float first = 0;
    float second = 0;
    float third = 0;
    float fourth = 0;
    int at = 0;
    for (; at + 3 < one.length; at += 4) {
      first += one[at] * other[at];
      second += one[at + 1] * other[at + 1];
      third += one[at + 2] * other[at + 2];
      fourth += one[at + 3] * other[at + 3];
    }
    for (; at < one.length; at++) {
      first += one[at] * other[at];
    }
    return (double) first + second + third + fourth;
  }

  private double[] move(double[] values, int free, double damping) {
    double[] step = solver.solve(normal, gradient, free, damping);
    double[] moved = values.clone();
    for (int p = 0; p < free; p++) {
      double limit = p < Pose.BEND ? 8 : 4;
      moved[p] += Math.max(-limit, Math.min(limit, step[p])) * steps[p];
    }
    moved[Pose.BEND] = Math.max(0, Math.min(0.13, moved[Pose.BEND]));
    return moved;
  }
}
