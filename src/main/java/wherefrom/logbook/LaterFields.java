package wherefrom.logbook;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;

/**
 * Fields that an entry did not have in its first form. Where an older file leaves one out, it reads
 * as it was meant then: not said. A field is added here once and never taken away.
 */
final class LaterFields {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final JsonNode NOT_SAID = NODES.textNode("");

  private static final JsonNode OTHER_WORK = NODES.textNode("other");

  private static final String VEE = "vee";

  /** Reads as the usual angle of such an engine. */
  private static final int USUAL_VEE = 0;

  /** A part whose tag was read. */
  private static final Map<String, JsonNode> UNTAGGED =
      Map.of("untagged", NODES.booleanNode(false));

  private static final Map<String, Map<String, JsonNode>> FIELDS =
      Map.of(
          "goods-arrived", Map.of("figure", NOT_SAID, "unit", NOT_SAID),
          "goods-measured", Map.of("figure", NOT_SAID, "unit", NOT_SAID),
          "part-number-typed", Map.of("figure", NOT_SAID, "unit", NOT_SAID),
          "part-replaced", Map.of("size", NOT_SAID, "unit", NOT_SAID, "sort", NOT_SAID),
          "shop-line-added",
              Map.of("work", OTHER_WORK, "where", NODES.arrayNode(), "beside", NOT_SAID),
          "sent-to-shop", Map.of("work", OTHER_WORK),
          "part-fitted", UNTAGGED,
          "stop-given", UNTAGGED,
          "job-opened", Map.of("items", NODES.arrayNode(), "cards", NODES.arrayNode()),
          "kinds-tracked", Map.of("first", NODES.numberNode(0), "items", NODES.arrayNode()));

  private LaterFields() {}

  /** The body with every later field that it lacks; the body itself is left as it is. */
  static JsonNode complete(String type, JsonNode body) {
    Map<String, JsonNode> later = FIELDS.getOrDefault(type, Map.of());
    if (!(body instanceof ObjectNode object) || later.isEmpty()) {
      return body;
    }
    ObjectNode whole = object.deepCopy();
    later.forEach(
        (field, unsaid) -> {
          if (!whole.has(field)) {
            whole.set(field, unsaid.deepCopy());
          }
        });
    if (whole.get("layout") instanceof ObjectNode layout && !layout.has(VEE)) {
      layout.put(VEE, USUAL_VEE);
    }
    return whole;
  }
}
