package wherefrom.ui.app;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;
import wherefrom.files.Progress;
import wherefrom.job.OpenJob;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.Reading;
import wherefrom.job.reader.Sighting;
import wherefrom.job.tags.CodeLookup;
import wherefrom.job.tags.TagBook;
import wherefrom.parts.TagCode;
import wherefrom.ui.app.FailedScreen.Failed;
import wherefrom.ui.controls.ScreenAnswer;

/**
 * Picture files that are dropped on the window. One is read as a scanner would its tag; several are
 * photographs of the job if the person says so, and always where photographs are looked at. A job's
 * folder is opened.
 */
public final class PictureDrop {
  private final ScreenContext context;
  private final Scans scans;

  PictureDrop(ScreenContext context, Scans scans) {
    this.context = context;
    this.scans = scans;
  }

  void attach(Node window) {
    window.setOnDragOver(
        event -> {
          if (event.getDragboard().hasFiles()) {
            event.acceptTransferModes(TransferMode.COPY);
          }
          event.consume();
        });
    window.setOnDragDropped(this::dropped);
  }

  private void dropped(DragEvent event) {
    List<Path> files = event.getDragboard().getFiles().stream().map(File::toPath).toList();
    event.setDropCompleted(!files.isEmpty());
    event.consume();
    read(files);
  }

  /** What was read on pictures, and which of them could not be. */
  private record Read(List<Reading> readings, List<Failed> failed) {}

  /** Reads picture files, and those in folders, as if they were dropped; a job is opened. */
  public void read(List<Path> files) {
    List<Path> jobs =
        files.stream().flatMap(each -> context.shelf().findJob(each).stream()).distinct().toList();
    if (jobs.isEmpty()) {
      pictures(files);
    } else if (files.size() == 1) {
      context.attempt(() -> context.open(jobs.get(0)));
    } else {
      // Its logbook's files are no pictures: reading them could free the job for another program.
      context.say("There is a job among them. Drop its folder alone, and it opens.");
    }
  }

  private void pictures(List<Path> files) {
    if (context.navigator().current() instanceof TakesPictures screen) {
      screen.pictures(files);
    } else if (context.job().isPresent() && (files.size() > 1 || Files.isDirectory(files.get(0)))) {
      ask(files);
    } else {
      readPictures(files);
    }
  }

  private void ask(List<Path> files) {
    List<Choice<Runnable>> ways =
        List.of(
            new Choice<>(() -> keep(files), "Keep them", "as photographs of the job"),
            new Choice<>(() -> readPictures(files), "Read their tags", "as if they were scanned"));
    context
        .navigator()
        .open(() -> new ChoiceScreen<>(context, "What are the pictures?", ways, Runnable::run));
  }

  private void keep(List<Path> files) {
    context.navigator().show(ScreenId.PHOTOGRAPHS);
    if (context.navigator().current() instanceof TakesPictures screen) {
      screen.pictures(files);
    }
  }

  private void readPictures(List<Path> files) {
    Collection<TagCode> issued = context.issued();
    Supplier<List<TagCode>> elsewhere = PrintedElsewhere.of(context);
    context.longWork("Reading pictures", () -> readAll(files, issued, elsewhere), this::take);
  }

  private Read readAll(
      List<Path> dropped, Collection<TagCode> issued, Supplier<List<TagCode>> elsewhere)
      throws IOException {
    List<Path> files = new ArrayList<>();
    for (Path each : dropped) {
      files.addAll(Files.isDirectory(each) ? inside(each) : List.of(each));
    }
    Read read = new Read(new ArrayList<>(), new ArrayList<>());
    for (Path file : files) {
      try {
        GreyImage picture = context.services().pictures().load(file);
        read.readings().add(context.services().reader().read(picture, issued, elsewhere));
      } catch (IOException e) {
        read.failed().add(failed(file, String.valueOf(e.getMessage())));
      }
      Progress.step(read.readings().size() + read.failed().size(), files.size());
    }
    return read;
  }

  /** Its name stands above the sentence already. */
  private static Failed failed(Path file, String why) {
    String about = file + " ";
    String sentence = why.startsWith(about) ? "It " + why.substring(about.length()) : why;
    return new Failed(String.valueOf(file.getFileName()), sentence);
  }

  private static List<Path> inside(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(Files::isRegularFile).sorted().toList();
    }
  }

  private void take(Read read) {
    int all = read.readings().size() + read.failed().size();
    if (all == 1 && read.readings().isEmpty()) {
      context.say(read.failed().get(0).why());
      return;
    }
    // First what was read: it is the business of the screen that is up now. That a picture shows no
    // tag is said only where the list of what failed is not to be seen instead.
    boolean anyTag = read.readings().stream().anyMatch(one -> !one.sightings().isEmpty());
    if (anyTag || read.failed().isEmpty()) {
      take(read.readings());
    }
    if (!read.failed().isEmpty()) {
      context.navigator().open(() -> new FailedScreen(context, read.failed(), all));
    }
  }

  private void take(List<Reading> readings) {
    Set<String> texts = new LinkedHashSet<>();
    for (Reading reading : readings) {
      reading.sightings().stream().map(Sighting::text).forEach(texts::add);
    }
    if (texts.size() == 1) {
      scans.hand(texts.iterator().next());
    } else if (texts.isEmpty()) {
      context.refuse(ScreenAnswer.notRead(hint(readings), "No tag was read on the picture."));
    } else {
      choose(List.copyOf(texts));
    }
  }

  private static String hint(List<Reading> readings) {
    return readings.stream()
        .flatMap(reading -> reading.unread().stream())
        .map(unread -> unread.cause().hint())
        .findFirst()
        .orElse("Take it closer, with more light, or type the six digits.");
  }

  private void choose(List<String> texts) {
    List<Choice<String>> choices =
        texts.stream().map(text -> new Choice<>(text, words(text), "")).toList();
    context
        .navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    context,
                    choices.size() + " tags on the picture: which one?",
                    choices,
                    scans::hand));
  }

  /** What a code stands for in the open job, or the code itself. */
  private String words(String text) {
    if (context.job().isEmpty()) {
      return text;
    }
    OpenJob job = context.getJob();
    return new TagBook(job.state(), context.shelf())
        .find(text)
        .match(
            CodeLookup.APart::words,
            CodeLookup.ASpot::words,
            card -> card.action().words(),
            CodeLookup.ABasket::words,
            CodeLookup.ABag::words,
            CodeLookup.ABigPart::words,
            refused -> text);
  }
}
