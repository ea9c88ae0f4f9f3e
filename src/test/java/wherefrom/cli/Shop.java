package wherefrom.cli;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import wherefrom.job.By;
import wherefrom.job.OpenJob;
import wherefrom.job.photos.Photos;
import wherefrom.job.ports.Archives;
import wherefrom.job.ports.Drives;
import wherefrom.job.ports.Program;
import wherefrom.job.ports.Services;
import wherefrom.job.print.SheetPrinter;
import wherefrom.job.settings.ServerAddress;
import wherefrom.job.shelf.Shelf;
import wherefrom.logbook.BackupFolder;
import wherefrom.logbook.FileChecks;
import wherefrom.logbook.FileShelf;
import wherefrom.logbook.JobArchives;
import wherefrom.logbook.LayoutJson;
import wherefrom.logbook.PhotoFiles;
import wherefrom.phone.HttpPhones;
import wherefrom.print.PdfSheetPrinter;
import wherefrom.report.FileReports;
import wherefrom.scan.PipelineReader;
import wherefrom.scan.camera.FfmpegCameras;
import wherefrom.scan.picture.PictureFiles;
import wherefrom.server.SharedShop;
import wherefrom.settings.FileSettings;

/** A shop folder worked on by commands, with everything real but the clock and random numbers. */
public final class Shop {

  /** What a call gave. */
  public record Outcome(int status, String out, String err) {
    public List<String> lines() {
      return out.lines().toList();
    }

    /** Rows of cells. */
    public List<String[]> rows() {
      return out.lines().map(line -> line.split("\t", -1)).toList();
    }
  }

  /** The two codes of a place. */
  record Codes(String card, String tag) {}

  static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-01T10:00:00Z"), ZoneOffset.UTC);

  final Path folder;
  private final Services services;

  public Shop(Path folder) {
    this(folder, new PhotoFiles(), new JobArchives());
  }

  /** With files of the test's own. */
  Shop(Path folder, Photos photos, Archives archives) {
    this(folder, photos, archives, UnaryOperator.identity(), UnaryOperator.identity());
  }

  /** With shelves of the test's own, made of the real ones. */
  Shop(Path folder, UnaryOperator<Shelf> shelves) {
    this(folder, new PhotoFiles(), new JobArchives(), shelves, UnaryOperator.identity());
  }

  /** Whose jobs lie on a shared server. */
  public static Shop on(ServerAddress server, Path folder) {
    return new Shop(
        folder,
        new PhotoFiles(),
        new JobArchives(),
        UnaryOperator.identity(),
        here -> here.servers().on(here, server, By.FIRST));
  }

  /** The same with a printer of the test's own. */
  static Shop printing(Path folder, SheetPrinter printer) {
    return new Shop(
        folder,
        new PhotoFiles(),
        new JobArchives(),
        UnaryOperator.identity(),
        here ->
            new Services(
                here.shelves(),
                here.layouts(),
                here.archives(),
                here.photos(),
                here.settings(),
                here.reader(),
                here.pictures(),
                here.cameras(),
                here.phones(),
                printer,
                here.reports(),
                here.checks(),
                here.backups(),
                here.drives(),
                here.program(),
                here.clock(),
                here.servers()));
  }

  private Shop(
      Path folder,
      Photos photos,
      Archives archives,
      UnaryOperator<Shelf> shelves,
      UnaryOperator<Services> where) {
    this.folder = folder;
    Random random = new Random(7);
    Services here =
        new Services(
            shelf -> shelves.apply(new FileShelf(shelf, CLOCK, random::nextInt)),
            new LayoutJson(),
            archives,
            photos,
            new FileSettings(folder.resolve(".settings"), folder),
            new PipelineReader(),
            new PictureFiles(),
            new FfmpegCameras(),
            new HttpPhones(System::nanoTime, random::nextBytes),
            new PdfSheetPrinter(),
            new FileReports(),
            new FileChecks(),
            new BackupFolder(),
            Drives.NONE,
            new Program("1.2.3", folder.resolve(".settings")),
            CLOCK,
            (services, address, by) ->
                SharedShop.services(
                    services, address, by, folder.resolve(".cache"), Map.of(), random::nextInt));
    this.services = where.apply(here);
  }

  public Services services() {
    return services;
  }

  public Outcome run(String... words) {
    return runWith("", words);
  }

  public Outcome runWith(String input, String... words) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    CommandLine commands =
        new CommandLine(
            services,
            new BufferedReader(new StringReader(input)),
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8));
    int status = commands.run(List.of(words));
    return new Outcome(
        status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  /** A call that must be right. */
  public Outcome right(String... words) {
    Outcome outcome = run(words);
    if (outcome.status() != 0) {
      throw new AssertionError(String.join(" ", words) + " gave " + outcome);
    }
    return outcome;
  }

  /** A V8 with the kinds that are always tracked; its folder. */
  public String begin(String name) {
    String job = path(name);
    right("job", "new", "--folder", job, "--layout", "v8-odd-even", "--name", name);
    return job;
  }

  public String path(String name) {
    return folder.resolve(name).toString();
  }

  Codes codes(String job, String place) {
    return right("places", "--job", job).rows().stream()
        .filter(row -> row[2].equals(place))
        .map(row -> new Codes(row[0], row[1]))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no place " + place));
  }

  String state(String job, String place) {
    return right("places", "--job", job).rows().stream()
        .filter(row -> row[2].equals(place))
        .map(row -> row[3])
        .findFirst()
        .orElseThrow();
  }

  /** Takes every part out. */
  public void takeApart(String job) {
    String tags =
        String.join(
            "\n", right("places", "--job", job).rows().stream().map(row -> row[1]).toList());
    Outcome out = runWith(tags, "out", "--job", job, "-");
    if (out.status() != 0) {
      throw new AssertionError(out);
    }
  }

  /** Does to a job what no command can. */
  void change(String job, java.util.function.Consumer<OpenJob> change) {
    try (OpenJob open = services.shelves().apply(folder).open(Path.of(job))) {
      change.accept(open);
    }
  }

  /** Every file below a folder with its content. */
  static Map<String, String> contents(Path folder) {
    Map<String, String> contents = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        contents.put(file.toString(), Files.readString(file, StandardCharsets.ISO_8859_1));
      }
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    return contents;
  }
}
