package wherefrom.job;

/** The logbook could not be read or written. The message is a plain sentence for the person. */
public class LogbookException extends RuntimeException {
  public LogbookException(String sentence) {
    super(sentence);
  }

  public LogbookException(String sentence, Throwable cause) {
    super(sentence, cause);
  }

  /**
   * The sentence of a deed that was refused or could not be written.
   *
   * @throws UnsentException where it was sent and nobody knows what became of it: that passes on to
   *     whoever sends it again
   */
  public static String sentence(RuntimeException why) {
    if (why instanceof UnsentException unsent) {
      throw unsent;
    }
    return String.valueOf(why.getMessage());
  }
}
