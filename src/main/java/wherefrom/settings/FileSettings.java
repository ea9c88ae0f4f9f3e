package wherefrom.settings;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import wherefrom.files.AtomicFile;
import wherefrom.files.DraftFiles;
import wherefrom.files.Incoming;
import wherefrom.job.By;
import wherefrom.job.settings.Appearance;
import wherefrom.job.settings.ServerAddress;
import wherefrom.job.settings.Settings;
import wherefrom.job.settings.SettingsStore;
import wherefrom.job.settings.WindowPlace;
import wherefrom.job.settings.Workplace;
import wherefrom.job.takeapart.OutOrder;
import wherefrom.job.wedge.ScannerSetup;
import wherefrom.quantity.UnitSystem;

/**
 * The settings in a JSON file. A field that is missing has its fresh value and one that is not
 * known is passed over, so that older and newer versions live side by side. Each field is checked
 * alone: a wrong one has its fresh value, and the file as it was is kept aside; so is one that
 * makes no sense at all.
 */
public final class FileSettings implements SettingsStore {
  static final String FILE = "settings.json";
  private static final int MOST_KEPT_ASIDE = 100;
  private static final int MOST_BYTES = 1_000_000;

  /** The screen of a large television, and four times a sharp telephone's. */
  private static final double LEAST_PIXELS_PER_MM = 0.5;

  private static final double MOST_PIXELS_PER_MM = 80;
  private static final Set<Integer> TEXT_SIZES = Set.of(100, 150, 200);

  private final Path folder;
  private final Settings fresh;
  private final List<String> faults = new ArrayList<>();

  /**
   * @param folder holds the file; may not exist yet
   * @param shop where jobs are kept until the person says otherwise
   */
  public FileSettings(Path folder, Path shop) {
    this.folder = folder;
    this.fresh = Settings.fresh(shop);
  }

  @Override
  public synchronized Settings load() {
    Path file = folder.resolve(FILE);
    if (!Files.exists(file)) {
      return fresh;
    }
    try {
      return read(file);
    } catch (IOException | IllegalArgumentException | StackOverflowError e) {
      faults.add(
          "The settings cannot be read. All are back to their defaults. " + aside(file).words());
      return fresh;
    }
  }

  private Settings read(Path file) throws IOException {
    JsonNode json = new ObjectMapper().readTree(Incoming.read(file, MOST_BYTES));
    if (!json.isObject()) {
      throw new IOException("no settings");
    }
    SettingFields fields = new SettingFields(json);
    Settings settings = read(fields);
    if (!fields.wrong().isEmpty()) {
      mend(file, settings, fields.wrong());
    }
    return settings;
  }

  /** Keeps the settings that are right, and the file as it was beside them. */
  private void mend(Path file, Settings settings, List<String> wrong) {
    Aside aside = aside(file);
    String which = String.join(", ", wrong);
    faults.add(
        "This was wrong in the settings and is back to its default: "
            + which
            + ". "
            + aside.words());
    if (aside.moved()) {
      try {
        save(settings);
      } catch (IOException e) {
        faults.add(String.valueOf(e.getMessage()));
      }
    }
  }

  @Override
  public synchronized List<String> faults() {
    return List.copyOf(faults);
  }

  /** Whether a file was kept aside, and what to say of it. */
  private record Aside(boolean moved, String words) {}

  private Aside aside(Path file) {
    for (int number = 1; number <= MOST_KEPT_ASIDE; number++) {
      Path aside = folder.resolve(String.format(Locale.ROOT, "settings-damaged-%d.json", number));
      if (!Files.exists(aside)) {
        try {
          Files.move(file, aside);
          return new Aside(true, "The file is kept as " + aside + ".");
        } catch (IOException e) {
          break;
        }
      }
    }
    return new Aside(false, "The file stays where it is: " + file + ".");
  }

  private Settings read(SettingFields fields) {
    return new Settings(
        fields.path("shop").orElse(fresh.shop()),
        fields.choice("units", fresh.units(), FileSettings::units),
        fields.whole("textPercent", fresh.textPercent(), TEXT_SIZES::contains),
        fields.choice("look", fresh.look(), FileSettings::look),
        fields.number("pixelsPerMm", fresh.pixelsPerMm(), FileSettings::isScreen),
        fields.flag("sound", fresh.sound()),
        new Settings.Scanner(
            fields.text("scannerPrefix", "", any -> true),
            fields.text("scannerSuffix", "", any -> true),
            fields.text("scannerDigits", "", FileSettings::isTaught)),
        fields.text("camera", fresh.camera(), any -> true),
        fields.flag("cameraOn", fresh.cameraOn()),
        fields.path("secondCopy"),
        fields.copies("copied", "copiedUpTo"),
        fields.path("lastSaved"),
        fields.choice("window", fresh.window(), WindowPlace::read),
        fields.choice("outOrder", fresh.outOrder(), OutOrder::find),
        workplace(fields),
        fields.choice("usedSheet", Optional.empty(), Settings.UsedSheet::read));
  }

  private static Workplace workplace(SettingFields fields) {
    int bench =
        fields.whole("bench", By.FIRST.bench(), number -> number >= 1 && number <= By.MOST_BENCHES);
    String who = fields.text("who", "", name -> name.strip().length() <= By.MOST_LETTERS);
    return new Workplace(
        fields.choice("server", Optional.empty(), FileSettings::server), new By(bench, who));
  }

  /** An address that holds a password is none: such a file is kept aside, and the person told. */
  private static Optional<Optional<ServerAddress>> server(String text) {
    try {
      return Optional.of(text.isEmpty() ? Optional.empty() : Optional.of(ServerAddress.read(text)));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  @Override
  public void tidy(Instant now) {
    DraftFiles.clear(folder, now);
  }

  private static Optional<UnitSystem> units(String word) {
    return Stream.of(UnitSystem.values())
        .filter(units -> units.name().toLowerCase(Locale.ROOT).equals(word))
        .findFirst();
  }

  private static Optional<Appearance> look(String word) {
    return Stream.of(Appearance.values())
        .filter(look -> look.name().toLowerCase(Locale.ROOT).equals(word))
        .findFirst();
  }

  /** Not measured, or as coarse or as fine as screens are. */
  private static boolean isScreen(double pixelsPerMm) {
    return pixelsPerMm == 0
        || (pixelsPerMm >= LEAST_PIXELS_PER_MM && pixelsPerMm <= MOST_PIXELS_PER_MM);
  }

  private static boolean isTaught(String digits) {
    return digits.isEmpty() || ScannerSetup.isDigitRow(digits);
  }

  @Override
  public synchronized void save(Settings settings) throws IOException {
    ObjectMapper mapper = new ObjectMapper();
    ObjectNode json = mapper.createObjectNode();
    json.put("shop", settings.shop().toString());
    json.put("units", settings.units().name().toLowerCase(Locale.ROOT));
    json.put("textPercent", settings.textPercent());
    json.put("look", settings.look().name().toLowerCase(Locale.ROOT));
    json.put("pixelsPerMm", settings.pixelsPerMm());
    json.put("sound", settings.sound());
    json.put("scannerPrefix", settings.scanner().prefix());
    json.put("scannerSuffix", settings.scanner().suffix());
    json.put("scannerDigits", settings.scanner().digits());
    json.put("camera", settings.camera());
    json.put("cameraOn", settings.cameraOn());
    settings.secondCopy().ifPresent(folder -> json.put("secondCopy", folder.toString()));
    json.put("window", settings.window().written());
    settings.lastSaved().ifPresent(folder -> json.put("lastSaved", folder.toString()));
    json.put("outOrder", settings.outOrder().key());
    settings.usedSheet().ifPresent(sheet -> json.put("usedSheet", sheet.written()));
    Workplace place = settings.workplace();
    place.server().ifPresent(address -> json.put("server", address.text()));
    json.put("bench", place.by().bench());
    json.put("who", place.by().who());
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
          "The settings cannot be kept in " + folder + ". Check its permissions and the disk.", e);
    }
  }
}
