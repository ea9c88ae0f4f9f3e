package wherefrom.doors;

/**
 * A way in for what somebody else made.
 *
 * @param name for the report
 * @param share how many of a thousand inputs come to it
 */
record Door(String name, int share, Visit visit) {

  /** Brings one input in. */
  @FunctionalInterface
  interface Visit {
    /**
     * @return what the program said against it, a sentence; empty when it was taken
     * @throws Exception where the door refuses by throwing: its message is the sentence
     */
    String of(Nonsense nonsense) throws Exception;
  }
}
