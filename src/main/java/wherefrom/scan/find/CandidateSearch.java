package wherefrom.scan.find;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import wherefrom.scan.geometry.LabelPattern;
import wherefrom.scan.geometry.PatternFit;
import wherefrom.scan.geometry.Pose;
import wherefrom.scan.grey.Level;
import wherefrom.scan.grey.Pyramid;

/**
 * Proposes poses: four-sided hulls of connected patches taken for the printed frame or its window,
 * and pairs and triples of finder patterns; each is scored by the pattern of every label.
 */
public final class CandidateSearch {
  private static final int SMALLEST = 14;
  private static final double LEAST_FRAME = 0.12;
  private static final double LEAST_SCORE = 0.12;
  private static final double[] BENDS = {0.045, 0.085};
  private static final int BEST_QUADS = 24;

  private final LabelPattern pattern;
  private final PatternFit fit;
  private final Map<Cut, Runs> buffers = new HashMap<>();
  private final Components components = new Components();
  private final FinderScan finderScan = new FinderScan();

  public CandidateSearch(LabelPattern pattern, PatternFit fit) {
    this.pattern = pattern;
    this.fit = fit;
  }

  /** The candidates one cut of the picture gives, best first. */
  public List<Candidate> search(Pyramid pyramid, Cut cut, int most) {
    Level level = pyramid.level(cut.level());
    Runs runs = buffers.computeIfAbsent(cut, made -> new Runs(made.reach(), made.below()));
    runs.cut(level);
    List<Candidate> found = new ArrayList<>();
    quads(pyramid, runs, level, most, found);
    FinderPoses.suggest(
        finderScan.scan(runs, level.height(), level.shrink()),
        pose -> keep(pyramid, pose, LEAST_SCORE, found));
    return distinct(found, most);
  }

  private void quads(Pyramid pyramid, Runs runs, Level level, int most, List<Candidate> found) {
    List<Candidate> squares = new ArrayList<>();
    for (Component component : components.join(runs, level.height(), SMALLEST)) {
      double half = component.dark() ? pattern.frameHalf() : pattern.windowHalf();
      QuadReduction.of(component.hull())
          .filter(quad -> component.hull().area() > 0.7 * quad.area())
          .map(quad -> pose(quad.scaled(level.shrink()), half))
          .filter(Pose::isSound)
          .map(pose -> new Candidate(pose, fit.frameScore(pyramid, pose)))
          .filter(square -> square.score() > LEAST_FRAME)
          .ifPresent(squares::add);
    }
    squares.sort(Comparator.comparingDouble(square -> -square.score()));
    for (Candidate square : squares.subList(0, Math.min(squares.size(), most + BEST_QUADS))) {
      for (int quarters = 0; quarters < 4; quarters++) {
        Pose turned = square.pose().turned(quarters);
        keep(pyramid, turned, LEAST_SCORE, found);
        bend(pyramid, turned, found);
      }
    }
  }

  private void bend(Pyramid pyramid, Pose pose, List<Candidate> found) {
    for (double bend : BENDS) {
      for (int quarter = 0; quarter < 2; quarter++) {
        keep(pyramid, pose.bent(bend, quarter, pattern.windowHalf()), LEAST_SCORE, found);
      }
    }
  }

  private static Pose pose(Polygon quad, double half) {
    double[] xs = new double[4];
    double[] ys = new double[4];
    for (int corner = 0; corner < 4; corner++) {
      xs[corner] = quad.x(corner);
      ys[corner] = quad.y(corner);
    }
    return Pose.ofSquare(xs, ys, half);
  }

  private void keep(Pyramid pyramid, Pose pose, double least, List<Candidate> found) {
    if (pose.isSound()) {
      double score = fit.coarseScore(pyramid, pose);
      if (score > least) {
        found.add(new Candidate(pose, score));
      }
    }
  }

  /** The best of those that lie at the same place. */
  public static List<Candidate> distinct(List<Candidate> candidates, int most) {
    List<Candidate> sorted = new ArrayList<>(candidates);
    sorted.sort(Comparator.comparingDouble(candidate -> -candidate.score()));
    List<Candidate> distinct = new ArrayList<>();
    for (Candidate candidate : sorted) {
      if (distinct.size() < most && distinct.stream().noneMatch(candidate::isSame)) {
        distinct.add(candidate);
      }
    }
    return distinct;
  }
}
