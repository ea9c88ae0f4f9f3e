package wherefrom.cli;

/** How a command ends on one kind of answer: with a row, or with what is wrong with the input. */
@FunctionalInterface
interface Ending {
  Status end() throws BadInput;

  /** Says what is wrong. */
  static Ending bad(String sentence) {
    return () -> {
      throw new BadInput(sentence);
    };
  }
}
