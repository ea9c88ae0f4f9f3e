package wherefrom.scan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wherefrom.scan.find.Candidate;
import wherefrom.scan.find.CandidateSearch;
import wherefrom.scan.find.Threshold;
import wherefrom.scan.geometry.CameraModel;
import wherefrom.scan.geometry.FinderFace;
import wherefrom.scan.geometry.LabelPattern;
import wherefrom.scan.geometry.Pose;
import wherefrom.scan.geometry.RodSpan;
import wherefrom.scan.grey.Pyramid;
import wherefrom.scan.grid.SoftGrid;
import wherefrom.scan.match.IssuedSymbols;

/** All stages over one picture. */
final class PictureScan {
  private static final int MANY = 600;

  /** Fit of a candidate that is followed up in any case. */
  private static final double CLEAR = 0.45;

  /** Fit after the rough refinement below which nothing is ever read. */
  private static final double HOPELESS = 0.2;

  /** Starts round a place that has stuck, of which each is followed to its text. */
  private static final int STARTS = 5;

  /** The same on a live picture, where there is less time. */
  private static final int LIVE_STARTS = 3;

  /** Starts on a thin rod, of which each is followed to its text. */
  private static final int WRAPS = 6;

  /** Starts round finder patterns on a thin rod, of which each is followed to its text. */
  private static final int FACE_WRAPS = 10;

  /** Starts where the frame crosses a thin rod, of which each is followed to its text. */
  private static final int SPAN_WRAPS = 6;

  /** Fit of a finder pattern below which none lies there. */
  private static final double FACED = 0.6;

  /** Fit that is worth reading at once. */
  private static final double SETTLED = 0.6;

  private final PoseReader poses;
  private final CandidateSearch search;

  PictureScan(LabelPattern pattern, CameraModel camera, IssuedSymbols issued) {
    this(pattern, camera, issued, 0);
  }

  /**
   * @param more lead that is wanted beyond the least, in standard deviations
   */
  PictureScan(LabelPattern pattern, CameraModel camera, IssuedSymbols issued, double more) {
    poses = new PoseReader(pattern, camera, issued, more);
    search = new CandidateSearch(pattern, poses.fit());
  }

  /**
   * Reads what the cuts bring out.
   *
   * @param most doubtful candidates that are followed up; clear ones all are
   */
  List<PoseReading> scan(Pyramid pyramid, List<Threshold> cuts, int most) {
    return read(pyramid, candidates(pyramid, cuts, most), most, new Followed());
  }

  /**
   * Where tags may lie.
   *
   * @param tags how many candidates one cut may give
   */
  List<Candidate> candidates(Pyramid pyramid, List<Threshold> cuts, int tags) {
    List<Candidate> candidates = new ArrayList<>();
    for (Threshold cut : cuts) {
      candidates.addAll(search.search(pyramid, cut, tags));
    }
    return candidates;
  }

  /**
   * Reads where candidates lie.
   *
   * @param most doubtful candidates that are followed up; clear ones all are
   * @param followed what was followed up on the same picture before
   */
  List<PoseReading> read(Pyramid pyramid, List<Candidate> candidates, int most, Followed followed) {
    List<PoseReading> readings = new ArrayList<>();
    List<Candidate> later = refine(pyramid, candidates, most, readings, followed);
    int doubtful = 0;
    for (Candidate candidate : CandidateSearch.distinct(later, MANY)) {
      boolean wanted =
          candidate.score() > CLEAR || (candidate.score() > HOPELESS && doubtful++ < most);
      if (wanted && !isRead(candidate.pose(), readings)) {
        readings.add(followed.read(candidate.pose(), pose -> poses.read(pyramid, pose)));
      }
    }
    readings.sort(Comparator.comparingDouble(reading -> -reading.pattern()));
    return readings;
  }

  /**
   * Tries the best places that were not read once more, each from several starts round it; where
   * something was read already only those that fit about as well as a tag. What has a text is added
   * to the readings.
   *
   * @return everything that was tried
   */
  List<PoseReading> retry(Pyramid pyramid, List<PoseReading> readings, int places) {
    List<PoseReading> retried = retried(pyramid, readings, places);
    retried.stream().filter(found -> found.text().isPresent()).forEach(readings::add);
    readings.sort(Comparator.comparingDouble(reading -> -reading.pattern()));
    return retried;
  }

  /** What the starts round those places give, with and without a text. */
  List<PoseReading> retried(Pyramid pyramid, List<PoseReading> readings, int places) {
    List<PoseReading> stuck = new ArrayList<>();
    boolean none = readings.stream().allMatch(reading -> reading.text().isEmpty());
    double least = none ? HOPELESS : CLEAR;
    for (PoseReading reading : readings) {
      boolean wanted = reading.text().isEmpty() && reading.pattern() > least;
      boolean fresh = stuck.stream().noneMatch(other -> isNear(reading.pose(), other));
      if (wanted && fresh && stuck.size() < places && !isRead(reading.pose(), readings)) {
        stuck.add(reading);
      }
    }
    List<PoseReading> retried = new ArrayList<>();
    for (PoseReading reading : stuck) {
      if (!isRead(reading.pose(), retried)) {
        retried.addAll(poses.retry(pyramid, reading.pose(), STARTS));
      }
    }
    return retried;
  }

  /** The best places that were not read, each as paper that does not lie flat. */
  List<PoseReading> warped(Pyramid pyramid, List<PoseReading> readings, int places) {
    List<PoseReading> warped = new ArrayList<>();
    for (PoseReading reading : readings) {
      boolean fresh = warped.stream().noneMatch(other -> isSame(reading.pose(), other.pose()));
      if (reading.text().isEmpty() && reading.pattern() > HOPELESS && fresh) {
        warped.add(poses.warped(pyramid, reading));
      }
      if (warped.size() == places || isRead(reading.pose(), warped)) {
        break;
      }
    }
    return warped;
  }

  /** The best places that were not read, each as a label that goes far round a thin rod. */
  List<PoseReading> wrapped(Pyramid pyramid, List<PoseReading> readings, int places) {
    List<PoseReading> stuck = new ArrayList<>();
    List<PoseReading> wrapped = new ArrayList<>();
    for (PoseReading reading : readings) {
      boolean fresh = stuck.stream().noneMatch(other -> isSpot(reading.pose(), other.pose()));
      if (fresh && reading.pattern() > HOPELESS && stuck.size() < places) {
        stuck.add(reading);
        wrapped.addAll(poses.wrapped(pyramid, reading.pose(), WRAPS));
      }
      if (isRead(reading.pose(), wrapped)) {
        break;
      }
    }
    return wrapped;
  }

  /**
   * Finder patterns that look most like one, each as part of a label that goes far round a thin
   * rod: often one is all of the label that faces the camera.
   */
  List<PoseReading> faced(Pyramid pyramid, List<Threshold> cuts, int most) {
    List<FinderFace> faces = new ArrayList<>();
    for (Threshold cut : cuts) {
      for (FinderFace face : search.faces(pyramid, cut)) {
        if (face.fit() > FACED && faces.stream().noneMatch(face::isSame)) {
          faces.add(face);
        }
      }
    }
    faces.sort(Comparator.comparingDouble(face -> -face.fit()));
    return poses.wrapped(pyramid, faces.subList(0, Math.min(most, faces.size())), FACE_WRAPS);
  }

  /**
   * Where the frame may cross a thin rod twice, each as a label that goes far round it: seen
   * straight on all of its finder patterns lie on the sides and none faces the camera.
   *
   * @param levels of the pyramid on which such lines are looked for
   */
  List<PoseReading> spanned(Pyramid pyramid, List<Integer> levels) {
    List<RodSpan> spans = new ArrayList<>();
    levels.forEach(level -> spans.addAll(search.spans(pyramid.level(level))));
    return poses.spanned(pyramid, spans, SPAN_WRAPS);
  }

  /** Whether two places are one for a search round them. */
  private static boolean isSpot(Pose pose, Pose other) {
    double x = pose.centreX() - other.centreX();
    double y = pose.centreY() - other.centreY();
    double size = pose.module() / other.module();
    return Math.hypot(x, y) < 2 * other.module() && size > 0.85 && size < 1.2;
  }

  private static boolean isSame(Pose pose, Pose other) {
    return new Candidate(pose, 0).isSame(new Candidate(other, 0));
  }

  /** Fits candidates roughly; reads at once what fits well, and gives back the others. */
  private List<Candidate> refine(
      Pyramid pyramid,
      List<Candidate> candidates,
      int most,
      List<PoseReading> readings,
      Followed followed) {
    List<Candidate> later = new ArrayList<>();
    int doubtful = 0;
    for (Candidate candidate : CandidateSearch.distinct(candidates, MANY)) {
      boolean wanted = candidate.score() > CLEAR || doubtful++ < 2 * most;
      if (wanted && !isRead(candidate.pose(), readings)) {
        Candidate refined = followed.refined(candidate.pose(), pose -> refined(pyramid, pose));
        if (refined.score() > SETTLED) {
          readings.add(followed.read(refined.pose(), pose -> poses.read(pyramid, pose)));
        } else {
          later.add(refined);
        }
      }
    }
    return later;
  }

  /** How well the best of some candidates fits after the rough refinement; 0 without any. */
  double bestFit(Pyramid pyramid, List<Candidate> candidates, int most, Followed followed) {
    return CandidateSearch.distinct(candidates, most).stream()
        .map(one -> followed.refined(one.pose(), pose -> refined(pyramid, pose)))
        .mapToDouble(Candidate::score)
        .max()
        .orElse(0);
  }

  private Candidate refined(Pyramid pyramid, Pose candidate) {
    Pose pose = poses.coarse(pyramid, candidate);
    return new Candidate(pose, poses.score(pyramid, pose));
  }

  /** Reads a tag near where it was a frame ago. */
  PoseReading follow(Pyramid pyramid, Pose pose) {
    return poses.read(pyramid, poses.coarse(pyramid, pose));
  }

  /** Readings from other starts round a place of a live picture where nothing was read. */
  List<PoseReading> loosen(Pyramid pyramid, Pose stuck) {
    return poses.retry(pyramid, stuck, LIVE_STARTS);
  }

  /** What a sum of grids says. */
  Optional<PoseReading.Text> text(SoftGrid grid, double pattern) {
    return poses.text(grid, pattern);
  }

  private static boolean isRead(Pose pose, List<PoseReading> readings) {
    return readings.stream().anyMatch(reading -> isRead(pose, reading));
  }

  private static boolean isRead(Pose pose, PoseReading reading) {
    return reading.text().isPresent() && isNear(pose, reading);
  }

  private static boolean isNear(Pose pose, PoseReading reading) {
    double x = pose.centreX() - reading.pose().centreX();
    double y = pose.centreY() - reading.pose().centreY();
    return Math.hypot(x, y) < Pose.HALF * reading.pose().module();
  }
}
