package wherefrom.job.shelf;

import java.util.Locale;

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

  /** The name in files. Never changes. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  public String word() {
    return word;
  }
}
