package wherefrom.cli;

/** Something in the call is wrong; the message says what, and what to do, in a sentence. */
final class BadInput extends Exception {
  private static final long serialVersionUID = 1;

  BadInput(String sentence) {
    super(sentence);
  }

  String sentence() {
    return String.valueOf(getMessage());
  }
}
