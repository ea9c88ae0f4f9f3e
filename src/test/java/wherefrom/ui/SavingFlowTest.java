package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;
import wherefrom.job.ports.Archives;
import wherefrom.job.ports.Drives;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/**
 * Saving files from the window: nothing is overwritten, and the next one begins where this went.
 */
class SavingFlowTest {
  @TempDir Path folder;
  private Path papers;
  private Path stick;
  private boolean sameDisk;
  private final List<Path> exported = new ArrayList<>();
  private final SampleJob sample = SampleJob.whole();
  private SampleWindow window;

  @BeforeEach
  void open() throws IOException {
    papers = Files.createDirectory(folder.resolve("papers"));
    stick = Files.createDirectory(folder.resolve("stick"));
    window =
        Toolkit.on(
            () ->
                new SampleWindow(
                    96,
                    100,
                    Optional.empty(),
                    work -> work.run(),
                    services -> {
                      services.settings = services.settings.withLastSaved(folder);
                      services.ownArchives = Optional.of(archives());
                      services.drives = drives();
                    }));
    in(() -> window.shell.context().open(sample.job));
  }

  private Archives archives() {
    return new Archives() {
      @Override
      public void export(Path job, Path file) throws IOException {
        exported.add(Files.createFile(file));
      }

      @Override
      public Path restore(Path file, Path shelf) {
        throw new AssertionError();
      }

      @Override
      public Optional<Path> findThere(Path file, Path shelf) {
        throw new AssertionError();
      }

      @Override
      public String text(Path job) {
        throw new AssertionError();
      }
    };
  }

  private Drives drives() {
    return new Drives() {
      @Override
      public List<Drive> list() {
        return List.of(new Drive(stick, 12_300_000_000L));
      }

      @Override
      public boolean isSameDisk(Path one, Path other) {
        return sameDisk;
      }
    };
  }

  private void in(Runnable work) {
    Toolkit.on(
        () -> {
          work.run();
          window.layOut();
          return 0;
        });
  }

  private void press(String... words) {
    for (String each : words) {
      WaitForAsyncUtils.waitForFxEvents();
      in(() -> window.pressOnSomePage(each));
    }
  }

  private String words() {
    WaitForAsyncUtils.waitForFxEvents();
    return Toolkit.on(() -> window.words());
  }

  private List<String> names(Path where) throws IOException {
    try (Stream<Path> inside = Files.list(where)) {
      return inside.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }

  private String onlyName() throws IOException {
    return names(papers).get(0);
  }

  @Test
  void aTableThatIsThereIsReplacedOnlyWhereThePersonSaysSo() throws IOException {
    in(() -> window.shell.context().navigator().show(ScreenId.MONEY));
    press("Export table", "papers /", "Choose this folder");
    assertThat(onlyName()).isEqualTo("launch-v8-money.csv");
    Path table = papers.resolve(onlyName());
    Files.writeString(table, "annotated", StandardCharsets.UTF_8);
    press("Export table", "Choose this folder");
    assertThat(words()).contains("is there already", "Keep both", "Replace it");
    assertThat(table).hasContent("annotated");
    press("Keep both");
    assertThat(table).hasContent("annotated");
    assertThat(names(papers)).hasSize(2);
    assertThat(papers.resolve("launch-v8-money-2.csv")).isNotEmptyFile();
    press("Export table", "Choose this folder", "Replace it");
    assertThat(Files.readString(table)).startsWith("what,about,state");
    assertThat(names(papers)).hasSize(2);
  }

  @Test
  void theWholeJobIsOfferedToTheDrivesThatAreThere() throws IOException {
    press("More", "Copy to USB drive");
    assertThat(words()).contains(stick.toString(), "12.3 GB free", "Another folder");
    press(stick.toString());
    assertThat(words()).contains("The whole job is copied to " + stick);
    assertThat(names(stick)).hasSize(1);
    press("Copy to USB drive", stick.toString());
    assertThat(names(stick)).hasSize(2);
  }

  @Test
  void aCopyOnTheSameDiskIsWarnedOf() throws IOException {
    sameDisk = true;
    press("More", "Copy to USB drive", "Another folder", "papers /", "Choose this folder");
    assertThat(words()).contains("That is the job's own disk: both are lost with it");
    assertThat(exported).isEmpty();
    press("Choose another place", stick.toString(), "Copy there all the same");
    assertThat(exported).hasSize(1);
    assertThat(exported.get(0)).hasParent(stick);
  }
}
