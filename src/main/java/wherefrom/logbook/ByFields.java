package wherefrom.logbook;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import wherefrom.job.By;

/**
 * By whom a line was written. Bench 1 and no name are not said: so the logbook of a single bench
 * has the bytes that it always had, and older logbooks read as bench 1.
 */
final class ByFields {
  static final String BENCH = "bench";
  static final String WHO = "who";

  private ByFields() {}

  static void put(ObjectNode line, By by) {
    if (by.bench() != By.FIRST.bench()) {
      line.put(BENCH, by.bench());
    }
    if (!by.who().isEmpty()) {
      line.put(WHO, by.who());
    }
  }

  static By read(JsonNode line) throws IOException {
    JsonNode bench = line.path(BENCH);
    JsonNode who = line.path(WHO);
    if (!(bench.isMissingNode() || bench.canConvertToInt())
        || !(who.isMissingNode() || who.isTextual())) {
      throw new IOException("its bench is not understood");
    }
    try {
      return new By(bench.asInt(By.FIRST.bench()), who.asText());
    } catch (IllegalArgumentException e) {
      throw new IOException("its bench is not understood", e);
    }
  }
}
