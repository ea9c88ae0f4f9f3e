package wherefrom.job.ports;

/**
 * What a check of a job's files found.
 *
 * @param severity what it means for the person's data
 * @param sentence what is so
 * @param remedy what to do; empty when there is nothing to do
 */
public record CheckFinding(Severity severity, String sentence, String remedy) {

  /** What a finding means for the person's data, the most serious first. */
  public enum Severity {
    /** Something that was kept cannot be read any more. */
    DAMAGED("damaged"),
    /** Nothing that was confirmed is lost, but something is not as it should be. */
    WARNING("warning"),
    /** Good to know. */
    NOTE("note"),
    /** All is well. */
    SOUND("sound");

    private final String word;

    Severity(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }
}
