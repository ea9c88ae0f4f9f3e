package wherefrom.logbook;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Arrays;
import java.util.Optional;
import wherefrom.job.LoggedEntry;
import wherefrom.job.entry.JobEntry;

/**
 * One line of a logbook file: a JSON object whose last field is the CRC-32C of all bytes before
 * that field.
 */
final class LogLine {
  private static final byte[] CRC_FIELD = ",\"crc\":\"".getBytes(StandardCharsets.US_ASCII);
  private static final byte[] END = "\"}".getBytes(StandardCharsets.US_ASCII);
  private static final byte[] DIGITS = "0123456789abcdef".getBytes(StandardCharsets.US_ASCII);
  private static final int CRC_DIGITS = 8;
  private static final int TRAILER = CRC_FIELD.length + CRC_DIGITS + END.length;

  /** What every line of an entry begins with. */
  static final byte[] ENTRY_START = "{\"seq\":".getBytes(StandardCharsets.US_ASCII);

  private LogLine() {}

  /** An object as a line, without its line end. */
  static byte[] seal(ObjectNode object) throws IOException {
    byte[] json = EntryCodec.MAPPER.writeValueAsBytes(object);
    int guarded = json.length - 1;
    byte[] line = Arrays.copyOf(json, guarded + TRAILER);
    System.arraycopy(CRC_FIELD, 0, line, guarded, CRC_FIELD.length);
    digits(Sums.crc(json, 0, guarded), line, guarded + CRC_FIELD.length);
    System.arraycopy(END, 0, line, line.length - END.length, END.length);
    return line;
  }

  /** A check sum as small hexadecimal digits. */
  private static void digits(int crc, byte[] line, int at) {
    for (int digit = 0; digit < CRC_DIGITS; digit++) {
      line[at + digit] = DIGITS[crc >>> (4 * (CRC_DIGITS - 1 - digit)) & 0xf];
    }
  }

  /** Whether a line is whole in itself. */
  static boolean isSealed(byte[] file, int from, int to) {
    int guarded = to - from - TRAILER;
    if (guarded < 1) {
      return false;
    }
    byte[] wanted = new byte[CRC_DIGITS];
    digits(Sums.crc(file, from, guarded), wanted, 0);
    int at = from + guarded;
    return isAt(file, at, CRC_FIELD)
        && isAt(file, at + CRC_FIELD.length, wanted)
        && isAt(file, to - END.length, END);
  }

  private static boolean isAt(byte[] file, int at, byte[] wanted) {
    return Arrays.equals(file, at, at + wanted.length, wanted, 0, wanted.length);
  }

  /** A logged entry as a line, without its line end. */
  static byte[] of(LoggedEntry logged, String before) throws IOException {
    ObjectNode object = EntryCodec.MAPPER.createObjectNode();
    object.put("seq", logged.sequence());
    object.put("time", logged.time().toString());
    ByFields.put(object, logged.by());
    object.put("type", EntryTypes.of(logged.entry()));
    object.set("body", EntryCodec.body(logged.entry()));
    object.put("prev", before);
    return seal(object);
  }

  /** What a sealed line says. */
  static JsonNode json(LineSlice line) throws IOException {
    return EntryCodec.MAPPER.readTree(line.file(), line.offset(), line.length());
  }

  /**
   * The entry of a line that is sealed.
   *
   * @param before what it must say of the line before it; empty when that is not known
   */
  static LoggedEntry read(LineSlice line, long sequence, Optional<String> before)
      throws IOException {
    JsonNode object = json(line);
    long found = object.path("seq").asLong();
    if (found != sequence) {
      throw new IOException("it is number " + found + ", number " + sequence + " is due");
    }
    if (before.isPresent() && !object.path("prev").asText().equals(before.get())) {
      throw new IOException("it does not follow the line before it");
    }
    try {
      Instant time = Times.parse(object.path("time").asText());
      JobEntry entry = EntryCodec.entry(object.path("type").asText(), object.path("body"));
      return new LoggedEntry(sequence, time, ByFields.read(object), entry);
    } catch (DateTimeException e) {
      throw new IOException("its time is not understood", e);
    }
  }
}
