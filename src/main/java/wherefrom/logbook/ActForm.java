package wherefrom.logbook;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import wherefrom.job.entry.Act;
import wherefrom.job.entry.JobEntry;

/**
 * How an act stands in the file: {@code {"entries":[{"type":…,"body":…},…]}}, each entry with the
 * name and the body that it has in a line of its own.
 */
final class ActForm {
  private static final String ENTRIES = "entries";
  private static final String TYPE = "type";
  private static final String BODY = "body";

  private ActForm() {}

  static JsonNode body(Act act) {
    ObjectNode body = EntryCodec.MAPPER.createObjectNode();
    ArrayNode entries = body.putArray(ENTRIES);
    for (JobEntry entry : act.entries()) {
      entries.addObject().put(TYPE, EntryTypes.of(entry)).set(BODY, EntryCodec.body(entry));
    }
    return body;
  }

  /**
   * The act with this body.
   *
   * @throws EntryCodec.UnknownTypeException when an entry in it is of a newer version
   * @throws IOException when the body is not that of an act
   */
  static Act read(JsonNode body) throws IOException {
    JsonFields fields = new JsonFields("act", body);
    List<JobEntry> entries = new ArrayList<>();
    for (JsonNode each : fields.list(ENTRIES)) {
      JsonFields one = new JsonFields("act.entries", each);
      entries.add(EntryCodec.entry(one.text(TYPE), one.object(BODY)));
      one.nothingElse();
    }
    fields.nothingElse();
    try {
      return new Act(entries);
    } catch (IllegalArgumentException e) {
      throw new IOException("the entry \"act\" is not understood: " + e.getMessage() + ".", e);
    }
  }
}
