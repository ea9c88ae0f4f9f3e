package wherefrom.job.takeapart;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** In which order the parts are proposed to come out; chosen once, for this machine. */
public enum OutOrder {
  CYLINDER("cylinder by cylinder"),
  BANK("bank by bank"),
  KIND("all of one kind");

  private final String words;

  OutOrder(String words) {
    this.words = words;
  }

  /** The order with this {@link #key()}. */
  public static Optional<OutOrder> find(String key) {
    return Arrays.stream(values()).filter(order -> order.key().equals(key)).findFirst();
  }

  /** The name in files. Never changes. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  public String words() {
    return words;
  }
}
