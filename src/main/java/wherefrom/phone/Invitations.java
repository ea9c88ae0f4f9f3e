package wherefrom.phone;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.LongSupplier;

/**
 * The one-time key of the next phone. It is used up by the phone that joins with it; wrong ones are
 * slowed by address, and after a few no key counts until a person asks for a new one.
 */
final class Invitations {
  /** 128 bits. */
  private static final int KEY_BYTES = 16;

  private static final int NUMBERS = 900;
  private static final int FIRST_NUMBER = 100;
  private static final int MOST_ADDRESSES = 256;
  private static final long FIRST_WAIT_MS = 500;
  private static final int MOST_DOUBLINGS = 6;
  private static final int TOO_MANY = 429;
  private static final int FORBIDDEN = 403;

  /**
   * A key and what goes with it.
   *
   * @param number that phone and window both show
   */
  record Key(String words, String number) {}

  /** How long an address must wait, and how often it was wrong. */
  private record Wrong(int times, long until) {}

  private final Limits limits;
  private final LongSupplier nanos;
  private final Consumer<byte[]> random;
  private final Map<String, Wrong> wrong = new LinkedHashMap<>();
  private Optional<Key> key = Optional.empty();
  private long made;
  private int wrongInAll;
  private boolean locked;

  Invitations(Limits limits, LongSupplier nanos, Consumer<byte[]> random) {
    this.limits = limits;
    this.nanos = nanos;
    this.random = random;
  }

  /** A person asks for a new key: the one before is worth nothing, wrong ones are forgotten. */
  synchronized void fresh() {
    locked = false;
    wrongInAll = 0;
    make();
  }

  /**
   * A new key that nobody asked for, in place of one that was used or is too old. After too many
   * wrong ones there is none.
   *
   * @return whether there is one
   */
  synchronized boolean renew() {
    if (!locked) {
      make();
    }
    return !locked;
  }

  private void make() {
    byte[] chance = new byte[2];
    random.accept(chance);
    int any = ((chance[0] & 0xFF) << 8) | (chance[1] & 0xFF);
    key =
        Optional.of(
            new Key(
                Secret.words(random, KEY_BYTES), Integer.toString(FIRST_NUMBER + any % NUMBERS)));
    made = nanos.getAsLong();
  }

  /** The key that counts; empty where none does. */
  synchronized Optional<Key> current() {
    return key.filter(one -> !isOld());
  }

  synchronized boolean isOld() {
    return nanos.getAsLong() - made > limits.key().toNanos();
  }

  /**
   * Holds words against the key. It can be used yet.
   *
   * @param address whose words they are
   * @throws Refused where they are not the key, or came too soon after wrong ones
   */
  synchronized Key check(String words, String address) throws Refused {
    Wrong before = wrong.getOrDefault(address, new Wrong(0, Long.MIN_VALUE));
    if (before.times() > 0 && nanos.getAsLong() - before.until() < 0) {
      throw new Refused(TOO_MANY, "Wait a moment, then try again.");
    }
    Optional<Key> right = current().filter(one -> Secret.of(one.words()).is(words));
    if (right.isEmpty()) {
      count(address, before);
      throw new Refused(
          FORBIDDEN, "This code was used or is too old. Photograph the one on the big screen.");
    }
    return right.get();
  }

  private void count(String address, Wrong before) {
    long wait = FIRST_WAIT_MS << Math.min(MOST_DOUBLINGS, before.times());
    if (wrong.size() >= MOST_ADDRESSES && !wrong.containsKey(address)) {
      wrong.remove(wrong.keySet().iterator().next());
    }
    wrong.put(
        address,
        new Wrong(before.times() + 1, nanos.getAsLong() + Duration.ofMillis(wait).toNanos()));
    wrongInAll++;
    if (wrongInAll >= limits.wrongKeys()) {
      key = Optional.empty();
      locked = true;
    }
  }

  /**
   * Uses the key up.
   *
   * @throws Refused as {@link #check} does
   */
  synchronized void use(String words, String address) throws Refused {
    check(words, address);
    key = Optional.empty();
    wrongInAll = 0;
    wrong.remove(address);
  }
}
