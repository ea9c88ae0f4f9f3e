package wherefrom.job.puttogether;

/** What is seen to by hand before every first start (common practice, no source). */
public enum StartPoint {
  OIL(
      "oil",
      "Oil and additive",
      "A new filter and fresh oil are in. Write which, and which additive."),
  TURN("turn", "Turn it by hand", "Two full turns, plugs out. Nothing may touch or bind."),
  PRIME(
      "prime",
      "Prime the oil",
      "Drive the oil pump, or push oil in from a pressure tank. Turn the crank now and then"
          + " until oil runs at every rocker. Set the distributor after that."),
  PRESSURE("pressure", "Oil pressure seen", "The gauge showed pressure while the pump was driven."),
  TIMING(
      "timing", "Static timing set", "Write the degrees. Cylinder 1 is on its compression stroke."),
  FUEL("fuel", "Fuel", "Fresh fuel is in. Lines are tight, bowl full."),
  COOLANT("coolant", "Coolant filled and bled", "It is full, and no air is left in it."),
  LEAKS("leaks", "Fill and look", "Oil, coolant and fuel lines are tight. No tool is left on it."),
  EXTINGUISHER("extinguisher", "Fire extinguisher", "It stands in reach, and it is charged."),
  SECOND("second", "Second person", "One at the key, one who looks. Write who.");

  private final String key;
  private final String title;
  private final String how;

  StartPoint(String key, String title, String how) {
    this.key = key;
    this.title = title;
    this.how = how;
  }

  /** As the logbook and the command line name it; never changed. */
  public String key() {
    return key;
  }

  public String title() {
    return title;
  }

  /** What is to be done, in a sentence or two. */
  public String how() {
    return how;
  }
}
