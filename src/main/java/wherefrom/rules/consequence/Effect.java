package wherefrom.rules.consequence;

/** What a consequence does. */
public enum Effect {
  /** The used parts may not go back in. A passed check lifts it, where one is named. */
  FORBIDDEN("may not be used again"),
  /** The used parts are replaced by new ones. */
  MUST_BE_NEW("must be new"),
  /** Bought new, and not tracked by tags. */
  BUY("buy new"),
  /** Work of the machine shop that is paid for. */
  WORK("work to pay for"),
  /** Checked before the parts concerned go in; they wait for it. */
  CHECK_FIRST("check before fitting"),
  /** Checked once the parts are in, before the engine is closed; no part waits for it. */
  CHECK_AFTER("check before closing"),
  /** Said, and nothing waits for it. */
  KNOW("to know");

  private final String words;

  Effect(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }

  /** Whether used parts at the places concerned are banned. */
  public boolean bans() {
    return this == FORBIDDEN || this == MUST_BE_NEW;
  }

  /** Whether it stands open until someone answers it. */
  public boolean isCheck() {
    return this == CHECK_FIRST || this == CHECK_AFTER;
  }
}
