package wherefrom.engine;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Flat lifters wear in to one lobe for life; roller lifters carry a wheel. */
public enum LifterType {
  FLAT,
  ROLLER;

  /** {@code flat} or {@code roller}, as it is said of a new lifter and stands in logbooks. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static Optional<LifterType> find(String id) {
    return Arrays.stream(values()).filter(type -> type.id().equals(id)).findFirst();
  }
}
