package wherefrom.inspection.measure;

import java.util.Arrays;

/** The two ends at which a journal is read, each with the station of a shell's wall beside it. */
public enum JournalEnd {
  FRONT("front", "front-vertical", "front-horizontal"),
  REAR("rear", "rear-vertical", "rear-horizontal");

  private final String wall;
  private final String upright;
  private final String across;

  JournalEnd(String wall, String upright, String across) {
    this.wall = wall;
    this.upright = upright;
    this.across = across;
  }

  /** The key of the station at which a shell's wall is read. */
  public String wall() {
    return wall;
  }

  /**
   * The end of a station of a journal.
   *
   * @throws java.util.NoSuchElementException where a journal has no such station
   */
  public static JournalEnd of(Station station) {
    return Arrays.stream(values())
        .filter(end -> end.upright.equals(station.key()) || end.across.equals(station.key()))
        .findFirst()
        .orElseThrow();
  }
}
