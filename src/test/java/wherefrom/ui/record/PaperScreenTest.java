package wherefrom.ui.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wherefrom.files.Outgoing;
import wherefrom.inspection.Decision;
import wherefrom.job.entry.DecisionMade;
import wherefrom.ui.Toolkit;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** The pages on the disk are for the screen that shows them, and go with it. */
class PaperScreenTest {
  private final List<Path> drawn = new ArrayList<>();
  private final List<Runnable> held = new ArrayList<>();
  private final AtomicBoolean full = new AtomicBoolean();
  private final SampleJob sample = SampleJob.apart();
  private SampleWindow window;

  @BeforeEach
  void open() {
    window =
        Toolkit.on(
            () -> new SampleWindow(96, 100, Optional.empty(), work -> work.run(), services -> {}));
    in(() -> window.shell.context().open(sample.job));
  }

  private void in(Runnable work) {
    Toolkit.on(
        () -> {
          work.run();
          window.layOut();
          return 0;
        });
  }

  private void write(Outgoing pdf) throws IOException {
    drawn.add(Path.of(pdf.toString()));
    if (full.get()) {
      throw new IOException("The disk is full.");
    }
  }

  private void show() {
    var context = window.shell.context();
    Paper paper = new Paper("Sheet", "sheet.pdf", this::write, Optional::empty);
    in(() -> context.navigator().open(() -> new PaperScreen(context, paper)));
  }

  private void back() {
    in(() -> window.shell.context().navigator().back());
  }

  /** A step of the job, which the pages have to show. */
  private void change() {
    sample.job.record(new DecisionMade(sample.part("pushrod@3EX").item(), Decision.REUSE, ""));
    window.shell.context().navigator().changed();
  }

  private void goOn() {
    List<Runnable> now = List.copyOf(held);
    held.clear();
    in(() -> now.forEach(Runnable::run));
  }

  @Test
  void thePagesGoWithTheScreen() {
    show();
    assertThat(drawn).singleElement().satisfies(file -> assertThat(file).exists());
    back();
    assertThat(drawn.get(0)).doesNotExist();
  }

  @Test
  void pagesThatShowTheLastStepAreNotDrawnAnew() {
    show();
    in(() -> window.shell.context().navigator().changed());
    assertThat(drawn).singleElement().satisfies(file -> assertThat(file).exists());
  }

  @Test
  void pagesThatAreDrawnAnewTakeThePlaceOfThoseBefore() {
    show();
    in(this::change);
    assertThat(drawn).hasSize(2);
    assertThat(drawn.get(0)).doesNotExist();
    assertThat(drawn.get(1)).exists();
    back();
    assertThat(drawn.get(1)).doesNotExist();
  }

  /** Twice begun before the first was done: both files go, one at once and one with the screen. */
  @Test
  void whatIsDrawnTwiceAtATimeLeavesNothing() {
    in(() -> window.workers = held::add);
    show();
    in(this::change);
    goOn();
    goOn();
    assertThat(drawn).hasSize(2);
    assertThat(drawn.stream().filter(Files::exists)).hasSize(1);
    back();
    assertThat(drawn.stream().filter(Files::exists)).isEmpty();
  }

  @Test
  void whatIsReadyAfterTheScreenHasGoneLeavesNothing() {
    in(() -> window.workers = held::add);
    show();
    back();
    goOn();
    goOn();
    assertThat(drawn).hasSize(1);
    assertThat(drawn.get(0)).doesNotExist();
  }

  @Test
  void thePrinterHasThePagesUntilItIsDone() {
    show();
    in(() -> window.workers = held::add);
    in(() -> window.press("Print"));
    back();
    assertThat(drawn.get(0)).exists();
    goOn();
    assertThat(drawn.get(0)).doesNotExist();
  }

  @Test
  void whatCannotBeDrawnLeavesNothing() {
    full.set(true);
    show();
    assertThat(drawn).singleElement().satisfies(file -> assertThat(file).doesNotExist());
    assertThat(Toolkit.on(() -> window.words())).contains("The disk is full.");
  }
}
