package wherefrom.doors;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/** Right inputs gone wrong, and inputs that were never right, from a seed. */
final class Nonsense {
  private static final List<String> BITS =
      List.of(
          "0",
          "-1",
          "2147483647",
          "9999999999999999999",
          "1e999",
          "1e-999999999",
          "NaN",
          "0x10",
          "null",
          "true",
          "{",
          "}",
          "[",
          "]",
          "\"",
          "\\",
          "\\u0000",
          ",",
          ":",
          "\n",
          "\r\n",
          "\t",
          "\u0000",
          "\uFEFF",
          "\u202E",
          "\uD83D",
          "é",
          "١٢٣",
          "..",
          "/",
          "../../",
          "~",
          "%s",
          "%n",
          "=1+1",
          "--",
          "-",
          "--job",
          "@3EX",
          "1/0",
          "0,0",
          "1.2.3",
          "½",
          "in",
          "mm",
          " ");
  private static final int MOST_REPEAT = 3_000;

  private final SplittableRandom random;

  Nonsense(long seed) {
    random = new SplittableRandom(seed);
  }

  int below(int bound) {
    return random.nextInt(bound);
  }

  <T> T one(List<T> of) {
    return of.get(below(of.size()));
  }

  /** A few words of nothing in particular. */
  String text() {
    StringBuilder text = new StringBuilder();
    for (int at = below(6); at >= 0; at--) {
      text.append(bit());
    }
    return text.toString();
  }

  private String bit() {
    return switch (below(5)) {
      case 0 -> Integer.toString(random.nextInt());
      case 1 -> String.valueOf((char) random.nextInt(Character.MAX_VALUE));
      case 2 -> one(BITS).repeat(1 + below(below(50) == 0 ? MOST_REPEAT : 3));
      default -> one(BITS);
    };
  }

  /** The same bytes but for one to four changes. */
  byte[] changed(byte[] right) {
    byte[] bytes = right.clone();
    for (int changes = below(4); changes >= 0; changes--) {
      bytes = changedOnce(bytes);
    }
    return bytes;
  }

  private byte[] changedOnce(byte[] bytes) {
    if (bytes.length == 0) {
      return text().getBytes(StandardCharsets.UTF_8);
    }
    int from = below(bytes.length);
    int to = from + below(Math.min(40, bytes.length - from) + 1);
    return switch (below(6)) {
      case 0 -> flipped(bytes, from);
      case 1 -> Arrays.copyOf(bytes, from);
      case 2 -> spliced(bytes, from, from, text().getBytes(StandardCharsets.UTF_8));
      case 3 -> spliced(bytes, from, to, text().getBytes(StandardCharsets.UTF_8));
      case 4 -> spliced(bytes, from, to, new byte[0]);
      default -> spliced(bytes, from, from, Arrays.copyOfRange(bytes, from, to));
    };
  }

  private byte[] flipped(byte[] bytes, int at) {
    byte[] flipped = bytes.clone();
    flipped[at] = (byte) random.nextInt();
    return flipped;
  }

  private static byte[] spliced(byte[] bytes, int from, int to, byte[] between) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(bytes, 0, from);
    out.writeBytes(between);
    out.write(bytes, to, bytes.length - to);
    return out.toByteArray();
  }
}
