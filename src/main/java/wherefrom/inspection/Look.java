package wherefrom.inspection;

/** The answer of a quick test. */
public enum Look {
  NOT_LOOKED("not looked at"),
  PASS("pass"),
  SUSPECT("suspect"),
  FAIL("fail");

  private final String word;

  Look(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
