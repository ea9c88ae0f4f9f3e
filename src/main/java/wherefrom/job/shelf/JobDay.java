package wherefrom.job.shelf;

/** The five days of a job, in their order. */
public enum JobDay {
  TAGS("Tags"),
  APART("Apart"),
  INSPECT("Inspect"),
  TOGETHER("Together"),
  RECORD("Record");

  private final String word;

  JobDay(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
