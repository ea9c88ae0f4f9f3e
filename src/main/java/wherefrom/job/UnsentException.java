package wherefrom.job;

/**
 * The store was out of reach while an act was sent: nobody knows whether it is written. It must not
 * be shown as done; sent again it is written once.
 */
public final class UnsentException extends LogbookException {
  public UnsentException(String sentence, Throwable cause) {
    super(sentence, cause);
  }
}
