package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.engine.ReadyLayouts;
import wherefrom.job.OpenJob;
import wherefrom.job.ports.CheckFinding;
import wherefrom.job.shelf.Shelf;
import wherefrom.logbook.FileChecks;
import wherefrom.logbook.FileShelf;
import wherefrom.logbook.JobArchives;
import wherefrom.parts.PartKind;
import wherefrom.quantity.UnitSystem;
import wherefrom.ui.jobs.BringingBack;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** The file of a job is opened while the window stands open, with that job, another or none. */
class HandedOverFlowTest {
  @TempDir Path folder;
  private Path shop;
  private FileShelf shelf;
  private Path job;
  private Path file;
  private SampleWindow window;
  private int engines = 4711;

  @BeforeEach
  void begin() throws IOException {
    shop = Files.createDirectory(folder.resolve("shop"));
    shelf = new FileShelf(shop, SampleJob.CLOCK, () -> engines++);
    job = begun("Launch V8");
    file = folder.resolve("launch.wherefrom.zip");
    new JobArchives().export(job, file);
    window =
        Toolkit.on(
            () ->
                new SampleWindow(
                    96,
                    100,
                    Optional.of(shelf),
                    work -> work.run(),
                    services -> {
                      services.settings = services.settings.withShop(shop).withLastSaved(shop);
                      services.ownArchives = Optional.of(new JobArchives());
                      services.checks = new FileChecks();
                    }));
  }

  private Path begun(String name) {
    try (OpenJob open =
        shelf.create(
            new Shelf.NewJob(
                name,
                ReadyLayouts.find("v8-odd-even").orElseThrow(),
                Set.copyOf(PartKind.alwaysOn()),
                UnitSystem.INCH))) {
      return open.folder();
    }
  }

  private void in(Consumer<SampleWindow> work) {
    Toolkit.on(
        () -> {
          work.accept(window);
          window.layOut();
          return 0;
        });
  }

  private void come() {
    in(open -> new BringingBack(open.shell.context()).meanwhile(List.of(file)));
  }

  private Path onBench() {
    return Toolkit.on(() -> window.shell.context().getJob().folder());
  }

  private String message() {
    return Toolkit.on(() -> window.shell.message());
  }

  @Test
  void aJobThatIsThereOpensAndTheFileIsLeftAlone() {
    come();
    assertThat(onBench()).isEqualTo(job);
    assertThat(message()).isEqualTo("This job was here already. The file changes nothing in it.");
    assertThat(shelf.list()).hasSize(1);
    come();
    assertThat(onBench()).as("once more, as it lies on the bench").isEqualTo(job);
  }

  @Test
  void aJobThatIsNotThereIsBroughtBack() throws IOException {
    Files.move(job, folder.resolve("elsewhere"));
    come();
    assertThat(onBench().getParent()).isEqualTo(shop);
    assertThat(message()).isEmpty();
  }

  @Test
  void anotherJobOnTheBenchStaysUntilItIsWanted() {
    Path other = begun("Other engine");
    in(open -> attempt(open, other));
    come();
    assertThat(onBench()).isEqualTo(other);
    in(open -> open.pressOnSomePage("Stay here"));
    assertThat(onBench()).isEqualTo(other);
    come();
    in(open -> open.pressOnSomePage("Open it now"));
    assertThat(onBench()).isEqualTo(job);
  }

  @Test
  void aDamagedOneIsSaidToBeDamagedThoughItIsNotOpened() throws IOException {
    Files.move(job, folder.resolve("elsewhere"));
    Path other = begun("Other engine");
    in(
        open -> {
          attempt(open, other);
          open.services.checks =
              checked -> List.of(new CheckFinding(CheckFinding.Severity.DAMAGED, "A hole.", ""));
        });
    come();
    in(open -> open.pressOnSomePage("Stay here"));
    assertThat(onBench()).isEqualTo(other);
    assertThat(message()).endsWith("but it is damaged. A hole.");
  }

  private static void attempt(SampleWindow open, Path other) {
    assertThat(open.shell.context().attempt(() -> open.shell.context().open(other))).isTrue();
  }
}
