package wherefrom.settings;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wherefrom.files.AtomicFile;
import wherefrom.job.Settings;
import wherefrom.job.SettingsStore;
import wherefrom.quantity.UnitSystem;

/**
 * The settings in a JSON file. A field that is missing has its fresh value and one that is not
 * known is passed over, so that older and newer versions live side by side. A file that makes no
 * sense is kept aside and fresh settings are given.
 */
public final class FileSettings implements SettingsStore {
  static final String FILE = "settings.json";
  private static final int MOST_KEPT_ASIDE = 100;
  private static final Set<Integer> TEXT_SIZES = Set.of(100, 150, 200);

  private final Path folder;
  private final Settings fresh;

  /**
   * @param folder holds the file; may not exist yet
   * @param shop where jobs are kept until the person says otherwise
   */
  public FileSettings(Path folder, Path shop) {
    this.folder = folder;
    this.fresh = Settings.fresh(shop);
  }

  @Override
  public Settings load() {
    Path file = folder.resolve(FILE);
    if (!Files.exists(file)) {
      return fresh;
    }
    try {
      return read(new ObjectMapper().readTree(Files.readAllBytes(file)));
    } catch (IOException | IllegalArgumentException e) {
      keepAside(file);
      return fresh;
    }
  }

  private void keepAside(Path file) {
    for (int number = 1; number <= MOST_KEPT_ASIDE; number++) {
      Path aside = folder.resolve(String.format(Locale.ROOT, "settings-damaged-%d.json", number));
      if (!Files.exists(aside)) {
        try {
          Files.move(file, aside);
        } catch (IOException e) {
          // It stays where it is; the next save replaces it.
        }
        return;
      }
    }
  }

  private Settings read(JsonNode json) {
    require(json.isObject());
    return new Settings(
        Path.of(text(json, "shop", fresh.shop().toString())),
        UnitSystem.valueOf(
            text(json, "units", fresh.units().name().toLowerCase(Locale.ROOT))
                .toUpperCase(Locale.ROOT)),
        textPercent(json),
        pixelsPerMm(json),
        flag(json, "sound", fresh.sound()),
        new Settings.Scanner(
            text(json, "scannerPrefix", ""),
            text(json, "scannerSuffix", ""),
            text(json, "scannerDigits", "")),
        text(json, "camera", fresh.camera()),
        flag(json, "cameraOn", fresh.cameraOn()),
        Optional.of(text(json, "secondCopy", "")).filter(kept -> !kept.isEmpty()).map(Path::of),
        copied(json));
  }

  private static Map<String, Settings.Copy> copied(JsonNode json) {
    JsonNode jobs = json.path("copied");
    require(jobs.isMissingNode() || jobs.isObject());
    Map<String, Settings.Copy> copies = new HashMap<>();
    for (Map.Entry<String, JsonNode> job : jobs.properties()) {
      try {
        long upTo = json.path("copiedUpTo").path(job.getKey()).asLong();
        Instant time = Instant.parse(job.getValue().asText(""));
        copies.put(job.getKey(), new Settings.Copy(time, upTo));
      } catch (DateTimeParseException e) {
        throw new IllegalArgumentException("no settings", e);
      }
    }
    return copies;
  }

  private static String text(JsonNode json, String field, String missing) {
    JsonNode value = json.path(field);
    require(value.isMissingNode() || value.isTextual());
    return value.asText(missing);
  }

  private int textPercent(JsonNode json) {
    int percent = json.path("textPercent").asInt(fresh.textPercent());
    require(TEXT_SIZES.contains(percent));
    return percent;
  }

  private double pixelsPerMm(JsonNode json) {
    double pixels = json.path("pixelsPerMm").asDouble(fresh.pixelsPerMm());
    require(pixels >= 0 && pixels < Double.POSITIVE_INFINITY);
    return pixels;
  }

  private static boolean flag(JsonNode json, String field, boolean missing) {
    JsonNode value = json.path(field);
    require(value.isMissingNode() || value.isBoolean());
    return value.asBoolean(missing);
  }

  private static void require(boolean holds) {
    if (!holds) {
      throw new IllegalArgumentException("no settings");
    }
  }

  @Override
  public void save(Settings settings) throws IOException {
    ObjectMapper mapper = new ObjectMapper();
    ObjectNode json = mapper.createObjectNode();
    json.put("shop", settings.shop().toString());
    json.put("units", settings.units().name().toLowerCase(Locale.ROOT));
    json.put("textPercent", settings.textPercent());
    json.put("pixelsPerMm", settings.pixelsPerMm());
    json.put("sound", settings.sound());
    json.put("scannerPrefix", settings.scanner().prefix());
    json.put("scannerSuffix", settings.scanner().suffix());
    json.put("scannerDigits", settings.scanner().digits());
    json.put("camera", settings.camera());
    json.put("cameraOn", settings.cameraOn());
    settings.secondCopy().ifPresent(folder -> json.put("secondCopy", folder.toString()));
    ObjectNode copied = json.putObject("copied");
    ObjectNode upTo = json.putObject("copiedUpTo");
    settings
        .copied()
        .forEach(
            (job, copy) -> {
              copied.put(job, copy.time().toString());
              upTo.put(job, copy.upTo());
            });
    byte[] bytes = mapper.writerWithDefaultPrettyPrinter().writeValueAsBytes(json);
    try {
      new AtomicFile().write(folder.resolve(FILE), bytes);
    } catch (IOException e) {
      throw new IOException(
          "The settings cannot be kept in " + folder + ". Look at its permissions and the disk.",
          e);
    }
  }
}
