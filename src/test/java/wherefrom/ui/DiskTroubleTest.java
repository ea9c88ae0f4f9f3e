package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.engine.ReadyLayouts;
import wherefrom.files.FullDisk;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.photos.Photograph;
import wherefrom.job.shelf.Shelf;
import wherefrom.logbook.FileChecks;
import wherefrom.logbook.FileShelf;
import wherefrom.logbook.JobArchives;
import wherefrom.logbook.PhotoFiles;
import wherefrom.parts.PartKind;
import wherefrom.quantity.UnitSystem;
import wherefrom.settings.FileSettings;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleServices;
import wherefrom.ui.sample.SampleWindow;

/** A full disk, folders that cannot be written, archives that broke off, in the window. */
class DiskTroubleTest {
  private static final int ROOM = 300;

  @TempDir Path folder;
  private Path shop;
  private FileShelf shelf;

  @BeforeEach
  void begin() throws IOException {
    shop = Files.createDirectory(folder.resolve("shop"));
    shelf = new FileShelf(shop, SampleJob.CLOCK, () -> 4711);
    ImageIO.write(
        new BufferedImage(2000, 2000, BufferedImage.TYPE_INT_RGB),
        "png",
        shop.resolve("nose.png").toFile());
  }

  private SampleWindow window(Consumer<SampleServices> arranged) {
    return Toolkit.on(
        () ->
            new SampleWindow(
                96,
                100,
                Optional.of(shelf),
                work -> work.run(),
                services -> {
                  services.settings = services.settings.withShop(shop).withLastSaved(shop);
                  arranged.accept(services);
                }));
  }

  private OpenJob job() {
    return shelf.create(
        new Shelf.NewJob(
            "Launch V8",
            ReadyLayouts.find("v8-odd-even").orElseThrow(),
            Set.copyOf(PartKind.alwaysOn()),
            UnitSystem.INCH));
  }

  private static void in(SampleWindow window, Consumer<SampleWindow> work) {
    Toolkit.on(
        () -> {
          work.accept(window);
          window.layOut();
          return 0;
        });
  }

  private static void press(SampleWindow window, String... words) {
    for (String each : words) {
      in(window, open -> open.pressOnSomePage(each));
    }
  }

  private static String words(SampleWindow window) {
    return Toolkit.on(() -> window.words());
  }

  private static List<String> files(Path folder) throws IOException {
    try (Stream<Path> inside = Files.walk(folder)) {
      return inside.filter(Files::isRegularFile).map(Path::toString).sorted().toList();
    }
  }

  @Test
  void aPhotographThatFindsNoRoomIsSaidAndNotLogged() throws IOException {
    SampleWindow window =
        window(set -> set.ownPhotos = Optional.of(new PhotoFiles(FullDisk.withRoomFor(ROOM))));
    OpenJob job = job();
    in(window, open -> open.shell.context().open(job));
    in(window, open -> open.shell.context().navigator().show(ScreenId.BENCH_MAP));
    List<String> before = files(shop);
    press(window, "Photos", "Cam lobe", "cylinder 3", "3 EX", "Add", "From a picture", "nose.png");
    assertThat(words(window))
        .contains("The photograph could not be kept: the disk is full; make room on it");
    assertThat(Photograph.listAll(job.state())).isEmpty();
    assertThat(files(shop)).isEqualTo(before);
  }

  @Test
  void anExportThatFindsNoRoomIsSaidAndLeavesNoFile() throws IOException {
    SampleWindow window =
        window(set -> set.ownArchives = Optional.of(new JobArchives(FullDisk.withRoomFor(ROOM))));
    OpenJob job = job();
    in(window, open -> open.shell.context().open(job));
    List<String> before = files(shop);
    press(window, "More", "Copy", "Another folder", "Choose this folder");
    assertThat(words(window)).contains("The job could not be exported: the disk is full");
    assertThat(files(shop)).isEqualTo(before);
  }

  @Test
  void anArchiveThatBrokeOffIsSaidAndNothingIsBroughtBack() throws IOException {
    Path zip = folder.resolve("whole.zip");
    try (OpenJob job =
        new FileShelf(folder.resolve("first"), Clock.systemUTC(), () -> 8)
            .create(
                new Shelf.NewJob(
                    "Launch six",
                    ReadyLayouts.find("inline-6").orElseThrow(),
                    Set.copyOf(PartKind.alwaysOn()),
                    UnitSystem.INCH))) {
      new JobArchives().export(job.folder(), zip);
    }
    byte[] whole = Files.readAllBytes(zip);
    Files.write(shop.resolve("cut.zip"), Arrays.copyOf(whole, whole.length / 2));
    SampleWindow window = window(set -> set.ownArchives = Optional.of(new JobArchives()));
    List<String> before = files(shop);
    press(window, "Import a job", "cut.zip");
    assertThat(words(window)).contains("cut.zip was not imported: ", "Nothing was changed.");
    assertThat(files(shop)).isEqualTo(before);
    assertThat(shelf.list()).isEmpty();
  }

  @Test
  void aDamagedJobThatIsBroughtBackIsSaidToBeDamaged() throws IOException {
    FileShelf first = new FileShelf(folder.resolve("first"), Clock.systemUTC(), () -> 8);
    Path six;
    try (OpenJob job =
        first.create(
            new Shelf.NewJob(
                "Barn six",
                ReadyLayouts.find("inline-6").orElseThrow(),
                Set.copyOf(PartKind.alwaysOn()),
                UnitSystem.INCH))) {
      six = job.folder();
      job.record(new NoteAdded(1, "first"));
      job.record(new NoteAdded(1, "second"));
    }
    Path file = six.resolve("logbook-0001.jsonl");
    byte[] bytes = Files.readAllBytes(file);
    bytes[bytes.length - 300] ^= 2;
    Files.write(file, bytes);
    new JobArchives().export(six, shop.resolve("six.zip"));
    SampleWindow window =
        window(
            set -> {
              set.ownArchives = Optional.of(new JobArchives());
              set.checks = new FileChecks();
            });
    press(window, "Import a job", "six.zip");
    assertThat(Toolkit.on(() -> window.shell.context().state().name())).isEqualTo("Barn six");
    assertThat(words(window))
        .contains("The job is brought back as " + shop.resolve("barn-six"))
        .contains("but it is damaged.");
    assertThat(Toolkit.on(window.shell::message))
        .contains("The logbook is damaged at logbook-0001.jsonl, line ");
    assertThat(shop.resolve("barn-six/logbook-0001.jsonl")).hasBinaryContent(bytes);
  }

  @Test
  void settingsThatCannotBeKeptAreSaidAndCountUntilTheEnd() throws IOException {
    Path file = Files.writeString(folder.resolve("a-file"), "kept");
    SampleWindow window =
        window(
            set -> {
              FileSettings store = new FileSettings(file.resolve("settings"), shop);
              set.ownSettings = Optional.of(new Fixed(store, set.settings));
            });
    in(
        window,
        open ->
            open.shell
                .context()
                .change(open.shell.context().settings().withUnits(UnitSystem.METRIC)));
    assertThat(words(window))
        .contains("The settings cannot be kept in", "Check its permissions and the disk.");
    assertThat(window.shell.context().settings().units()).isEqualTo(UnitSystem.METRIC);
    assertThat(file).hasContent("kept");
  }

  /** Real settings files that begin with the window's own. */
  private record Fixed(FileSettings files, wherefrom.job.settings.Settings first)
      implements wherefrom.job.settings.SettingsStore {
    @Override
    public wherefrom.job.settings.Settings load() {
      return first;
    }

    @Override
    public void save(wherefrom.job.settings.Settings settings) throws IOException {
      files.save(settings);
    }
  }

  @Test
  void aShopThatIsNoFolderIsSaidWhenAJobIsBegun() throws IOException {
    Path file = Files.writeString(folder.resolve("a-file"), "kept");
    shelf = new FileShelf(file.resolve("jobs"), SampleJob.CLOCK, () -> 4711);
    SampleWindow window = window(set -> {});
    in(window, open -> open.shell.context().navigator().show(ScreenId.NEW_JOB));
    press(window, "Name", "Q", "Done", "Begin");
    assertThat(words(window)).contains("a-file");
    assertThat(file).hasContent("kept");
    assertThat(window.shell.context().job()).isEmpty();
  }
}
