package wherefrom.ui.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.Test;
import wherefrom.job.reader.Reading;
import wherefrom.job.reader.Sighting;
import wherefrom.job.reader.Unread;
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
    public void scan(String text) {
      scans.add(text);
    }
  }

  private static Sighting sighting(String text) {
    return new Sighting(text, Sighting.Basis.DECODED, List.of());
  }

  /** Drops a picture on which this is read; what comes back is given in a later moment. */
  private static SampleWindow drop(ScanScreen screen, Reading reading, Consumer<Desk> before) {
    SampleWindow window =
        Toolkit.on(
            () -> {
              SampleWindow opened = new SampleWindow(96, 100);
              before.accept(opened.shell.desk());
              opened.shell.desk().navigator().open(() -> screen);
              opened.equipment.reading = reading;
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
    drop(screen, new Reading(List.of(sighting("1234")), List.of()), desk -> {});
    assertThat(screen.scans).containsExactly("1234");
  }

  @Test
  void ofSeveralTagsThePersonChoosesOneByWhatItStandsFor() {
    SampleJob sample = SampleJob.whole();
    ScanScreen screen = new ScanScreen();
    Reading two =
        new Reading(
            List.of(sighting(sample.tag("pushrod@3EX")), sighting(sample.card("5EX"))), List.of());
    SampleWindow window = drop(screen, two, desk -> desk.open(sample.job));
    assertThat(screen.scans).isEmpty();
    Toolkit.on(
        () -> {
          window.press("place card: cylinder 5, exhaust");
          return 0;
        });
    assertThat(screen.scans).containsExactly(sample.card("5EX"));
    assertThat(window.shell.current()).isEqualTo(screen);
  }

  @Test
  void whereNothingIsReadItSaysWhatWouldHelp() {
    ScanScreen screen = new ScanScreen();
    Reading glare = new Reading(List.of(), List.of(new Unread(Unread.Cause.GLARE, List.of())));
    SampleWindow window = drop(screen, glare, desk -> {});
    assertThat(window.shell.current()).isInstanceOf(RefusedScreen.class);
    assertThat(window.words()).contains("NOT READ YET", Unread.Cause.GLARE.hint());
  }
}
