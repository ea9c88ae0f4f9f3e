package wherefrom.logbook;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Texts as the lines of a small file whose last line is the CRC-32C of all bytes before it. Plainer
 * than JSON, so that a thousand of them are read in no time.
 */
final class SealedLines {
  private SealedLines() {}

  static byte[] seal(List<String> texts) {
    StringBuilder lines = new StringBuilder();
    for (String text : texts) {
      lines.append(text.replace("\\", "\\\\").replace("\n", "\\n")).append('\n');
    }
    return lines.append(sum(bytes(lines))).toString().getBytes(StandardCharsets.UTF_8);
  }

  /** The texts again; empty where the sum does not agree. */
  static Optional<List<String>> find(byte[] file) {
    String whole = new String(file, StandardCharsets.UTF_8);
    int end = whole.lastIndexOf('\n') + 1;
    String lines = whole.substring(0, end);
    return whole.substring(end).equals(sum(bytes(lines)))
        ? Optional.of(texts(lines))
        : Optional.empty();
  }

  private static List<String> texts(String lines) {
    String[] parts = lines.split("\n", -1);
    return Arrays.stream(parts, 0, parts.length - 1).map(SealedLines::plain).toList();
  }

  private static String plain(String line) {
    if (line.indexOf('\\') < 0) {
      return line;
    }
    StringBuilder plain = new StringBuilder();
    for (int at = 0; at < line.length(); at++) {
      boolean escaped = line.charAt(at) == '\\' && at + 1 < line.length();
      at += escaped ? 1 : 0;
      plain.append(escaped && line.charAt(at) == 'n' ? '\n' : line.charAt(at));
    }
    return plain.toString();
  }

  private static byte[] bytes(CharSequence text) {
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static String sum(byte[] bytes) {
    return Integer.toHexString(Sums.crc(bytes, 0, bytes.length));
  }
}
