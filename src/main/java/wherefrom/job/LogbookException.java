package wherefrom.job;

/** The logbook could not be read or written. The message is a plain sentence for the person. */
public class LogbookException extends RuntimeException {
  public LogbookException(String sentence) {
    super(sentence);
  }

  public LogbookException(String sentence, Throwable cause) {
    super(sentence, cause);
  }
}
