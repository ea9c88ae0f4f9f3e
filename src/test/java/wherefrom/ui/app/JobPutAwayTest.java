package wherefrom.ui.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.job.photos.Photograph;
import wherefrom.ui.Toolkit;
import wherefrom.ui.jobs.JobsScreen;
import wherefrom.ui.photos.PhotoTaking;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;
import wherefrom.ui.tray.TrayPurpose;
import wherefrom.ui.tray.TrayTaking;

/** Slow work ends after its job was put away, or under a screen whose job has gone. */
class JobPutAwayTest {
  @TempDir Path shop;

  private final List<Runnable> held = new ArrayList<>();
  private final SampleJob sample = SampleJob.apart();
  private final SampleJob other = SampleJob.apart();
  private SampleWindow window;

  @BeforeEach
  void openTheJobWithThePhotographAtHand() throws IOException {
    Files.write(shop.resolve("nose.png"), new byte[] {1});
    window =
        Toolkit.on(
            () ->
                new SampleWindow(
                    96,
                    100,
                    Optional.empty(),
                    held::add,
                    services ->
                        services.settings = services.settings.withShop(shop).withLastSaved(shop)));
    goOn();
    in(open -> open.shell.context().open(sample.job));
    goOn();
  }

  private void in(Consumer<SampleWindow> work) {
    Toolkit.on(
        () -> {
          work.accept(window);
          window.layOut();
          return 0;
        });
  }

  /** All that waits is done, on the window's thread, so that what it throws is seen. */
  private void goOn() {
    List<Runnable> now = List.copyOf(held);
    held.clear();
    in(open -> now.forEach(Runnable::run));
    in(open -> {});
  }

  private void press(String... words) {
    for (String each : words) {
      in(open -> open.pressOnSomePage(each));
    }
  }

  private String message() {
    return Toolkit.on(() -> window.shell.message());
  }

  private Screen up() {
    return Toolkit.on(() -> window.shell.current());
  }

  @Test
  void theListOfJobsThatComesWhenTheWindowHasClosedDrawsNothing() {
    in(open -> open.shell.context().navigator().jobs());
    in(open -> open.shell.context().open(other.job));
    Screen home = up();
    in(open -> open.shell.close());
    assertThat(held).isNotEmpty();
    goOn();
    in(open -> open.shell.context().navigator().changed());
    in(open -> open.shell.copied());
    assertThat(up()).isEqualTo(home);
  }

  @Test
  void aTrayIsNotOpenedWithoutItsJob() {
    in(open -> TrayTaking.ask(open.shell.context(), TrayPurpose.CHECK));
    press("From a picture file", "nose.png");
    in(open -> open.shell.context().navigator().jobs());
    goOn();
    assertThat(message()).isEqualTo("The photograph was not used: its job was put away.");
    assertThat(up()).isInstanceOf(JobsScreen.class);
  }

  @Test
  void aPhotographGoesIntoNoOtherJob() {
    in(open -> PhotoTaking.ask(open.shell.context(), Optional.empty(), ""));
    press("From a picture file", "nose.png");
    in(open -> open.shell.context().open(other.job));
    goOn();
    assertThat(message()).isEqualTo("The photograph was not kept: its job was put away.");
    assertThat(Photograph.listAll(sample.job.state())).isEmpty();
    assertThat(Photograph.listAll(other.job.state())).isEmpty();
  }

  @Test
  void aPrintThatEndsTooLateDoesNotCount() {
    in(open -> open.shell.context().navigator().show(ScreenId.PRINT_TAGS));
    press("Place cards", "Print");
    long before = sample.job.sequence();
    in(open -> open.shell.context().open(other.job));
    goOn();
    assertThat(message())
        .isEqualTo(
            "The print does not count: its job was put away. Open the job, and print again.");
    assertThat(sample.job.sequence()).isEqualTo(before);
  }
}
