package wherefrom.cli;

/** Something in the call is wrong; the message says what, and what to do, in a sentence. */
class BadInput extends Exception {
  private static final long serialVersionUID = 1;

  private final String usage;

  BadInput(String sentence) {
    this(sentence, "");
  }

  /**
   * @param usage how the command is called; empty where that was right
   */
  BadInput(String sentence, String usage) {
    super(sentence);
    this.usage = usage;
  }

  /** How a call ends that has this in it. */
  Status status() {
    return Status.BAD_INPUT;
  }

  final String sentence() {
    return String.valueOf(getMessage());
  }

  /** The sentence, and the usage on a line of its own. */
  final String lines() {
    return usage.isEmpty() ? sentence() : sentence() + System.lineSeparator() + usage;
  }
}
