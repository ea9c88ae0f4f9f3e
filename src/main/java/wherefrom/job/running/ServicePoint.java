package wherefrom.job.running;

import java.util.Arrays;
import java.util.Optional;

/** What is seen to after the run-in, and once more after the first miles. */
public enum ServicePoint {
  LEVELS(
      "levels",
      "Levels and leaks",
      "Oil and coolant full again. Nothing drips, nothing blows.",
      false),
  OIL(
      "oil",
      "Oil and filter out",
      "Change both while warm. Cut the filter open and look at its pleats.",
      false),
  TORQUE(
      "torque",
      "Torque again",
      "Head and manifold bolts, where the gasket's sheet asks for it.",
      false),
  LASH("lash", "Lash again", "As the cam's sheet says. With hydraulic lifters, listen.", false),
  OIL_AGAIN("oil-again", "Oil and filter again", "Cut the filter open once more.", true),
  TORQUE_AGAIN("torque-again", "Bolts again", "Manifolds, mounts, and heads where asked.", true),
  LASH_AGAIN("lash-again", "Lash once more", "A lash that grew means a lobe that wears.", true);

  private final String key;
  private final String title;
  private final String how;
  private final boolean afterMiles;

  ServicePoint(String key, String title, String how, boolean afterMiles) {
    this.key = key;
    this.title = title;
    this.how = how;
    this.afterMiles = afterMiles;
  }

  /** As the logbook and the command line name it; never changed. */
  public String key() {
    return key;
  }

  public String title() {
    return title;
  }

  public String how() {
    return how;
  }

  /** Whether it waits for the first miles; else it is due as soon as the run-in is done. */
  public boolean isAfterMiles() {
    return afterMiles;
  }

  /** Whether what is drained or cut open may hold debris. */
  public boolean showsDebris() {
    return this == OIL || this == OIL_AGAIN;
  }

  public static Optional<ServicePoint> find(String key) {
    return Arrays.stream(values()).filter(point -> point.key.equals(key)).findFirst();
  }
}
