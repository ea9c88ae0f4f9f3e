package wherefrom.phone;

/** A request that is not taken; the sentence is for the person at the phone. */
final class Refused extends Exception {
  private static final long serialVersionUID = 1;

  private final int status;

  Refused(int status, String sentence) {
    super(sentence, null, false, false);
    this.status = status;
  }

  Response answer() {
    return Response.said(status, String.valueOf(getMessage()));
  }
}
