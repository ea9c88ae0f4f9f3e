package wherefrom.cli;

/** Something in the call is wrong; the message says what, and what to do, in a sentence. */
class BadInput extends Exception {
  private static final long serialVersionUID = 1;

  BadInput(String sentence) {
    super(sentence);
  }

  /** How a call ends that has this in it. */
  Status status() {
    return Status.BAD_INPUT;
  }

  final String sentence() {
    return String.valueOf(getMessage());
  }
}
