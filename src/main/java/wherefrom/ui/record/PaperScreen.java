package wherefrom.ui.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.scene.image.Image;
import wherefrom.files.Outgoing;
import wherefrom.job.print.PrintOutcome;
import wherefrom.job.print.SheetPrinter;
import wherefrom.text.Words;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Images;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.PictureView;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.TouchKey;
import wherefrom.ui.files.Saving;

/** Pages as they come out of the printer, one by one; to be printed or saved. */
public final class PaperScreen extends Page {
  private static final int LONGEST = 1400;
  private static final Logger LOG = Logger.getLogger("wherefrom");

  /** A page and how many there are. */
  private record Drawn(int page, int pages, Image image) {}

  private final Paper paper;
  private final PictureView picture;
  private final TagKey print;
  private final TouchKey before;
  private final TouchKey next;
  private final FitText count;
  private final Set<Path> printing = new HashSet<>();
  private Optional<Path> pdf = Optional.empty();
  private int at = 1;
  private int pages;
  private int times;
  private boolean up;

  /** The job's step that the pages show: as long as it is the last they need not be drawn anew. */
  private long drawnAfter = -1;

  public PaperScreen(ScreenContext context, Paper paper) {
    super(context, paper.title());
    this.paper = paper;
    picture = new PictureView(touch().text(""));
    print = tag(this::print);
    print.setWords("Print", "");
    before = touch().key("Up", () -> turn(-1));
    next = touch().key("Down", () -> turn(1));
    count = touch().small("");
    TouchKey save = touch().key(touch().brief("Save as PDF…", "Save…"), this::save);
    double gap = context.scale().gap();
    lay(
        Panes.column(
            context.scale(),
            Panes.grow(new PageRoom(gap, picture, count, print, save, before, next))));
  }

  @Override
  protected void refresh() {
    long step = context.getJob().sequence();
    if (up && step == drawnAfter) {
      return;
    }
    forget();
    up = true;
    drawnAfter = step;
    int begun = ++times;
    picture.say("The pages are being drawn.");
    context.longWork("Drawing the pages", this::write, file -> show(begun, file));
  }

  /** Writes the pages anew: the job may have changed. */
  private Path write() throws IOException {
    Path file = Files.createTempFile("pages", ".pdf");
    file.toFile().deleteOnExit();
    try {
      paper.work().write(Outgoing.replacing(file));
    } catch (IOException | RuntimeException e) {
      delete(file);
      throw e;
    }
    return file;
  }

  /** What was begun before the screen went, or before it began anew, is of no use any more. */
  private void show(int begun, Path file) {
    if (begun == times && up) {
      pdf = Optional.of(file);
      draw();
    } else {
      delete(file);
    }
  }

  private void draw() {
    Path file = pdf.orElseThrow();
    int page = at;
    context.background(() -> drawn(file, page), drawn -> show(file, drawn));
  }

  private Drawn drawn(Path file, int page) throws IOException {
    SheetPrinter.PagePicture drawn = context.services().printer().previewFile(file, page, LONGEST);
    return new Drawn(drawn.page(), drawn.pages(), Images.of(drawn.picture()));
  }

  private void show(Path file, Drawn drawn) {
    if (pdf.filter(file::equals).isEmpty()) {
      return;
    }
    at = drawn.page();
    pages = drawn.pages();
    before.offer(at > 1);
    next.offer(at < pages);
    picture.show(drawn.image());
    count.setWords(touch().brief("Page ", "") + at + " of " + pages);
  }

  private void turn(int by) {
    if (pdf.isPresent() && at + by >= 1 && at + by <= pages) {
      at += by;
      draw();
    }
  }

  private void print() {
    if (pdf.isEmpty()) {
      return;
    }
    Path file = pdf.get();
    printing.add(file);
    String title = context.state().name() + ": " + paper.title();
    context.longWork(
        "Printing",
        context.writings().of(() -> context.services().printer().printFile(file, title)),
        outcome -> {
          printed(file);
          context.say(said(outcome) + warning());
        });
  }

  private void printed(Path file) {
    printing.remove(file);
    if (pdf.filter(file::equals).isEmpty()) {
      delete(file);
    }
  }

  private static String said(PrintOutcome outcome) {
    return outcome.match(
        printed -> "Printed: " + Words.count(printed.pages(), "page", "pages") + ".",
        cancelled -> "Not printed.",
        refused -> String.join(" ", refused.sentences()));
  }

  private String warning() {
    return paper.warning().get().map(said -> " " + said).orElse("");
  }

  private void save() {
    new Saving<>(
            context,
            "Where to save it",
            paper.file(),
            out -> {
              paper.work().write(out);
              return paper;
            },
            (file, written) -> context.say("Saved: " + file + "." + warning()))
        .ask();
  }

  @Override
  public void hidden() {
    up = false;
    forget();
  }

  /** The pages on the disk are for this screen alone, and for the printer until it has them. */
  private void forget() {
    pdf.filter(file -> !printing.contains(file)).ifPresent(PaperScreen::delete);
    pdf = Optional.empty();
  }

  /** One that is still being drawn cannot be deleted on Windows; it goes when the program ends. */
  private static void delete(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      LOG.log(Level.FINE, "pages that are still open", e);
    }
  }
}
