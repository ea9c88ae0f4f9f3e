package wherefrom.scan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.scan.find.Candidate;
import wherefrom.scan.find.Threshold;
import wherefrom.scan.geometry.Pose;
import wherefrom.scan.grey.Pyramid;

/**
 * What is done with a still picture at first: a quick search at half its size, of which only what
 * fits clearly is followed up, then the same at its whole size, and where neither settles the
 * picture, the whole search.
 */
final class FirstLook {
  /** Doubtful candidates that the whole search follows up. */
  static final int FOLLOWED = 12;

  private static final Threshold QUICK = new Threshold(1, 14, 3);
  private static final Threshold FULL = new Threshold(0, 14, 4);
  private static final List<Threshold> REST =
      List.of(new Threshold(2, 12, 2), new Threshold(1, 30, 5));

  /** A sheet holds up to thirty labels, each found once or twice. */
  private static final int SHEETFUL = 80;

  /** Pixels to a module below which another tag may be too small for half the size. */
  private static final double SMALL = 4;

  /** Fit of the pattern of every label above which another tag may lie there. */
  private static final double PERHAPS = 0.3;

  /** The best places beside a tag that are fitted to see whether another may lie there. */
  private static final int DOUBTED = 6;

  /**
   * What has its centre within so many modules of a tag's centre is of that tag: it lies on its
   * label, which is twice as wide.
   */
  private static final double NEAR = 16.5;

  private final PictureScan scan;

  FirstLook(PictureScan scan) {
    this.scan = scan;
  }

  /** Every reading, with and without a text. */
  List<PoseReading> readings(Pyramid pyramid) {
    Followed followed = new Followed();
    List<Candidate> all = new ArrayList<>(scan.candidates(pyramid, List.of(QUICK), SHEETFUL));
    List<PoseReading> readings = scan.read(pyramid, all, 0, followed);
    Optional<Pose> large = onlyTag(readings).filter(tag -> tag.narrowModule() >= SMALL);
    if (large.filter(tag -> isSettled(pyramid, tag, all, followed)).isPresent()) {
      return readings;
    }
    all.addAll(scan.candidates(pyramid, List.of(FULL), SHEETFUL));
    readings = scan.read(pyramid, all, 0, followed);
    Optional<Pose> any = onlyTag(readings);
    if (any.filter(tag -> isSettled(pyramid, tag, all, followed)).isPresent()) {
      return readings;
    }
    all.addAll(scan.candidates(pyramid, REST, SHEETFUL));
    return scan.read(pyramid, all, FOLLOWED, followed);
  }

  /** Where the one tag lies that was read; empty where none was, or where more may lie there. */
  private static Optional<Pose> onlyTag(List<PoseReading> readings) {
    List<PoseReading> read = readings.stream().filter(one -> one.text().isPresent()).toList();
    long texts = read.stream().map(one -> one.text().orElseThrow().digits()).distinct().count();
    return read.stream()
        .findFirst()
        .filter(one -> texts == 1)
        .map(PoseReading::pose)
        .filter(
            tag ->
                readings.stream()
                    .noneMatch(one -> one.pattern() > PERHAPS && !isOf(tag, one.pose())));
  }

  /**
   * Whether nothing speaks for another tag beside the one that was read: tags that lie together are
   * about as large, and one that was not read leaves something that fits a little.
   */
  private boolean isSettled(
      Pyramid pyramid, Pose tag, List<Candidate> candidates, Followed followed) {
    List<Candidate> beside = new ArrayList<>(candidates);
    beside.removeIf(one -> one.score() <= PERHAPS || isOf(tag, one.pose()));
    return scan.best(pyramid, beside, DOUBTED, followed)
        .filter(one -> one.score() >= PERHAPS)
        .isEmpty();
  }

  private static boolean isOf(Pose tag, Pose place) {
    double x = place.centreX() - tag.centreX();
    double y = place.centreY() - tag.centreY();
    return Math.hypot(x, y) < NEAR * Math.max(tag.module(), place.module());
  }
}
