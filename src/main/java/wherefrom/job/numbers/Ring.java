package wherefrom.job.numbers;

import java.util.Arrays;
import java.util.Optional;
import wherefrom.engine.Site;

/** The rings of a piston whose gap counts; the id stands in sheets, in tables and in commands. */
public enum Ring {
  TOP("top", "top ring", "ring-gap", "top"),
  SECOND("second", "second ring", "ring-gap", "second"),
  UPPER_RAIL("upper-rail", "upper oil rail", "oil-rail-gap", "rail"),
  LOWER_RAIL("lower-rail", "lower oil rail", "oil-rail-gap", "rail");

  private final String id;
  private final String words;
  private final String plan;
  private final String sort;

  Ring(String id, String words, String plan, String sort) {
    this.id = id;
    this.words = words;
    this.plan = plan;
    this.sort = sort;
  }

  /** Also the station at which its gap is read. */
  public String id() {
    return id;
  }

  /** The plan of readings that reads its gap. */
  public String plan() {
    return plan;
  }

  /** Under which name its wanted gap is kept: both rails want one gap. */
  String sort() {
    return sort;
  }

  /** {@code cylinder 3, top ring}. */
  public String wordsAt(String where) {
    return "cylinder " + briefAt(where);
  }

  /** The same without the word: {@code 3, top ring}. */
  String briefAt(String where) {
    return cylinder(where) + ", " + words;
  }

  /**
   * The number of the cylinder whose bore has this key.
   *
   * @throws java.util.NoSuchElementException where it is the key of no cylinder
   */
  static int cylinder(String where) {
    return Site.of(where).findCylinder().orElseThrow();
  }

  /** {@code top ring}, {@code second ring}, {@code oil rails}. */
  public String sortWords() {
    return this == UPPER_RAIL || this == LOWER_RAIL ? "oil rails" : words;
  }

  public static Optional<Ring> find(String id) {
    return Arrays.stream(values()).filter(ring -> ring.id.equals(id)).findFirst();
  }
}
