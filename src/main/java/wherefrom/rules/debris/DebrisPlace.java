package wherefrom.rules.debris;

/** Where debris is found. The names stand in logbooks: they never change. */
public enum DebrisPlace {
  DIPSTICK("dipstick", "dipstick", false),
  DRAINED_OIL("drained", "drained oil", false),
  MAGNETIC_PLUG("plug", "magnetic plug", false),
  FILTER_PLEATS("filter", "filter pleats", false),
  PAN("pan", "oil pan", false),
  PICKUP_SCREEN("pickup", "pickup screen", false),
  VALLEY("valley", "valley under the lifters", false),
  FRONT_COVER("cover", "behind the front cover", false),
  GALLERY("gallery", "oil gallery", true),
  MAINS("mains", "main bearings", true);

  private final String brief;
  private final String words;
  private final boolean pastFilter;

  DebrisPlace(String brief, String words, boolean pastFilter) {
    this.brief = brief;
    this.words = words;
    this.pastFilter = pastFilter;
  }

  /** One word, where room is short. */
  public String brief() {
    return brief;
  }

  public String words() {
    return words;
  }

  /** Whether oil that comes here has passed the filter. */
  public boolean isPastFilter() {
    return pastFilter;
  }
}
