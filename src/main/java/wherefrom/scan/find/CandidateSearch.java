package wherefrom.scan.find;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import wherefrom.scan.geometry.FinderFace;
import wherefrom.scan.geometry.LabelPattern;
import wherefrom.scan.geometry.PatternFit;
import wherefrom.scan.geometry.Pose;
import wherefrom.scan.geometry.RodSpan;
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
  private final RodSpans rodSpans;

  public CandidateSearch(LabelPattern pattern, PatternFit fit) {
    this.pattern = pattern;
    this.fit = fit;
    framePoses = new FramePoses(pattern);
    rodSpans = new RodSpans(pattern);
  }

  /** The candidates one cut of the picture gives, best first. */
  public List<Candidate> search(Pyramid pyramid, Threshold cut, int most) {
    Level level = pyramid.level(cut.level());
    Runs runs = runs(level, cut);
    List<Component> patches = components.join(runs, level.height(), SMALLEST);
    List<Candidate> found = new ArrayList<>();
    frames(pyramid, patches, level.shrink(), most, found);
    List<Finder> finders = finderScan.scan(runs, level.height(), level.shrink());
    Consumer<Pose> taker = pose -> keep(pyramid, pose, found);
    FinderPoses.suggest(finders, taker);
    FinderRings.suggest(finders, patches, level.shrink(), taker);
    return distinct(found, most);
  }

  /** What one cut of the picture gives of finder patterns, those that look most like one first. */
  public List<FinderFace> faces(Pyramid pyramid, Threshold cut) {
    Level level = pyramid.level(cut.level());
    Runs runs = runs(level, cut);
    return finderScan.scan(runs, level.height(), level.shrink()).stream()
        .map(found -> FinderFace.of(pyramid, found.x(), found.y(), found.module()))
        .sorted(Comparator.comparingDouble(face -> -face.fit()))
        .toList();
  }

  private Runs runs(Level level, Threshold cut) {
    Runs runs = buffers.computeIfAbsent(cut, made -> new Runs(made.reach(), made.below()));
    runs.cut(level, cut.firstRow(level.height()), cut.endRow(level.height()));
    return runs;
  }

  /** Where the frame of a label may cross a thin rod twice, on a level of the picture. */
  public List<RodSpan> spans(Level level) {
    return rodSpans.list(level);
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
      turns(pyramid, square.pose(), bent++ < BENT_QUADS, found);
    }
  }

  /** Keeps what fits of a square and of what it is if it was bent, each in all four turns. */
  private void turns(Pyramid pyramid, Pose square, boolean bend, List<Candidate> found) {
    double[] flat = scores(pyramid, square);
    double[][] bent = bend ? bentScores(pyramid, square) : new double[0][];
    for (int quarters = 0; quarters < flat.length; quarters++) {
      Pose turned = square.turned(quarters);
      keep(turned, flat[quarters], found);
      for (int which = 0; which < bent.length; which++) {
        int axis = which % 2;
        // the rod lies as it did, so that after an odd turn it runs along the square's other side
        int seen = which - axis + (axis + quarters) % 2;
        Pose pose = turned.bent(BENDS[which / 2], axis, pattern.windowHalf());
        keep(pose, bent[seen][quarters], found);
      }
    }
  }

  /** Of each bend round a rod along v, then of the same round one along u. */
  private double[][] bentScores(Pyramid pyramid, Pose square) {
    double[][] scores = new double[2 * BENDS.length][];
    for (int which = 0; which < scores.length; which++) {
      Pose bent = square.bent(BENDS[which / 2], which % 2, pattern.windowHalf());
      scores[which] = scores(pyramid, bent);
    }
    return scores;
  }

  /** How well a pose fits in each of its four turns; 0 for one that is not sound. */
  private double[] scores(Pyramid pyramid, Pose pose) {
    return pose.isSound() ? fit.turnedScores(pyramid, pose) : new double[4];
  }

  private void keep(Pyramid pyramid, Pose pose, List<Candidate> found) {
    if (pose.isSound()) {
      keep(pose, fit.coarseScore(pyramid, pose), found);
    }
  }

  private static void keep(Pose pose, double score, List<Candidate> found) {
    if (score > LEAST_SCORE) {
      found.add(new Candidate(pose, score));
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
