package wherefrom.scan;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.image.GreyImage;
import wherefrom.scan.geometry.CameraModel;
import wherefrom.scan.geometry.LabelPattern;
import wherefrom.scan.grey.Pyramid;
import wherefrom.scan.grid.SoftGrid;
import wherefrom.scan.match.AcceptanceBound;
import wherefrom.scan.match.ClosedSetMatcher;
import wherefrom.scan.match.IssuedSymbols;
import wherefrom.scan.match.SymbolMatch;

/** The grids of a frame, or of a stream, on which the list of issued tags is asked. */
public final class ScoreProbe {
  private ScoreProbe() {}

  /**
   * A grid that its own error correction does not decode.
   *
   * @param pattern how well the pattern of every label fits there
   * @param more lead that is wanted of it beyond the least
   */
  public record Asked(SoftGrid grid, double pattern, double more) {}

  /**
   * Every such grid of a still picture, those from other starts and of the second look included
   * where the reader comes to that.
   */
  public static List<Asked> still(GreyImage picture) {
    CameraModel camera = CameraModel.of(picture.width(), picture.height());
    LabelPattern pattern = LabelPattern.printed();
    IssuedSymbols none = new IssuedSymbols(List.of());
    PictureScan scan = new PictureScan(pattern, camera, none);
    Pyramid pyramid = Pyramid.of(picture);
    List<PoseReading> readings = new FirstLook(scan).readings(pyramid);
    List<PoseReading> retried = scan.retried(pyramid, readings, PipelineReader.RETRIED);
    List<Asked> asked = new ArrayList<>(unread(readings, 0));
    asked.addAll(unread(retried, AcceptanceBound.SECOND_LOOK));
    if (asked.size() == readings.size() + retried.size()) {
      SecondLook second = new SecondLook(pattern, camera, none);
      asked.addAll(
          unread(second.readings(picture, pyramid, readings), AcceptanceBound.SECOND_LOOK));
    }
    return asked;
  }

  private static List<Asked> unread(List<PoseReading> readings, double more) {
    return readings.stream()
        .filter(reading -> reading.text().isEmpty())
        .map(reading -> new Asked(reading.grid(), reading.pattern(), more))
        .toList();
  }

  /** The sums that are being followed after some frames of a stream. */
  public static List<Asked> fused(List<GreyImage> frames) {
    CameraModel camera = CameraModel.of(frames.get(0).width(), frames.get(0).height());
    LiveScan live = new LiveScan(LabelPattern.printed(), camera, new IssuedSymbols(List.of()));
    for (int at = 0; at < frames.size(); at++) {
      live.next(frames.get(at), at + 1);
    }
    return live.tracks().stream()
        .filter(track -> track.text().isEmpty())
        .map(track -> new Asked(track.grid(), track.pattern(), 0))
        .toList();
  }

  /**
   * By how much the best match misses being accepted, in standard deviations of a chance score: the
   * larger of what evidence and lead are short of. 0 or more is accepted; where a relative that was
   * not issued wins, nothing can be.
   */
  public static double margin(Asked asked, ClosedSetMatcher matcher) {
    return matcher
        .find(asked.grid())
        .filter(SymbolMatch::issued)
        .map(match -> AcceptanceBound.margin(match, asked.pattern(), asked.more()))
        .orElse(Double.NEGATIVE_INFINITY);
  }
}
