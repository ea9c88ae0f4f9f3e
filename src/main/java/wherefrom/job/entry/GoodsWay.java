package wherefrom.job.entry;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What is measured on one of the things that came. */
public enum GoodsWay {
  WALL("wall at the crown"),
  INSIDE("inside diameter, fitted and torqued"),
  DIAMETER("diameter"),
  THICKNESS("thickness"),
  LENGTH("length");

  private final String words;

  GoodsWay(String words) {
    this.words = words;
  }

  /** As it is asked for: {@code wall at the crown}. */
  public String words() {
    return words;
  }

  /** As a command names it: {@code wall}. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static Optional<GoodsWay> find(String key) {
    return Arrays.stream(values()).filter(way -> way.key().equals(key)).findFirst();
  }
}
