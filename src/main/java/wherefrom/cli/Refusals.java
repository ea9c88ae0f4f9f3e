package wherefrom.cli;

import java.util.function.Supplier;

/** What the job refuses in a sentence is bad input of the call. */
final class Refusals {
  private Refusals() {}

  /** Does it, unless the job refuses it. */
  static void heed(Runnable deed) throws BadInput {
    get(
        () -> {
          deed.run();
          return true;
        });
  }

  /** What comes of it, unless the job refuses it. */
  static <T> T get(Supplier<T> deed) throws BadInput {
    return get(deed, "");
  }

  /**
   * What comes of it, unless the job refuses it.
   *
   * @param more said after the refusal; may be empty
   */
  static <T> T get(Supplier<T> deed, String more) throws BadInput {
    try {
      return deed.get();
    } catch (IllegalArgumentException e) {
      throw new BadInput((e.getMessage() + " " + more).strip());
    }
  }
}
