package wherefrom.inspection;

/** What the person decided to do with a part. */
public enum Decision {
  REUSE("reuse"),
  MACHINE("machine"),
  REPLACE("replace");

  private final String word;

  Decision(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
