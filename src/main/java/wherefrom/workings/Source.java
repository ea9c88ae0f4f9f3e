package wherefrom.workings;

/** Where a formula or a figure comes from, as shown beside it. */
public record Source(Standing standing, String text) {

  /** How far a source can be trusted. */
  public enum Standing {
    PUBLISHED,
    WORKED_OUT,
    COMMON_PRACTICE,
    FROM_MEMORY
  }

  /** A printed source, named so that it can be found again. */
  public static Source published(String text) {
    return new Source(Standing.PUBLISHED, text);
  }

  /** Follows from geometry or from another working's formula. */
  public static Source workedOut(String text) {
    return new Source(Standing.WORKED_OUT, "worked out from " + text);
  }

  public static Source commonPractice() {
    return new Source(Standing.COMMON_PRACTICE, "common practice, no source");
  }

  public static Source fromMemory() {
    return new Source(Standing.FROM_MEMORY, "from memory, unverified");
  }
}
