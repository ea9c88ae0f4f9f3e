package wherefrom.scan.geometry;

/**
 * Expected values of a {@link LabelPattern} from one part on, with what is the same at any pose.
 */
final class PatternValues {
  final float[] values;
  final int firstPart;

  /** Points of each zone. */
  final int[] count = new int[LabelPattern.ZONES];

  /** Mean and variance of the values of each zone. */
  final double[] mean = new double[LabelPattern.ZONES];

  final double[] variance = new double[LabelPattern.ZONES];

  PatternValues(LabelPattern pattern, float[] values, int firstPart) {
    this.values = values;
    this.firstPart = firstPart;
    for (int part = firstPart; part < 2 * LabelPattern.ZONES; part++) {
      int zone = part % LabelPattern.ZONES;
      for (int at = pattern.parts[part]; at < pattern.parts[part + 1]; at++) {
        mean[zone] += values[at];
        variance[zone] += values[at] * values[at];
        count[zone]++;
      }
    }
    for (int zone = 0; zone < LabelPattern.ZONES; zone++) {
      mean[zone] /= count[zone];
      variance[zone] = variance[zone] / count[zone] - mean[zone] * mean[zone];
    }
  }
}
