package wherefrom.job.phone;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import wherefrom.job.puttogether.FitMode;

/** What is worked on at a phone. */
public enum PhoneWork {
  TAKE_APART("Take apart", Optional.empty()),
  PUT_TOGETHER("Put together", Optional.of(FitMode.SCAN_BOTH)),
  FOLLOW_THE_LIST("Follow the list", Optional.of(FitMode.FOLLOW_THE_LIST)),
  WHERE_DOES_THIS_GO("Where does this go?", Optional.of(FitMode.WHERE_DOES_THIS_GO));

  private final String words;
  private final Optional<FitMode> mode;

  PhoneWork(String words, Optional<FitMode> mode) {
    this.words = words;
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

  public String words() {
    return words;
  }

  /** How parts go in; empty where they come out. */
  Optional<FitMode> mode() {
    return mode;
  }
}
