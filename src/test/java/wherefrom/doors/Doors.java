package wherefrom.doors;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import wherefrom.cli.Shop;
import wherefrom.files.Csv;
import wherefrom.job.OpenJob;
import wherefrom.job.print.StockChoice;
import wherefrom.job.tags.TagBook;
import wherefrom.job.wedge.BurstDecoder;
import wherefrom.job.wedge.ScannerSetup;
import wherefrom.logbook.JobArchives;
import wherefrom.logbook.LayoutJson;
import wherefrom.parts.TagCode;
import wherefrom.settings.FileSettings;

/** Every door of the program, with right inputs to spoil. */
final class Doors implements AutoCloseable {
  private final Path room;
  private final Shop shop;
  private final OpenJob job;
  private final List<String> tags;
  private final List<byte[]> pictures;
  private final byte[] archive;
  private final byte[] layout;
  private final byte[] stock;
  private final CallMaker calls;

  /**
   * @param room the only folder in which anything may be written
   */
  Doors(Path room) throws IOException {
    this.room = room;
    shop = new Shop(Files.createDirectory(room.resolve("shop")));
    String folder = shop.path("six");
    shop.right("job", "new", "--folder", folder, "--layout", "inline-4", "--name", "Six");
    tags = shop.right("places", "--job", folder).rows().stream().map(row -> row[1]).toList();
    Path zip = room.resolve("right.zip");
    new JobArchives().export(Path.of(folder), zip);
    archive = Files.readAllBytes(zip);
    Path file = room.resolve("right.json");
    shop.right("layouts", "inline-6", "--out", file.toString());
    layout = Files.readAllBytes(file);
    stock = Files.readAllBytes(Path.of("labels/roll-2x1.json"));
    pictures = pictures();
    Files.write(room.resolve("picture.png"), pictures.get(0));
    calls = new CallMaker(room, folder, tags, shop.right("--help").out(), shop);
    job = shop.services().shelves().apply(room).open(Path.of(other()));
  }

  private String other() {
    String other = shop.path("other");
    shop.right("job", "new", "--folder", other, "--layout", "inline-4", "--name", "Other");
    return other;
  }

  private static List<byte[]> pictures() throws IOException {
    List<byte[]> pictures = new ArrayList<>();
    for (int type :
        new int[] {
          BufferedImage.TYPE_INT_RGB, BufferedImage.TYPE_BYTE_GRAY, BufferedImage.TYPE_BYTE_INDEXED
        }) {
      for (String format : new String[] {"png", "jpg", "gif", "bmp", "tiff"}) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(90, 60, type), format, bytes);
        pictures.add(bytes.toByteArray());
      }
    }
    return pictures;
  }

  List<Door> all() {
    return List.of(
        new Door("QR texts", 290, this::qr),
        new Door("key bursts", 200, this::keys),
        new Door("pictures", 100, this::picture),
        new Door("layouts", 90, this::layout),
        new Door("stocks", 90, this::stock),
        new Door("archives", 40, this::archive),
        new Door("tables", 90, this::table),
        new Door("settings", 60, this::settings),
        new Door("command lines", 40, this::call));
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private String spoilt(Nonsense nonsense, String right) {
    return new String(nonsense.changed(bytes(right)), StandardCharsets.UTF_8);
  }

  private String qr(Nonsense nonsense) {
    String text = nonsense.below(3) == 0 ? nonsense.text() : spoilt(nonsense, nonsense.one(tags));
    TagCode.find(text);
    new TagBook(job.state(), shop.services().shelves().apply(room)).find(text);
    return "";
  }

  private String keys(Nonsense nonsense) {
    BurstDecoder decoder = new BurstDecoder(ScannerSetup.PLAIN);
    if (nonsense.below(4) == 0) {
      decoder.expectSetUpCard(true);
    }
    String typed = spoilt(nonsense, nonsense.one(tags) + "\r");
    long at = 0;
    for (int letter : typed.codePoints().limit(2_000).toArray()) {
      at += nonsense.below(30);
      decoder.typed(letter, at);
    }
    decoder.paused(at + BurstDecoder.PAUSE_MS);
    decoder.paused(at + BurstDecoder.END_MS);
    return "";
  }

  private Path written(String name, byte[] bytes) throws IOException {
    return Files.write(room.resolve(name), bytes);
  }

  private String picture(Nonsense nonsense) throws IOException {
    Path file = written("spoilt.picture", nonsense.changed(nonsense.one(pictures)));
    if (nonsense.below(2) == 0) {
      shop.services().pictures().load(file);
    } else {
      shop.services().pictures().loadColour(file, 50);
    }
    return "";
  }

  private String layout(Nonsense nonsense) throws IOException {
    new LayoutJson().read(written("spoilt-layout.json", nonsense.changed(layout)));
    return "";
  }

  private String stock(Nonsense nonsense) throws IOException {
    Path file = written("spoilt-stock.json", nonsense.changed(stock));
    return shop.services().printer().findStock(file.toString())
            instanceof StockChoice.Refused refused
        ? String.join(" ", refused.sentences())
        : "";
  }

  private String archive(Nonsense nonsense) throws IOException {
    Path file = written("spoilt.zip", nonsense.changed(archive));
    Path to = Files.createDirectories(room.resolve("restored"));
    try {
      new JobArchives().restore(file, to);
    } finally {
      empty(to);
    }
    return "";
  }

  /** Removes a folder with all that is in it. */
  static void empty(Path folder) throws IOException {
    try (Stream<Path> inside = Files.walk(folder)) {
      for (Path path : inside.sorted((a, b) -> b.compareTo(a)).toList()) {
        Files.delete(path);
      }
    }
  }

  private String table(Nonsense nonsense) {
    String right = "what,about,state,amount,note,currency\r\nhoses,,paid,12.50,\"a, b\",EUR\r\n";
    Csv.read(spoilt(nonsense, right));
    return "";
  }

  private String settings(Nonsense nonsense) throws IOException {
    Path home = Files.createDirectories(room.resolve("home"));
    String right =
        "{\"shop\":\"jobs\",\"units\":\"metric\",\"textPercent\":150,\"pixelsPerMm\":3.5,"
            + "\"sound\":true,\"scannerDigits\":\"abcdefghij\",\"copied\":{\"a\":\"2026-01-01T00:00:00Z\"}}";
    Files.write(home.resolve("settings.json"), nonsense.changed(bytes(right)));
    FileSettings settings = new FileSettings(home, room.resolve("jobs"));
    settings.load();
    empty(home);
    return String.join(" ", settings.faults());
  }

  private String call(Nonsense nonsense) {
    List<String> words = calls.make(nonsense);
    Shop.Outcome outcome =
        shop.runWith(nonsense.text() + "\n" + nonsense.one(tags), words.toArray(String[]::new));
    if (outcome.err().contains("fault in Wherefrom")) {
      throw new AssertionError(String.join(" ", words) + ": " + outcome.err());
    }
    if (outcome.status() == 2 && outcome.err().isBlank()) {
      throw new AssertionError(String.format(Locale.ROOT, "%s: nothing was said", words));
    }
    return outcome.status() == 2 ? outcome.err() : "";
  }

  @Override
  public void close() {
    job.close();
  }
}
