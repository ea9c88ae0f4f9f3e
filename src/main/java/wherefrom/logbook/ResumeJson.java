package wherefrom.logbook;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.job.Resume;

/** Where a job was left, as JSON. */
final class ResumeJson {
  private ResumeJson() {}

  static ObjectNode write(Resume resume) {
    ObjectNode object = EntryCodec.MAPPER.createObjectNode();
    object.put("sequence", resume.sequence());
    object.put("lastTouched", resume.lastTouched().toString());
    object.put("lastStep", resume.lastStep());
    resume.stop().ifPresent(stop -> object.put("stop", stop));
    object.put("inEngine", resume.inEngine());
    object.put("missing", resume.missing());
    object.put("fitted", resume.fitted());
    ArrayNode waiting = object.putArray("waiting");
    resume.waiting().forEach(waiting::add);
    object.put("doNext", resume.doNext());
    return object;
  }

  /**
   * What {@link #write} gave.
   *
   * @throws IllegalArgumentException when it is something else
   */
  static Resume read(JsonNode json) {
    try {
      List<String> waiting = new ArrayList<>();
      json.path("waiting").forEach(each -> waiting.add(each.asText()));
      return new Resume(
          json.path("sequence").asLong(),
          Instant.parse(json.path("lastTouched").asText()),
          json.path("lastStep").asText(),
          Optional.of(json.path("stop")).filter(JsonNode::isTextual).map(JsonNode::asText),
          json.path("inEngine").asInt(),
          json.path("missing").asInt(),
          json.path("fitted").asInt(),
          waiting,
          json.path("doNext").asText());
    } catch (DateTimeException e) {
      throw new IllegalArgumentException("no time", e);
    }
  }
}
