package wherefrom.rules;

/** A place to which no part of the job belongs, such as that of a kind that is not tracked. */
public final class Unlisted {
  /** What is said where the right part of such a place is asked for. */
  public static final String SENTENCE = "No part is listed for this place.";

  private Unlisted() {}
}
