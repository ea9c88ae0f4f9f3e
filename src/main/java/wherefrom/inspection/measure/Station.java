package wherefrom.inspection.measure;

import wherefrom.quantity.Dimension;

/** One spot at which a plan asks for a reading. */
public record Station(String key, String words, Dimension dimension) {
  static Station of(String key, String words) {
    return new Station(key, words, Dimension.LENGTH);
  }
}
