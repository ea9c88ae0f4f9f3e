package wherefrom.scan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import wherefrom.scan.decode.OpenSetDecoder;
import wherefrom.scan.decode.SoftDecoder;
import wherefrom.scan.find.Candidate;
import wherefrom.scan.find.CandidateSearch;
import wherefrom.scan.geometry.CameraModel;
import wherefrom.scan.geometry.FinderFace;
import wherefrom.scan.geometry.LabelPattern;
import wherefrom.scan.geometry.Nudges;
import wherefrom.scan.geometry.PatternFit;
import wherefrom.scan.geometry.Pose;
import wherefrom.scan.geometry.PoseRefiner;
import wherefrom.scan.geometry.RodPoses;
import wherefrom.scan.geometry.RodSpan;
import wherefrom.scan.geometry.Warp;
import wherefrom.scan.geometry.WarpFit;
import wherefrom.scan.grey.Pyramid;
import wherefrom.scan.grid.GridSampler;
import wherefrom.scan.grid.SoftGrid;
import wherefrom.scan.match.AcceptanceBound;
import wherefrom.scan.match.ClosedSetMatcher;
import wherefrom.scan.match.IssuedSymbols;
import wherefrom.scan.match.SymbolMatch;

/** From a candidate pose to what it says: refine, take the grid, decode, match. */
final class PoseReader {
  /** How stiff the paper is taken to be, round by round. */
  private static final double[] EASING = {8, 2, 1, 1};

  /** Fit of a start on a thin rod below which it is not followed. */
  private static final double WRAPPED = 0.25;

  /** Rough fit below which no label lies where the frame may cross a thin rod. */
  private static final double SPANNED = 0.2;

  /** Places at which the frame may cross a thin rod that are looked at closely. */
  private static final int SPANS = 3;

  private final double windowHalf;
  private final PatternFit fit;
  private final PoseRefiner refiner;
  private final GridSampler sampler;
  private final WarpFit warps;
  private final RodPoses rods;
  private final OpenSetDecoder decoder = new OpenSetDecoder();
  private final SoftDecoder soft = new SoftDecoder();
  private final IssuedSymbols issued;
  private final ClosedSetMatcher matcher;
  private final double more;

  PoseReader(LabelPattern pattern, CameraModel camera, IssuedSymbols issued) {
    this(pattern, camera, issued, 0);
  }

  /**
   * @param more lead that is wanted beyond {@link AcceptanceBound}'s least
   */
  PoseReader(LabelPattern pattern, CameraModel camera, IssuedSymbols issued, double more) {
    this.more = more;
    windowHalf = pattern.windowHalf();
    fit = new PatternFit(pattern, camera);
    refiner = new PoseRefiner(fit);
    sampler = new GridSampler(camera);
    warps = new WarpFit(pattern, camera);
    rods = new RodPoses(camera);
    this.issued = issued;
    matcher = new ClosedSetMatcher(issued);
  }

  PatternFit fit() {
    return fit;
  }

  Pose coarse(Pyramid pyramid, Pose pose) {
    return refiner.coarse(pyramid, pose, 6);
  }

  double score(Pyramid pyramid, Pose pose) {
    return fit.score(pyramid, pose);
  }

  PoseReading read(Pyramid pyramid, Pose coarse) {
    return at(pyramid, refiner.sharp(pyramid, coarse, 10));
  }

  /**
   * Readings from starts round a pose that has stuck, those that fit best first, until one has a
   * text.
   *
   * @param most starts that are followed to their text
   */
  List<PoseReading> retry(Pyramid pyramid, Pose stuck, int most) {
    List<Candidate> starts = new ArrayList<>();
    for (Pose nudged : Nudges.round(stuck, windowHalf)) {
      Pose pose = refiner.coarse(pyramid, nudged, 6);
      starts.add(new Candidate(pose, fit.score(pyramid, pose)));
    }
    List<PoseReading> readings = new ArrayList<>();
    for (Candidate start : CandidateSearch.distinct(starts, most)) {
      Pose pose = refiner.sharp(pyramid, start.pose(), 10);
      PoseReading reading = at(pyramid, pose, more + AcceptanceBound.SECOND_LOOK);
      readings.add(reading);
      if (reading.text().isPresent()) {
        break;
      }
    }
    return readings;
  }

  /**
   * Readings of a place that has stuck as a label that goes far round a thin rod, those that fit
   * best first, until one has a text; only where the pattern of every label fits well.
   *
   * @param most starts that are followed to their text
   */
  List<PoseReading> wrapped(Pyramid pyramid, Pose stuck, int most) {
    List<Candidate> starts = best(pyramid, rods.round(stuck), most);
    return followed(
        pyramid, starts, pose -> refiner.sharp(pyramid, refiner.coarse(pyramid, pose, 6), 10));
  }

  /**
   * The same of finder patterns, each in any corner of such a label and with the rod either way:
   * they say well enough how it lies to be fitted at once, by what of it faces the camera.
   *
   * @param most starts that are followed to their text, of all patterns together
   */
  List<PoseReading> wrapped(Pyramid pyramid, List<FinderFace> faces, int most) {
    List<Pose> poses = new ArrayList<>();
    for (FinderFace face : faces) {
      poses.addAll(rods.round(face));
      poses.addAll(rods.round(face.across()));
    }
    return followed(
        pyramid,
        best(pyramid, poses, most),
        pose -> refiner.facing(pyramid, refiner.sharp(pyramid, pose, 10), 10));
  }

  /**
   * The same where the frame may cross a rod twice, of the likeliest places.
   *
   * @param most starts that are followed to their text, of all places together
   */
  List<PoseReading> spanned(Pyramid pyramid, List<RodSpan> spans, int most) {
    List<Pose> poses =
        spans.stream()
            .map(span -> new Likely(span, roughFit(pyramid, rods.roughly(span))))
            .filter(likely -> likely.fit() > SPANNED)
            .sorted(Comparator.comparingDouble(likely -> -likely.fit()))
            .limit(SPANS)
            .flatMap(likely -> rods.round(likely.span()).stream())
            .toList();
    return followed(
        pyramid,
        best(pyramid, poses, most),
        pose ->
            refiner.facing(
                pyramid, refiner.sharp(pyramid, refiner.coarseFacing(pyramid, pose, 6), 10), 10));
  }

  /**
   * A place at which the frame may cross a thin rod.
   *
   * @param fit of the best of a few poses there, to 1
   */
  private record Likely(RodSpan span, double fit) {}

  private double roughFit(Pyramid pyramid, List<Pose> poses) {
    return poses.stream()
        .flatMapToDouble(pose -> Arrays.stream(fit.turnedScores(pyramid, pose)))
        .max()
        .orElse(0);
  }

  /** Those poses on a thin rod that fit best, in each of the four turns of the tag. */
  private List<Candidate> best(Pyramid pyramid, List<Pose> poses, int most) {
    List<Candidate> starts = new ArrayList<>();
    for (Pose pose : poses) {
      double[] scores = fit.turnedScores(pyramid, pose);
      for (int quarters = 0; quarters < scores.length; quarters++) {
        if (scores[quarters] > WRAPPED) {
          starts.add(new Candidate(pose.turned(quarters), scores[quarters]));
        }
      }
    }
    return CandidateSearch.distinct(starts, most);
  }

  private List<PoseReading> followed(
      Pyramid pyramid, List<Candidate> starts, UnaryOperator<Pose> refined) {
    List<PoseReading> readings = new ArrayList<>();
    for (Candidate start : starts) {
      Pose pose = refined.apply(start.pose());
      if (fit.score(pyramid, pose) >= AcceptanceBound.PATTERN) {
        readings.add(at(pyramid, pose, more + AcceptanceBound.WRAPPED));
      }
      if (readings.stream().anyMatch(reading -> reading.text().isPresent())) {
        break;
      }
    }
    return readings;
  }

  /**
   * Reads paper that does not lie flat: from round to round the warp follows what the modules seem
   * to be, first stiffly.
   */
  PoseReading warped(Pyramid pyramid, PoseReading stuck) {
    Warp warp = new Warp();
    PoseReading reading = stuck;
    for (double ease : EASING) {
      warps.improve(pyramid, stuck.pose(), warp, reading.grid().darkness(), ease);
      SoftGrid grid = sampler.sample(pyramid, stuck.pose(), warp);
      Optional<SymbolMatch> match = matcher.find(grid);
      Optional<PoseReading.Text> text = text(grid, stuck.pattern(), match, more);
      reading = new PoseReading(stuck.pose(), stuck.pattern(), grid, text, match);
      if (text.isPresent()) {
        break;
      }
    }
    return reading;
  }

  /** Reads at a pose as it is. */
  PoseReading at(Pyramid pyramid, Pose pose) {
    return at(pyramid, pose, more);
  }

  private PoseReading at(Pyramid pyramid, Pose pose, double wanted) {
    SoftGrid grid = sampler.sample(pyramid, pose);
    Optional<SymbolMatch> match = matcher.find(grid);
    double pattern = fit.score(pyramid, pose);
    return new PoseReading(pose, pattern, grid, text(grid, pattern, match, wanted), match);
  }

  /** What a sum of grids says. */
  Optional<PoseReading.Text> text(SoftGrid grid, double pattern) {
    return text(grid, pattern, matcher.find(grid), more);
  }

  private Optional<String> decoded(SoftGrid grid, double pattern) {
    Optional<String> decoded = decoder.find(grid);
    return decoded.isEmpty() && pattern >= AcceptanceBound.PATTERN ? soft.find(grid) : decoded;
  }

  /** The symbol's own error correction has the first word; the list speaks where that fails. */
  private Optional<PoseReading.Text> text(
      SoftGrid grid, double pattern, Optional<SymbolMatch> match, double wanted) {
    Optional<String> decoded = decoded(grid, pattern);
    if (decoded.isPresent()) {
      return decoded.map(digits -> new PoseReading.Text(digits, issued.contains(digits)));
    }
    return match
        .filter(best -> AcceptanceBound.accepts(best, pattern, wanted))
        .map(best -> new PoseReading.Text(best.code().digits(), true));
  }
}
