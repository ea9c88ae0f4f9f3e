package wherefrom.ui.sample;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;
import wherefrom.files.Outgoing;
import wherefrom.job.image.Camera;
import wherefrom.job.image.Cameras;
import wherefrom.job.image.ColourImage;
import wherefrom.job.image.FrameSource;
import wherefrom.job.image.GreyImage;
import wherefrom.job.pages.PaperSize;
import wherefrom.job.pages.TidyTable;
import wherefrom.job.pages.ToFitSheet;
import wherefrom.job.phone.Phones;
import wherefrom.job.photos.Photos;
import wherefrom.job.ports.Archives;
import wherefrom.job.ports.Backups;
import wherefrom.job.ports.Drives;
import wherefrom.job.ports.JobChecks;
import wherefrom.job.ports.LayoutFiles;
import wherefrom.job.ports.Pictures;
import wherefrom.job.ports.Program;
import wherefrom.job.ports.Reports;
import wherefrom.job.ports.Servers;
import wherefrom.job.ports.Services;
import wherefrom.job.print.PrintOrder;
import wherefrom.job.print.PrintOutcome;
import wherefrom.job.print.SheetPrinter;
import wherefrom.job.print.Stock;
import wherefrom.job.print.StockChoice;
import wherefrom.job.reader.LiveAnswer;
import wherefrom.job.reader.LiveReader;
import wherefrom.job.reader.Reading;
import wherefrom.job.reader.TagReader;
import wherefrom.job.record.BuildRecord;
import wherefrom.job.settings.Settings;
import wherefrom.job.settings.SettingsStore;
import wherefrom.job.shelf.Shelf;
import wherefrom.job.shop.ShopSlip;
import wherefrom.job.tray.PictureMark;
import wherefrom.parts.TagCode;
import wherefrom.print.PdfSheetPrinter;

/** Stand-ins for everything outside, in memory; a test can look at what they were given. */
public final class SampleServices {
  private static final List<Stock> STOCKS =
      List.of(
          new Stock("a4-3x8-63.5x33.9", "A4, 24 labels of 63.5 by 33.9 mm", 3, 8, 300),
          new Stock("roll-57x32", "Roll printer, labels of 57 by 32 mm", 1, 1, 203),
          new Stock("hang-tag-5", "Hang tags, 121 by 60 mm, with a punch mark", 1, 1, 300));

  public final PaperShelf shelf = new PaperShelf();
  public final List<PrintOrder> printed = new ArrayList<>();

  /** The titles of finished files that were sent to the printer. */
  public final List<String> printedFiles = new ArrayList<>();

  /** What comes of printing a finished file. */
  public PrintOutcome fileOutcome = new PrintOutcome.Printed(0, 1);

  public final List<Path> exported = new ArrayList<>();
  public final List<Outgoing> reported = new ArrayList<>();
  public final List<Camera> cameras = new ArrayList<>();
  public Settings settings = Settings.fresh(Path.of("shop"));
  public Reading reading = Reading.NOTHING;

  /** What the camera gives for every frame, where no reader of the test's own is set. */
  public LiveAnswer seen = new LiveAnswer.Nothing(Optional.empty());

  public Backups backups =
      (folder, second) ->
          new Backups.Copied(second.resolve(folder.getFileName()), 1, 1, List.of(), true);
  public Drives drives = Drives.NONE;
  public final SamplePhones samplePhones = new SamplePhones();
  public Phones phones = samplePhones;
  public Clock clock = SampleJob.CLOCK;

  /** Draws the sheets that are looked at before they are printed. */
  private static final Previews PREVIEWS = new Previews();

  private final SheetPrinter drawer = new PdfSheetPrinter();

  public Optional<Photos> ownPhotos = Optional.empty();
  public Optional<Archives> ownArchives = Optional.empty();

  /** Is told which picture file is read. */
  public Consumer<Path> ownPictureLoad = file -> {};

  public JobChecks checks = folder -> List.of();
  public Optional<SettingsStore> ownSettings = Optional.empty();
  public Optional<Cameras> ownCameras = Optional.empty();
  public Optional<Pictures> ownPictures = Optional.empty();
  public Optional<TagReader> ownReader = Optional.empty();
  public Optional<SheetPrinter> ownPrinter = Optional.empty();

  public Services all() {
    return all(Optional.empty());
  }

  /** The same over a shelf of the test's own. */
  public Services all(Optional<Shelf> own) {
    return new Services(
        folder -> own.orElse(shelf),
        layoutFiles(),
        ownArchives.orElseGet(this::archives),
        ownPhotos.orElseGet(SampleServices::photos),
        ownSettings.orElseGet(this::settingsStore),
        ownReader.orElseGet(this::reader),
        ownPictures.orElseGet(this::pictures),
        ownCameras.orElseGet(this::cameras),
        phones,
        ownPrinter.orElseGet(this::printer),
        reports(),
        folder -> checks.check(folder),
        (folder, second) -> backups.copy(folder, second),
        drives,
        new Program("1.2.3", Path.of("no log")),
        clock,
        Servers.NONE);
  }

  /** Reports that are not written; their files are remembered. */
  private Reports reports() {
    return new Reports() {
      @Override
      public void writeRecord(BuildRecord record, PaperSize paper, Outgoing pdf) {
        reported.add(pdf);
      }

      @Override
      public void writeTables(BuildRecord record, Outgoing csv) {
        reported.add(csv);
      }

      @Override
      public void writeTable(TidyTable table, Outgoing csv) {
        reported.add(csv);
      }

      @Override
      public void writeSlip(ShopSlip slip, PaperSize paper, Outgoing pdf) {
        reported.add(pdf);
      }

      @Override
      public void writeBenchPlan(ToFitSheet plan, PaperSize paper, Outgoing pdf) {
        reported.add(pdf);
      }

      @Override
      public void writeRackPlan(ToFitSheet plan, PaperSize paper, Outgoing pdf) {
        reported.add(pdf);
      }

      @Override
      public void writeToFit(ToFitSheet plan, PaperSize paper, Outgoing pdf) {
        reported.add(pdf);
      }
    };
  }

  private SettingsStore settingsStore() {
    return new SettingsStore() {
      @Override
      public Settings load() {
        return settings;
      }

      @Override
      public void save(Settings kept) {
        settings = kept;
      }
    };
  }

  private static LayoutFiles layoutFiles() {
    return new LayoutFiles() {
      @Override
      public Layout read(Path file) throws IOException {
        return ReadyLayouts.find("v8-sequence").orElseThrow();
      }

      @Override
      public void write(Layout layout, Outgoing out) {}
    };
  }

  private Archives archives() {
    return new Archives() {
      @Override
      public void export(Path jobFolder, Path file) {
        exported.add(file);
      }

      @Override
      public Path restore(Path file, Path shelfFolder) throws IOException {
        throw new IOException(file + " is no whole job.");
      }

      @Override
      public Optional<Path> findThere(Path file, Path shelfFolder) throws IOException {
        throw new IOException(file + " is no whole job.");
      }

      @Override
      public String text(Path jobFolder) throws IOException {
        throw new IOException(jobFolder + " holds no job.");
      }
    };
  }

  private static Photos photos() {
    return new Photos() {
      @Override
      public String add(Path jobFolder, Path picture, Set<String> named) {
        return "photo-of-" + picture.getFileName();
      }

      @Override
      public Set<String> names(Path picture) {
        return Set.of("photo-of-" + picture.getFileName());
      }

      @Override
      public boolean isThere(Path jobFolder, String name) {
        return true;
      }

      @Override
      public Path locate(Path jobFolder, String name) {
        return jobFolder.resolve(name);
      }
    };
  }

  private TagReader reader() {
    return new TagReader() {
      @Override
      public Reading read(GreyImage picture, Collection<TagCode> issued) {
        return reading;
      }

      @Override
      public LiveReader live(Collection<TagCode> issued) {
        return frame -> seen;
      }
    };
  }

  private Pictures pictures() {
    return new Pictures() {
      @Override
      public GreyImage load(Path file) throws IOException {
        ownPictureLoad.accept(file);
        if (file.getFileName().toString().startsWith("bad")) {
          throw new IOException(file + " is no picture that can be read.");
        }
        return new GreyImage(1, 1, new byte[1]);
      }

      @Override
      public ColourImage loadColour(Path file, int longest) throws IOException {
        return SamplePhoto.load(file, longest);
      }

      @Override
      public void saveMarked(GreyImage picture, List<PictureMark> marks, Outgoing png) {}
    };
  }

  private Cameras cameras() {
    return new Cameras() {
      @Override
      public List<Camera> list() {
        return List.copyOf(cameras);
      }

      @Override
      public FrameSource open(Camera camera) {
        return new StandingPicture();
      }
    };
  }

  private SheetPrinter printer() {
    return new SheetPrinter() {
      @Override
      public List<Stock> listStocks() {
        return STOCKS;
      }

      @Override
      public StockChoice findStock(String nameOrFile) {
        return STOCKS.stream()
            .filter(stock -> stock.name().equals(nameOrFile))
            .findFirst()
            .<StockChoice>map(StockChoice.Chosen::new)
            .orElseGet(
                () ->
                    new StockChoice.Refused(
                        List.of("There is no label stock named " + nameOrFile + ".")));
      }

      @Override
      public Optional<ColourImage> preview(PrintOrder order, int page, int longest)
          throws IOException {
        return PREVIEWS.of(drawer, order, page, longest);
      }

      @Override
      public String lacking(String text) {
        return text.contains("\u4eac") ? "\u4eac" : "";
      }

      @Override
      public PrintOutcome save(PrintOrder order, Outgoing out) {
        printed.add(order);
        return outcome();
      }

      @Override
      public PrintOutcome print(PrintOrder order) {
        printed.add(order);
        return outcome();
      }

      @Override
      public PagePicture previewFile(Path pdf, int page, int longest) {
        return new PagePicture(Math.min(page, 3), 3, page());
      }

      @Override
      public PrintOutcome printFile(Path pdf, String title) {
        printedFiles.add(title);
        return fileOutcome;
      }
    };
  }

  /** A page with lines of words. */
  private static ColourImage page() {
    int width = 420;
    int height = 594;
    int[] pixels = new int[width * height];
    for (int at = 0; at < pixels.length; at++) {
      int x = at % width;
      int y = at / width;
      boolean word = y > 40 && y < 550 && y % 18 < 6 && x > 45 && x < 390 - y % 5 * 20;
      pixels[at] = word ? 0x505050 : 0xFFFFFF;
    }
    return new ColourImage(width, height, pixels);
  }

  private static PrintOutcome outcome() {
    return new PrintOutcome.Printed(1, 1);
  }
}
