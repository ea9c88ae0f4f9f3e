package wherefrom.workings.plan;

import wherefrom.workings.catalogue.basis.Gap;

/** What can stop a valve from lifting farther. */
public enum LiftLimit {
  COIL_BIND(Gap.COIL_BIND, "coil bind"),
  SEAL(Gap.RETAINER_TO_SEAL, "retainer to seal"),
  SLOT(Gap.ROCKER_SLOT, "rocker slot");

  private final Gap gap;
  private final String words;

  LiftLimit(Gap gap, String words) {
    this.gap = gap;
    this.words = words;
  }

  public Gap gap() {
    return gap;
  }

  public String key() {
    return gap.key();
  }

  public String words() {
    return words;
  }
}
