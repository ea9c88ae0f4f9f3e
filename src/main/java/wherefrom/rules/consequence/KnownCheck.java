package wherefrom.rules.consequence;

/**
 * Checks of rules that the program itself knows the meaning of, beyond what their sentence says.
 * Rule and id stand in logbooks and never change.
 */
public enum KnownCheck {
  /** A used flat lifter's foot is domed. */
  LIFTER_CROWN("R2", "crown"),
  /** The housing was machined with the cap that is on it now. */
  CAP_HOUSING("R23", "align-bore"),
  /** The filter was cut open, and a new one is on. */
  FILTER_CUT("R22", "filter");

  private final String rule;
  private final String id;

  KnownCheck(String rule, String id) {
    this.rule = rule;
    this.id = id;
  }

  public String rule() {
    return rule;
  }

  /** Its name within the rule. */
  public String id() {
    return id;
  }
}
