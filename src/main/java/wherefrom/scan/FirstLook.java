package wherefrom.scan;

import java.util.ArrayList;
import java.util.List;
import wherefrom.scan.find.Candidate;
import wherefrom.scan.find.Threshold;
import wherefrom.scan.geometry.Pose;
import wherefrom.scan.grey.Pyramid;

/**
 * What is done with a still picture at first: a quick search at half its size, of which only what
 * fits clearly is followed up, and where that does not settle the picture, the whole search.
 */
final class FirstLook {
  /** Doubtful candidates that the whole search follows up. */
  static final int FOLLOWED = 12;

  private static final Threshold QUICK = new Threshold(1, 14, 3);
  private static final List<Threshold> WHOLE =
      List.of(new Threshold(0, 14, 4), QUICK, new Threshold(2, 12, 2), new Threshold(1, 30, 5));

  /** A sheet holds up to thirty labels, each found once or twice. */
  private static final int SHEETFUL = 80;

  /** Pixels to a module below which another tag may be too small for half the size. */
  private static final double SMALL = 4;

  /** Fit of the pattern of every label above which another tag may lie there. */
  private static final double PERHAPS = 0.3;

  /** The best places beside a tag that are fitted to see whether another may lie there. */
  private static final int DOUBTED = 6;

  /** What lies within so many modules of a tag's centre is of that tag. */
  private static final double NEAR = 14;

  private final PictureScan scan;

  FirstLook(PictureScan scan) {
    this.scan = scan;
  }

  /** Every reading, with and without a text. */
  List<PoseReading> readings(Pyramid pyramid) {
    Followed followed = new Followed();
    List<Candidate> quick = scan.candidates(pyramid, List.of(QUICK), SHEETFUL);
    List<PoseReading> readings = scan.read(pyramid, quick, 0, followed);
    if (isSettled(pyramid, readings, quick, followed)) {
      return readings;
    }
    List<Candidate> all = new ArrayList<>();
    for (Threshold cut : WHOLE) {
      all.addAll(cut.equals(QUICK) ? quick : scan.candidates(pyramid, List.of(cut), SHEETFUL));
    }
    return scan.read(pyramid, all, FOLLOWED, followed);
  }

  /**
   * Whether one tag was read and nothing speaks for another: tags that lie together are about as
   * large, and one that the quick search does not read leaves something that fits a little.
   */
  private boolean isSettled(
      Pyramid pyramid, List<PoseReading> readings, List<Candidate> candidates, Followed followed) {
    List<PoseReading> read = readings.stream().filter(one -> one.text().isPresent()).toList();
    long texts = read.stream().map(one -> one.text().orElseThrow().digits()).distinct().count();
    if (texts != 1) {
      return false;
    }
    Pose pose = read.get(0).pose();
    return pose.narrowModule() >= SMALL
        && readings.stream().noneMatch(one -> one.pattern() > PERHAPS && !isOf(pose, one.pose()))
        && scan.bestFit(pyramid, beside(pose, candidates), DOUBTED, followed) < PERHAPS;
  }

  private static List<Candidate> beside(Pose tag, List<Candidate> candidates) {
    return candidates.stream()
        .filter(one -> one.score() > PERHAPS && !isOf(tag, one.pose()))
        .toList();
  }

  private static boolean isOf(Pose tag, Pose place) {
    double x = place.centreX() - tag.centreX();
    double y = place.centreY() - tag.centreY();
    return Math.hypot(x, y) < NEAR * Math.max(tag.module(), place.module());
  }
}
