package wherefrom.logbook;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What an exported job holds; it stands as the first file in it.
 *
 * @param job the job's name
 * @param engine the job's engine number; {@link #NO_ENGINE} where its opening cannot be read
 */
record Manifest(String job, int engine, List<Item> items) {
  static final String FILE = "manifest.json";
  private static final String FORMAT = "wherefrom-job";
  private static final int VERSION = 1;

  /** In place of the number of a job whose opening cannot be read; no engine has it. */
  static final int NO_ENGINE = 0;

  /**
   * One file.
   *
   * @param size in bytes
   * @param sha256 of its bytes, in hexadecimal
   */
  record Item(String name, long size, String sha256) {}

  Manifest {
    items = List.copyOf(items);
  }

  byte[] json() throws IOException {
    ObjectNode object = EntryCodec.MAPPER.createObjectNode();
    object.put("format", FORMAT);
    object.put("version", VERSION);
    object.put("job", job);
    object.put("engine", engine);
    ArrayNode files = object.putArray("files");
    for (Item item : items) {
      files
          .addObject()
          .put("name", item.name())
          .put("size", item.size())
          .put("sha256", item.sha256());
    }
    return EntryCodec.MAPPER.writeValueAsBytes(object);
  }

  /**
   * Reads a manifest.
   *
   * @throws IOException with a plain sentence when it is none, or names a file that no job has
   */
  static Manifest read(byte[] json) throws IOException {
    try {
      return readFields(json);
    } catch (IllegalArgumentException e) {
      throw new IOException("its manifest holds a number that is not one.", e);
    }
  }

  private static Manifest readFields(byte[] json) throws IOException {
    JsonFields fields = new JsonFields("", parsed(json));
    if (!fields.text("format").equals(FORMAT)) {
      throw new IOException("format: this is not an exported job.");
    }
    if (fields.whole("version") > VERSION) {
      throw new IOException("a newer version of Wherefrom exported it. Use the newer version.");
    }
    List<Item> items = new ArrayList<>();
    for (JsonNode file : fields.list("files")) {
      items.add(item(new JsonFields("files[" + items.size() + "]", file)));
    }
    requireSound(items);
    return new Manifest(fields.text("job"), fields.whole("engine"), items);
  }

  private static JsonNode parsed(byte[] json) throws IOException {
    try {
      return JsonFields.MAPPER.readTree(json);
    } catch (JsonProcessingException e) {
      throw new IOException("its manifest is not JSON.", e);
    }
  }

  private static Item item(JsonFields fields) throws IOException {
    return new Item(fields.text("name"), fields.whole("size"), fields.text("sha256"));
  }

  private static void requireSound(List<Item> items) throws IOException {
    Set<String> names = new HashSet<>();
    for (Item item : items) {
      if (!JobFiles.isOne(item.name()) || !names.add(item.name())) {
        throw new IOException("no job holds a file such as \"" + item.name() + "\".");
      }
      if (item.size() < 0 || item.size() > JobFiles.most(item.name())) {
        throw new IOException(item.name() + " does not have a size that a job's file has.");
      }
    }
    if (!names.contains(LogFiles.name(1))) {
      throw new IOException("it holds no logbook.");
    }
  }
}
