package wherefrom.phone;

/** A request that is not taken; the sentence is for the person at the phone. */
final class Refused extends Exception {
  private static final long serialVersionUID = 1;
  private static final int NOT_JOINED = 401;

  /** What came was good, and there is no room for it: RFC 4918, section 11.5. */
  static final int NO_ROOM = 507;

  private final int status;

  Refused(int status, String sentence) {
    super(sentence, null, false, false);
    this.status = status;
  }

  /** Of somebody who has not joined, or was put out. */
  static Refused notJoined() {
    return new Refused(NOT_JOINED, "Not joined. Photograph the code on the big screen.");
  }

  Response answer() {
    return Response.said(status, String.valueOf(getMessage()));
  }
}
