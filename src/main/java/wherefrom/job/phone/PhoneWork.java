package wherefrom.job.phone;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import wherefrom.job.puttogether.FitMode;

/** What is worked on at a phone. */
public enum PhoneWork {
  TAKE_APART(Optional.empty()),
  PUT_TOGETHER(Optional.of(FitMode.SCAN_BOTH)),
  FOLLOW_THE_LIST(Optional.of(FitMode.FOLLOW_THE_LIST)),
  WHERE_DOES_THIS_GO(Optional.of(FitMode.WHERE_DOES_THIS_GO));

  private final Optional<FitMode> mode;

  PhoneWork(Optional<FitMode> mode) {
    this.mode = mode;
  }

  /** The work with this {@link #key()}. */
  public static Optional<PhoneWork> find(String key) {
    return Arrays.stream(values()).filter(work -> work.key().equals(key)).findFirst();
  }

  /** The name that a phone says. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** How parts go in; empty where they come out. */
  Optional<FitMode> mode() {
    return mode;
  }
}
