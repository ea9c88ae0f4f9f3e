package wherefrom.ui.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.Test;
import wherefrom.job.tags.CodeLookup;
import wherefrom.ui.Toolkit;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** A scan comes to the screen looked up, and draws one screen once. */
class ScanOnceTest {
  private final List<String> seen = new ArrayList<>();

  private final class Logged implements Screen, Scannable {
    private final String name;
    private final Consumer<Scanned> deed;
    private final Region view = new Pane();

    Logged(String name, Consumer<Scanned> deed) {
      this.name = name;
      this.deed = deed;
    }

    @Override
    public String title() {
      return name;
    }

    @Override
    public Region view() {
      return view;
    }

    @Override
    public void shown() {
      seen.add(name + " shown");
    }

    @Override
    public void changed() {
      seen.add(name + " drawn");
    }

    @Override
    public void scan(Scanned scanned) {
      seen.add(name + " scanned");
      deed.accept(scanned);
    }
  }

  private SampleWindow window(SampleJob sample) {
    SampleWindow window = new SampleWindow(96, 100);
    window.shell.context().open(sample.job);
    return window;
  }

  private void scan(SampleWindow window, Logged screen, String text) {
    window.shell.context().navigator().open(() -> screen);
    seen.clear();
    new Scans(window.shell.context(), window.shell::current, card -> false).hand(text);
  }

  @Test
  void theScreenIsDrawnOnceWhenItHasTakenTheScan() {
    SampleJob sample = SampleJob.whole();
    List<CodeLookup> found = new ArrayList<>();
    Toolkit.on(
        () -> {
          Logged screen = new Logged("work", scanned -> found.add(scanned.getFound()));
          scan(window(sample), screen, sample.tag("pushrod@3EX"));
          return null;
        });
    assertThat(seen).containsExactly("work scanned", "work drawn");
    assertThat(found).containsExactly(sample.read(sample.tag("pushrod@3EX")));
  }

  @Test
  void aScreenThatTheScanLeadsToIsDrawnAsItComesUpAndNotAgain() {
    SampleJob sample = SampleJob.whole();
    Toolkit.on(
        () -> {
          SampleWindow window = window(sample);
          Logged page = new Logged("page", scanned -> {});
          Logged work =
              new Logged("work", scanned -> window.shell.context().navigator().open(() -> page));
          scan(window, work, sample.tag("pushrod@3EX"));
          return null;
        });
    assertThat(seen).containsExactly("work scanned", "page shown");
  }

  @Test
  void whatGoesWrongIsSaidAndDrawn() {
    SampleJob sample = SampleJob.whole();
    String said =
        Toolkit.on(
            () -> {
              SampleWindow window = window(sample);
              Logged work =
                  new Logged(
                      "work",
                      scanned -> {
                        throw new IllegalArgumentException("That did not go.");
                      });
              scan(window, work, "no tag");
              return window.shell.message();
            });
    assertThat(seen).containsExactly("work scanned", "work drawn");
    assertThat(said).isEqualTo("That did not go.");
  }
}
