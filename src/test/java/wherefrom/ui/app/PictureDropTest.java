package wherefrom.ui.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Consumer;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.engine.ReadyLayouts;
import wherefrom.job.OpenJob;
import wherefrom.job.reader.Reading;
import wherefrom.job.reader.Sighting;
import wherefrom.job.reader.Unread;
import wherefrom.job.shelf.Shelf;
import wherefrom.logbook.FileShelf;
import wherefrom.parts.PartKind;
import wherefrom.quantity.UnitSystem;
import wherefrom.ui.Toolkit;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** Picture files that are dropped on the window. */
class PictureDropTest {

  private static final class ScanScreen implements Screen, Scannable {
    final List<String> scans = new ArrayList<>();

    private final Region view = new Pane();

    @Override
    public String title() {
      return "Scan";
    }

    @Override
    public Region view() {
      return view;
    }

    @Override
    public void scan(Scanned scanned) {
      scans.add(scanned.text());
    }
  }

  private static Sighting sighting(String text) {
    return new Sighting(text, Sighting.Basis.DECODED, List.of());
  }

  /** Drops a picture on which this is read; what comes back is given in a later moment. */
  private static SampleWindow drop(
      ScanScreen screen, Reading reading, Consumer<ScreenContext> before) {
    SampleWindow window =
        Toolkit.on(
            () -> {
              SampleWindow opened = new SampleWindow(96, 100);
              before.accept(opened.shell.context());
              opened.shell.context().navigator().open(() -> screen);
              opened.services.reading = reading;
              opened.shell.pictures().read(List.of(Path.of("picture.png")));
              return opened;
            });
    Toolkit.on(
        () -> {
          window.layOut();
          return 0;
        });
    return window;
  }

  @Test
  void oneTagOnThePictureIsAScan() {
    ScanScreen screen = new ScanScreen();
    drop(screen, new Reading(List.of(sighting("1234")), List.of()), context -> {});
    assertThat(screen.scans).containsExactly("1234");
  }

  @Test
  void ofSeveralTagsThePersonChoosesOneByWhatItStandsFor() {
    SampleJob sample = SampleJob.whole();
    ScanScreen screen = new ScanScreen();
    Reading two =
        new Reading(
            List.of(sighting(sample.tag("pushrod@3EX")), sighting(sample.card("5EX"))), List.of());
    SampleWindow window = drop(screen, two, context -> context.open(sample.job));
    assertThat(screen.scans).isEmpty();
    Toolkit.on(
        () -> {
          window.press("place card: cylinder 5, exhaust");
          return 0;
        });
    assertThat(screen.scans).containsExactly(sample.card("5EX"));
    assertThat(window.shell.current()).isEqualTo(screen);
  }

  /** Reading the logbook's files as pictures would free the job for a second program. */
  @Test
  void aJobsFolderIsOpenedAndNoneOfItsFilesIsReadAsAPicture(@TempDir Path shop) {
    FileShelf shelf = new FileShelf(shop, SampleJob.CLOCK, new Random(7)::nextInt);
    Path job = begin(shelf, "Barn six");
    Path other = begin(shelf, "Other six");
    Path log = job.resolve("logbook-0001.jsonl");
    SampleWindow window =
        Toolkit.on(() -> new SampleWindow(96, 100, Optional.of(shelf), Runnable::run, set -> {}));
    window.services.ownPictureLoad = file -> wrong.add(file);
    drop(window, List.of(job, other));
    assertThat(window.words()).contains("Drop its folder alone, and it opens.");
    drop(window, List.of(Path.of("picture.png"), log));
    assertThat(window.shell.context().job()).isEmpty();
    drop(window, List.of(other));
    assertThat(window.shell.context().getJob().folder()).isEqualTo(other);
    drop(window, List.of(log));
    assertThat(window.shell.context().getJob().folder()).isEqualTo(job);
    assertThat(window.shell.current().title()).isEqualTo("Barn six");
    drop(window, List.of(job));
    assertThat(window.shell.context().getJob().condition().writable()).isTrue();
    assertThat(wrong).isEmpty();
    Toolkit.on(
        () -> {
          window.shell.context().closeJob();
          return 0;
        });
  }

  private final List<Path> wrong = new ArrayList<>();

  private static Path begin(FileShelf shelf, String name) {
    try (OpenJob job =
        shelf.create(
            new Shelf.NewJob(
                name,
                ReadyLayouts.find("inline-6").orElseThrow(),
                PartKind.alwaysOn(),
                UnitSystem.INCH))) {
      return job.folder();
    }
  }

  private static void drop(SampleWindow window, List<Path> files) {
    Toolkit.on(
        () -> {
          window.shell.pictures().read(files);
          window.layOut();
          return 0;
        });
  }

  @Test
  void whereNothingIsReadItSaysWhatWouldHelp() {
    ScanScreen screen = new ScanScreen();
    Reading glare = new Reading(List.of(), List.of(new Unread(Unread.Cause.GLARE, List.of())));
    SampleWindow window = drop(screen, glare, context -> {});
    assertThat(window.shell.current()).isInstanceOf(RefusedScreen.class);
    assertThat(window.words()).contains("NOT READ YET", Unread.Cause.GLARE.hint());
  }
}
