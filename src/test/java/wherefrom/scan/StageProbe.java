package wherefrom.scan;

import java.util.Collection;
import java.util.List;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.Corner;
import wherefrom.parts.TagCode;
import wherefrom.scan.geometry.CameraModel;
import wherefrom.scan.geometry.LabelPattern;
import wherefrom.scan.geometry.Pose;
import wherefrom.scan.grey.Pyramid;
import wherefrom.scan.match.IssuedSymbols;

/** Tells at which stage a tag was lost whose place is known. */
public final class StageProbe {
  private StageProbe() {}

  /** Where a reading ends that does not come to the text. */
  public enum Stage {
    /** No candidate lies on the tag. */
    NOT_FOUND,
    /**
     * A candidate lies on the tag, more than a module off or turned, and would read from its place.
     */
    WRONG_GEOMETRY,
    /** Even from its true place the evidence is too small. */
    MARGIN_TOO_SMALL,
    READ
  }

  /**
   * Reads a picture and looks where the reading ended.
   *
   * @param corners where the symbol truly lies
   */
  public static Stage of(
      GreyImage picture, Collection<TagCode> issued, String text, List<Corner> corners) {
    CameraModel camera = CameraModel.of(picture.width(), picture.height());
    LabelPattern pattern = LabelPattern.printed();
    IssuedSymbols symbols = new IssuedSymbols(issued);
    Pyramid pyramid = Pyramid.of(picture);
    PictureScan scan = new PictureScan(pattern, camera, symbols);
    List<PoseReading> readings = new FirstLook(scan).readings(pyramid);
    scan.retry(pyramid, readings, PipelineReader.RETRIED);
    if (readings.stream().anyMatch(reading -> says(reading, text))) {
      return Stage.READ;
    }
    double x = corners.stream().mapToDouble(Corner::x).average().orElseThrow();
    double y = corners.stream().mapToDouble(Corner::y).average().orElseThrow();
    boolean found =
        readings.stream()
            .anyMatch(
                reading ->
                    Math.hypot(reading.pose().centreX() - x, reading.pose().centreY() - y)
                        < Pose.HALF * reading.pose().module());
    Pose placed = placed(corners);
    PoseReader poses = new PoseReader(pattern, camera, symbols);
    boolean reads =
        says(poses.at(pyramid, placed), text)
            || says(poses.read(pyramid, placed), text)
            || says(poses.read(pyramid, poses.coarse(pyramid, placed)), text)
            || bentReads(poses, pyramid, placed, text);
    if (!reads) {
      return Stage.MARGIN_TOO_SMALL;
    }
    return found ? Stage.WRONG_GEOMETRY : Stage.NOT_FOUND;
  }

  private static boolean bentReads(PoseReader poses, Pyramid pyramid, Pose placed, String text) {
    for (double bend = 0.03; bend < 0.13; bend += 0.02) {
      for (int quarter = 0; quarter < 2; quarter++) {
        Pose bent = placed.bent(bend, quarter, Pose.HALF);
        if (says(poses.read(pyramid, poses.coarse(pyramid, bent)), text)) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean says(PoseReading reading, String text) {
    return reading.text().filter(said -> said.digits().equals(text)).isPresent();
  }

  private static Pose placed(List<Corner> corners) {
    double[] xs = corners.stream().mapToDouble(Corner::x).toArray();
    double[] ys = corners.stream().mapToDouble(Corner::y).toArray();
    return Pose.ofSquare(xs, ys, Pose.HALF);
  }
}
