package wherefrom.rules.debris;

/** Where debris is found. The names stand in logbooks: they never change. */
public enum DebrisPlace {
  DIPSTICK("dipstick", false),
  DRAINED_OIL("drained oil", false),
  MAGNETIC_PLUG("magnetic plug", false),
  FILTER_PLEATS("filter pleats", false),
  PAN("oil pan", false),
  PICKUP_SCREEN("pickup screen", false),
  VALLEY("valley under the lifters", false),
  FRONT_COVER("behind the front cover", false),
  GALLERY("oil gallery", true),
  MAINS("main bearings", true);

  private final String words;
  private final boolean pastFilter;

  DebrisPlace(String words, boolean pastFilter) {
    this.words = words;
    this.pastFilter = pastFilter;
  }

  public String words() {
    return words;
  }

  /** Whether oil that comes here has passed the filter. */
  public boolean isPastFilter() {
    return pastFilter;
  }
}
