package wherefrom.scan.find;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
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
  private static final int BEST_QUADS = 16;
  private static final int BENT_QUADS = 8;

  private final LabelPattern pattern;
  private final PatternFit fit;
  private final Map<Threshold, Runs> buffers = new HashMap<>();
  private final Components components = new Components();
  private final FinderScan finderScan = new FinderScan();
  private final FramePoses framePoses;

  public CandidateSearch(LabelPattern pattern, PatternFit fit) {
    this.pattern = pattern;
    this.fit = fit;
    framePoses = new FramePoses(pattern);
  }

  /** The candidates one cut of the picture gives, best first. */
  public List<Candidate> search(Pyramid pyramid, Threshold cut, int most) {
    Level level = pyramid.level(cut.level());
    Runs runs = buffers.computeIfAbsent(cut, made -> new Runs(made.reach(), made.below()));
    runs.cut(level, cut.firstRow(level.height()), cut.endRow(level.height()));
    List<Component> patches = components.join(runs, level.height(), SMALLEST);
    List<Candidate> found = new ArrayList<>();
    frames(pyramid, patches, level.shrink(), most, found);
    List<Finder> finders = finderScan.scan(runs, level.height(), level.shrink());
    Consumer<Pose> taker = pose -> keep(pyramid, pose, found);
    FinderPoses.suggest(finders, taker);
    FinderRings.suggest(finders, patches, level.shrink(), taker);
    return distinct(found, most);
  }

  private void frames(
      Pyramid pyramid, List<Component> patches, int shrink, int most, List<Candidate> found) {
    List<Candidate> squares = new ArrayList<>();
    for (Component patch : patches) {
      for (Pose pose : framePoses.suggest(patch, shrink)) {
        double score = pose.isSound() ? fit.frameScore(pyramid, pose) : 0;
        if (score > LEAST_FRAME) {
          squares.add(new Candidate(pose, score));
        }
      }
    }
    squares.sort(Comparator.comparingDouble(square -> -square.score()));
    int bent = 0;
    for (Candidate square : squares.subList(0, Math.min(squares.size(), most + BEST_QUADS))) {
      boolean bend = bent++ < BENT_QUADS;
      for (int quarters = 0; quarters < 4; quarters++) {
        Pose turned = square.pose().turned(quarters);
        keep(pyramid, turned, found);
        if (bend) {
          bend(pyramid, turned, found);
        }
      }
    }
  }

  private void bend(Pyramid pyramid, Pose pose, List<Candidate> found) {
    for (double bend : BENDS) {
      for (int quarter = 0; quarter < 2; quarter++) {
        keep(pyramid, pose.bent(bend, quarter, pattern.windowHalf()), found);
      }
    }
  }

  private void keep(Pyramid pyramid, Pose pose, List<Candidate> found) {
    if (pose.isSound()) {
      double score = fit.coarseScore(pyramid, pose);
      if (score > LEAST_SCORE) {
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
