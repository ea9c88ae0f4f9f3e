package wherefrom.phone;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.function.Consumer;

/**
 * Random words that only who was given them knows. The words themselves are not kept where they can
 * be compared by their hash, so that how long a comparison takes tells nothing of them.
 */
final class Secret {
  private final byte[] hash;

  private Secret(byte[] hash) {
    this.hash = hash.clone();
  }

  static Secret of(String words) {
    return new Secret(hash(words));
  }

  /**
   * Fresh random words, letters and digits that an address takes.
   *
   * @param bytes of chance in them; at least 16, which are 128 bits
   */
  static String words(Consumer<byte[]> random, int bytes) {
    byte[] chance = new byte[bytes];
    random.accept(chance);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(chance);
  }

  boolean is(String words) {
    return MessageDigest.isEqual(hash, hash(words));
  }

  private static byte[] hash(String words) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(words.getBytes(StandardCharsets.UTF_8));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
