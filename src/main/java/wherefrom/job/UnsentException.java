package wherefrom.job;

/**
 * The store was out of reach while an act was sent: nobody knows whether it is written. It must not
 * be shown as done; sent again it is written once.
 */
public final class UnsentException extends LogbookException {
  private boolean goesOn;

  public UnsentException(String sentence, Throwable cause) {
    super(sentence, cause);
  }

  /**
   * Of a press that writes nothing twice: where the act was written it is done again all the same,
   * for what is left of it and for what it shows.
   */
  public void goOn() {
    goesOn = true;
  }

  /** Whether there is more to the press than the act. */
  public boolean goesOn() {
    return goesOn;
  }
}
