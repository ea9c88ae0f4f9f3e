package wherefrom.logbook;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import wherefrom.job.BuiltVersion;

/**
 * The first line of a logbook file. It also says which version of the program began the file; that
 * is for people, and older files do not say it.
 *
 * @param version the format's version
 * @param after the chain sum of the last line that counts in the file before; empty in the first
 * @param next the sequence of the next entry
 */
record LogHeader(int version, String after, long next) {
  static final int VERSION = 1;
  private static final String FORMAT = "wherefrom-logbook";

  byte[] line() throws IOException {
    ObjectNode object = EntryCodec.MAPPER.createObjectNode();
    object.put("format", FORMAT);
    object.put("version", version);
    object.put("after", after);
    object.put("next", next);
    object.put("program", BuiltVersion.get());
    return LogLine.seal(object);
  }

  /** The header in a line that is sealed. */
  static LogHeader read(LineSlice line) throws IOException {
    JsonNode object = LogLine.json(line);
    if (!object.path("format").asText().equals(FORMAT)) {
      throw new IOException("it is not a logbook");
    }
    return new LogHeader(
        object.path("version").asInt(),
        object.path("after").asText(),
        object.path("next").asLong());
  }
}
