package wherefrom.logbook;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectReader;
import java.io.IOException;
import java.security.MessageDigest;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wherefrom.job.By;
import wherefrom.job.LoggedEntry;
import wherefrom.job.entry.JobEntry;

/**
 * Reads the lines of a long logbook. A line whose fields stand in the order in which they are
 * written is turned into its entry as it is read; any other, and every line of a kind whose entries
 * take more than that, goes the way over {@link LogLine#read}, which also says what is wrong.
 */
final class LineReader {
  private final Map<String, ObjectReader> readers = new HashMap<>();

  /** Kinds that were not understood as they stand, such as those that have grown fields since. */
  private final Set<String> roundabout = new HashSet<>();

  private final MessageDigest digest = Sums.sha256();

  /** The chain sum of a line. */
  String sum(LineSlice line) {
    digest.update(line.file(), line.offset(), line.length());
    return Sums.chain(digest);
  }

  /**
   * The entry of a line that is sealed.
   *
   * @param before what it must say of the line before it; empty when that is not known
   * @throws IOException with what does not agree
   */
  LoggedEntry read(LineSlice line, long sequence, Optional<String> before) throws IOException {
    Optional<LoggedEntry> quick = find(line, sequence, before);
    return quick.isPresent() ? quick.get() : LogLine.read(line, sequence, before);
  }

  private Optional<LoggedEntry> find(LineSlice line, long sequence, Optional<String> before)
      throws IOException {
    try (JsonParser json =
        EntryCodec.MAPPER.createParser(line.file(), line.offset(), line.length())) {
      if (json.nextToken() != JsonToken.START_OBJECT
          || !isNext(json, "seq", JsonToken.VALUE_NUMBER_INT)
          || json.getLongValue() != sequence
          || !isNext(json, "time", JsonToken.VALUE_STRING)) {
        return Optional.empty();
      }
      Instant time = Times.parse(json.getText());
      By by = by(json);
      Optional<JobEntry> entry = findEntry(json);
      boolean whole = entry.isPresent() && isNext(json, "prev", JsonToken.VALUE_STRING);
      return whole && (before.isEmpty() || json.getText().equals(before.get()))
          ? entry.map(found -> new LoggedEntry(sequence, time, by, found))
          : Optional.empty();
    } catch (JsonProcessingException | IllegalArgumentException | DateTimeException e) {
      return Optional.empty();
    }
  }

  /** By whom it was written, where that is said; the parser then stands at the next field. */
  private static By by(JsonParser json) throws IOException {
    int bench = By.FIRST.bench();
    String who = "";
    json.nextToken();
    if (ByFields.BENCH.equals(json.currentName())) {
      json.nextToken();
      bench = json.getIntValue();
      json.nextToken();
    }
    if (ByFields.WHO.equals(json.currentName())) {
      who = json.nextToken() == JsonToken.VALUE_STRING ? json.getText() : "";
      json.nextToken();
    }
    return bench == By.FIRST.bench() && who.isEmpty() ? By.FIRST : new By(bench, who);
  }

  /** The entry of the line, whose parser stands at the field of its kind. */
  private Optional<JobEntry> findEntry(JsonParser json) throws IOException {
    if (!"type".equals(json.currentName()) || json.nextToken() != JsonToken.VALUE_STRING) {
      return Optional.empty();
    }
    String type = json.getText();
    if (roundabout.contains(type) || !isNext(json, "body", JsonToken.START_OBJECT)) {
      return Optional.empty();
    }
    try {
      return Optional.of(reader(type).readValue(json));
    } catch (JsonProcessingException e) {
      roundabout.add(type);
      return Optional.empty();
    }
  }

  private static boolean isNext(JsonParser json, String field, JsonToken value) throws IOException {
    return json.nextToken() == JsonToken.FIELD_NAME
        && json.currentName().equals(field)
        && json.nextToken() == value;
  }

  private ObjectReader reader(String type) throws IOException {
    ObjectReader known = readers.get(type);
    if (known != null) {
      return known;
    }
    Class<? extends JobEntry> found =
        EntryTypes.find(type).orElseThrow(() -> new EntryCodec.UnknownTypeException(type));
    ObjectReader made =
        EntryCodec.MAPPER.readerFor(found).without(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);
    readers.put(type, made);
    return made;
  }
}
