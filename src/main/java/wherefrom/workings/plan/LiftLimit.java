package wherefrom.workings.plan;

import wherefrom.workings.Source;
import wherefrom.workings.catalogue.CoilBind;
import wherefrom.workings.catalogue.Minimum;
import wherefrom.workings.catalogue.RetainerToSeal;

/** What can stop a valve from lifting farther, with the usual least margin. */
public enum LiftLimit {
  COIL_BIND("coil-bind", "coil bind"),
  SEAL("retainer-to-seal", "retainer to seal"),
  SLOT("rocker-slot", "rocker slot");

  private static final Minimum SLOT_LEAST = new Minimum("0.030 in", "0.762", Source.fromMemory());

  private final String key;
  private final String words;

  LiftLimit(String key, String words) {
    this.key = key;
    this.words = words;
  }

  public String key() {
    return key;
  }

  public String words() {
    return words;
  }

  public Minimum least() {
    return switch (this) {
      case COIL_BIND -> CoilBind.LEAST;
      case SEAL -> RetainerToSeal.LEAST;
      case SLOT -> SLOT_LEAST;
    };
  }
}
