package wherefrom.job.phone;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a key of a phone does. */
public enum PhoneDeed {
  /** Takes a photograph to be read; the phone's own affair until it is sent. */
  PHOTOGRAPH,
  /** Asks for the six digits of a tag; the phone's own affair until they are sent. */
  TYPE,
  /** Takes a photograph that is kept with what the key names. */
  KEEP,
  /** Takes the code that the key names. */
  CODE,
  /** Shows what is due. */
  DUE,
  UNDO,
  /** Works on something else from now on. */
  WORK,
  /** Leaves what is next for later. */
  SKIP,
  /** The part that the key names is out, its tag not scanned. */
  OUT,
  /** All parts whose codes the key names are out. */
  ALL_OUT,
  /** The part that was just fitted is in turned. */
  TURNED,
  /** What stands in the way of a stop is taken out. */
  TAKE_OUT,
  /** The stopped part is laid away. */
  PUT_AWAY,
  /** The stopped part goes elsewhere. */
  OTHER_PLACE,
  /** Asks why the stopped part is fitted all the same. */
  ON_PURPOSE,
  /** Says why, in the words that the key names. */
  REASON,
  /** Fits the stopped part all the same, for the reason that the key names. */
  FIT;

  /** The deed with this {@link #key()}. */
  public static Optional<PhoneDeed> find(String key) {
    return Arrays.stream(values()).filter(deed -> deed.key().equals(key)).findFirst();
  }

  /** The name that a phone says. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Whether it is held for a moment, so that no stray touch does it. */
  public boolean isHeld() {
    return this == FIT || this == TAKE_OUT;
  }
}
