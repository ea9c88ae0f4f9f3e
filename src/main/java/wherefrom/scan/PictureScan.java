package wherefrom.scan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wherefrom.scan.find.Candidate;
import wherefrom.scan.find.CandidateSearch;
import wherefrom.scan.find.Cut;
import wherefrom.scan.geometry.CameraModel;
import wherefrom.scan.geometry.LabelPattern;
import wherefrom.scan.geometry.Pose;
import wherefrom.scan.grey.Pyramid;
import wherefrom.scan.grid.SoftGrid;
import wherefrom.scan.match.IssuedSymbols;

/** All stages over one picture. */
final class PictureScan {
  private final PoseReader poses;
  private final CandidateSearch search;

  PictureScan(LabelPattern pattern, CameraModel camera, IssuedSymbols issued) {
    poses = new PoseReader(pattern, camera, issued);
    search = new CandidateSearch(pattern, poses.fit());
  }

  /**
   * Reads what the cuts bring out.
   *
   * @param most candidates that are followed up
   */
  List<PoseReading> scan(Pyramid pyramid, List<Cut> cuts, int most) {
    List<Candidate> candidates = new ArrayList<>();
    for (Cut cut : cuts) {
      candidates.addAll(search.search(pyramid, cut, most));
    }
    List<Candidate> coarse = new ArrayList<>();
    for (Candidate candidate : CandidateSearch.distinct(candidates, 2 * most)) {
      Pose pose = poses.coarse(pyramid, candidate.pose());
      coarse.add(new Candidate(pose, poses.score(pyramid, pose)));
    }
    List<PoseReading> readings = new ArrayList<>();
    for (Candidate candidate : CandidateSearch.distinct(coarse, most)) {
      if (readings.stream().noneMatch(reading -> isCovered(candidate.pose(), reading))) {
        readings.add(poses.read(pyramid, candidate.pose()));
      }
    }
    readings.sort(Collections.reverseOrder(Comparator.comparingDouble(PoseReading::pattern)));
    return readings;
  }

  /** Reads a tag near where it was a frame ago. */
  PoseReading follow(Pyramid pyramid, Pose pose) {
    return poses.read(pyramid, poses.coarse(pyramid, pose));
  }

  /** What a sum of grids says. */
  Optional<PoseReading.Text> text(SoftGrid grid) {
    return poses.text(grid);
  }

  private static boolean isCovered(Pose pose, PoseReading reading) {
    double far =
        Math.hypot(
            pose.centreX() - reading.pose().centreX(), pose.centreY() - reading.pose().centreY());
    return reading.text().isPresent() && far < 10 * reading.pose().module();
  }
}
