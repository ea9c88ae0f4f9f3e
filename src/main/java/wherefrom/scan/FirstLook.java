package wherefrom.scan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wherefrom.scan.find.Candidate;
import wherefrom.scan.find.Threshold;
import wherefrom.scan.find.Window;
import wherefrom.scan.geometry.Pose;
import wherefrom.scan.grey.Pyramid;

/**
 * What is done with a still picture at first: a quick search at half its size, of which only what
 * fits clearly is followed up, then the same at its whole size, and where neither settles the
 * picture, the whole search. Where one tag was read and a part of the picture is in doubt, only
 * that part is searched whole.
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

  /** Fit above which what lies there is so likely a tag that no part alone is searched. */
  private static final double LIKELY = 0.45;

  /** The best places beside a tag that are fitted to see whether another may lie there. */
  private static final int DOUBTED = 6;

  /** Parts in doubt that are searched by themselves: more take as long as the whole. */
  private static final int PARTS = 3;

  /**
   * What has its centre within so many modules of a tag's is of that tag: it lies on its label,
   * which is half as wide.
   */
  private static final double NEAR = 16.5;

  /** From a place in doubt to as far as a label may reach of which it is a part, in modules. */
  private static final double REACH = 32;

  private final PictureScan scan;

  FirstLook(PictureScan scan) {
    this.scan = scan;
  }

  /** Every reading, with and without a text. */
  List<PoseReading> readings(Pyramid pyramid) {
    Followed followed = new Followed();
    List<Candidate> all =
        new ArrayList<>(scan.candidates(pyramid, List.of(QUICK), SHEETFUL));
    List<PoseReading> readings = scan.read(pyramid, all, 0, followed);
    if (tagOf(readings).filter(tag -> tag.narrowModule() >= SMALL).isPresent()
        && isSettled(pyramid, readings, all, List.of(FULL, REST.get(0), REST.get(1)), followed)) {
      return readings;
    }
    all.addAll(scan.candidates(pyramid, List.of(FULL), SHEETFUL));
    readings = scan.read(pyramid, all, 0, followed);
    if (tagOf(readings).isPresent() && isSettled(pyramid, readings, all, REST, followed)) {
      return readings;
    }
    all.addAll(scan.candidates(pyramid, REST, SHEETFUL));
    return scan.read(pyramid, all, FOLLOWED, followed);
  }

  /** Where the one tag lies that was read; empty where none or several were. */
  private static Optional<Pose> tagOf(List<PoseReading> readings) {
    List<PoseReading> read = readings.stream().filter(one -> one.text().isPresent()).toList();
    long texts = read.stream().map(one -> one.text().orElseThrow().digits()).distinct().count();
    return texts == 1 ? Optional.of(read.get(0).pose()) : Optional.empty();
  }

  /**
   * Whether nothing speaks for another tag beside the one that was read: tags that lie together are
   * about as large, and one that was not read leaves something that fits a little. Where something
   * does, what the other cuts give there decides.
   *
   * @param others cuts that were not searched yet
   */
  private boolean isSettled(
      Pyramid pyramid,
      List<PoseReading> readings,
      List<Candidate> candidates,
      List<Threshold> others,
      Followed followed) {
    Pose tag = tagOf(readings).orElseThrow();
    if (readings.stream().anyMatch(one -> one.pattern() > PERHAPS && !isOf(tag, one.pose()))) {
      return false;
    }
    List<Candidate> beside =
        candidates.stream()
            .filter(one -> one.score() > PERHAPS && !isOf(tag, one.pose()))
            .toList();
    for (int part = 0; part <= PARTS; part++) {
      Optional<Candidate> doubt =
          scan.best(pyramid, beside, DOUBTED, followed).filter(one -> one.score() >= PERHAPS);
      if (doubt.isEmpty()) {
        return true;
      }
      if (part == PARTS || doubt.get().score() > LIKELY) {
        return false;
      }
      Pose place = doubt.get().pose();
      Window window = Window.round(place, REACH * Math.max(place.module(), tag.module()));
      List<Candidate> there =
          new ArrayList<>(scan.candidates(pyramid, others, window, SHEETFUL));
      beside.stream().filter(one -> window.holds(one.pose())).forEach(there::add);
      there.removeIf(one -> isOf(tag, one.pose()));
      List<PoseReading> found = scan.read(pyramid, there, FOLLOWED, followed);
      if (found.stream().anyMatch(one -> one.text().isPresent() || one.pattern() > LIKELY)) {
        return false;
      }
      beside = beside.stream().filter(one -> !window.holds(one.pose())).toList();
    }
    return true;
  }

  private static boolean isOf(Pose tag, Pose place) {
    double x = place.centreX() - tag.centreX();
    double y = place.centreY() - tag.centreY();
    return Math.hypot(x, y) < NEAR * Math.max(tag.module(), place.module());
  }
}
