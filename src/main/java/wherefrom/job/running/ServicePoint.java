package wherefrom.job.running;

import java.util.Arrays;
import java.util.Optional;

/**
 * What is seen to after the run-in, and once more after the first miles; what to do there is common
 * practice, no source.
 */
public enum ServicePoint {
  OIL(
      "oil",
      "Oil and filter out",
      "Let it cool to warm. Gloves on. Drain, change the filter. Cut it open: look at its pleats.",
      false),
  LEVELS(
      "levels",
      "Levels and leaks",
      "Engine cold, cap off: top up coolant. Look for leaks. Oil full.",
      false),
  TORQUE(
      "torque",
      "Torque again",
      "Only as the gasket's sheet says, cold unless it says hot. Never bolts tightened by angle.",
      false),
  LASH("lash", "Lash again", "As the cam's sheet says. With hydraulic lifters, listen.", false),
  OIL_AGAIN("oil-again", "Oil and filter again", "Cut the filter open once more.", true),
  TORQUE_AGAIN("torque-again", "Bolts again", "Manifolds, mounts, and heads where asked.", true),
  LASH_AGAIN(
      "lash-again",
      "Lash once more",
      "It grew? Check nut, tip and pushrod, then the lobe's lift.",
      true);

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

  public static Optional<ServicePoint> find(String key) {
    return Arrays.stream(values()).filter(point -> point.key.equals(key)).findFirst();
  }
}
