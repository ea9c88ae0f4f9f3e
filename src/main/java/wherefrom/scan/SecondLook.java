package wherefrom.scan;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.image.GreyImage;
import wherefrom.scan.find.Threshold;
import wherefrom.scan.geometry.CameraModel;
import wherefrom.scan.geometry.LabelPattern;
import wherefrom.scan.grey.Equalised;
import wherefrom.scan.grey.Pyramid;
import wherefrom.scan.match.AcceptanceBound;
import wherefrom.scan.match.IssuedSymbols;

/**
 * What is done with a still picture on which nothing was read: the likeliest places as crumpled
 * paper, then the picture with its contrast evened out, then a little blurred; at last the
 * likeliest places as labels that go far round a thin rod, then the likeliest finder patterns as
 * parts of such labels, then what the frame bounds along a rod alone.
 */
final class SecondLook {
  private static final List<Threshold> CUTS =
      List.of(new Threshold(0, 14, 4), new Threshold(1, 14, 3));
  private static final int FOLLOWED = 6;
  private static final int WARPED = 4;
  private static final int WRAPPED = 4;

  /** Finder patterns round which labels on a thin rod are looked for. */
  private static final int FACED = 3;

  /** Levels of the pyramid on which the frame across a thin rod is a line of two to five pixels. */
  private static final List<Integer> LINES = List.of(2);

  /** Fit of the pattern of every label below which a second look believes nothing. */
  private static final double LEAST = 0.3;

  private final PictureScan scan;

  SecondLook(LabelPattern pattern, CameraModel camera, IssuedSymbols issued) {
    scan = new PictureScan(pattern, camera, issued, AcceptanceBound.SECOND_LOOK);
  }

  /**
   * Every reading, with and without a text, until one has a text.
   *
   * @param first what the first look made of the picture
   */
  List<PoseReading> readings(GreyImage picture, Pyramid pyramid, List<PoseReading> first) {
    List<PoseReading> readings = new ArrayList<>(likely(scan.warped(pyramid, first, WARPED)));
    if (isNothing(readings)) {
      look(Pyramid.of(Equalised.of(picture)), readings);
    }
    if (isNothing(readings)) {
      look(Pyramid.of(Equalised.softened(picture)), readings);
    }
    if (isNothing(readings)) {
      readings.addAll(scan.wrapped(pyramid, first, WRAPPED));
    }
    if (isNothing(readings)) {
      readings.addAll(scan.faced(pyramid, CUTS, FACED));
    }
    if (isNothing(readings)) {
      readings.addAll(scan.spanned(pyramid, LINES));
    }
    return readings;
  }

  private void look(Pyramid pyramid, List<PoseReading> readings) {
    List<PoseReading> seen = likely(scan.scan(pyramid, CUTS, FOLLOWED));
    readings.addAll(seen);
    if (isNothing(seen)) {
      readings.addAll(scan.warped(pyramid, seen, WARPED / 2));
    }
  }

  private static List<PoseReading> likely(List<PoseReading> readings) {
    return readings.stream().filter(reading -> reading.pattern() > LEAST).toList();
  }

  private static boolean isNothing(List<PoseReading> readings) {
    return readings.stream().allMatch(reading -> reading.text().isEmpty());
  }
}
