package wherefrom.ui.photos;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import wherefrom.inspection.Subject;
import wherefrom.job.OpenJob;
import wherefrom.job.photos.PhotoFolder;
import wherefrom.job.reader.Sighting;
import wherefrom.job.tags.TagBook;
import wherefrom.parts.TagCode;
import wherefrom.text.Words;
import wherefrom.ui.app.OnThisJob;
import wherefrom.ui.app.PrintedElsewhere;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.files.FilesScreen;

/**
 * Reads photographs, one by one or a folder of them: those that show a tag are filed with its part,
 * of the others the person is asked one by one what they show.
 */
final class FolderReading {
  /** How those came that were given. */
  private static final String FOLDER = "Read the folder again to go on.";

  static final String PUT_AWAY = "The photographs were not kept: their job was put away.";

  private static final String DROPPED = "Drop them again to go on.";

  private final ScreenContext context;
  private final Optional<Subject> likely;
  private final String again;
  private final OpenJob job;
  private final Screen from;
  private final PhotoFolder photos;

  private FolderReading(ScreenContext context, Optional<Subject> likely, String again) {
    this.context = context;
    this.likely = likely;
    this.again = again;
    this.job = context.getJob();
    this.from = context.navigator().current();
    List<TagCode> issued = context.issued();
    Supplier<List<TagCode>> elsewhere = PrintedElsewhere.of(context);
    this.photos =
        new PhotoFolder(job, context.services().photos(), file -> read(file, issued, elsewhere));
  }

  /**
   * Asks which folder, and reads it.
   *
   * @param likely what those without a tag show most likely
   */
  static void ask(ScreenContext context, Optional<Subject> likely) {
    if (context.attempt(() -> context.getJob().requireWritable())) {
      context
          .navigator()
          .open(
              () ->
                  FilesScreen.folder(
                      context,
                      "Which photographs?",
                      folder -> new FolderReading(context, likely, FOLDER).sort(List.of(folder))));
    }
  }

  /** Reads these, and those in folders among them. */
  static void read(ScreenContext context, Optional<Subject> likely, List<Path> files) {
    if (context.attempt(() -> context.getJob().requireWritable())) {
      new FolderReading(context, likely, DROPPED).sort(files);
    }
  }

  private List<String> read(Path file, List<TagCode> issued, Supplier<List<TagCode>> elsewhere)
      throws IOException {
    return context
        .services()
        .reader()
        .read(context.services().pictures().load(file), issued, elsewhere)
        .sightings()
        .stream()
        .map(Sighting::text)
        .toList();
  }

  private void sort(List<Path> files) {
    context.longWork("Reading the photographs", photos.reading(files), here(this::keep));
  }

  private void keep(PhotoFolder.Codes read) {
    PhotoFolder.Sorted sorted = photos.sort(read, new TagBook(job.state(), context.shelf()));
    if (sorted.tagged().isEmpty()) {
      told(sorted, 0);
      return;
    }
    context.longWork(
        "Keeping the photographs",
        context.writings().of(() -> photos.copy(sorted.tagged())),
        here(copied -> context.attempt(() -> told(sorted, photos.record(copied)))));
  }

  private <T> Consumer<T> here(Consumer<T> done) {
    return OnThisJob.take(context, done, PUT_AWAY);
  }

  private void told(PhotoFolder.Sorted sorted, int fresh) {
    List<Path> untagged = sorted.untagged().stream().map(PhotoFolder.Seen::file).toList();
    boolean asked = !untagged.isEmpty() && context.navigator().isUp(from);
    if (asked) {
      OfferScreen.ask(context, untagged, likely, again);
    }
    String kept = fresh == 0 ? "" : Words.count(fresh, "photograph") + " kept with parts.";
    String had = sorted.had().isEmpty() ? "" : " " + sorted.had().size() + " kept before.";
    String back = sorted.back().isEmpty() ? "" : " " + sorted.back().size() + " put back.";
    String open = asked || untagged.isEmpty() ? "" : notAsked(untagged.size());
    String said = (kept + had + back + open + left(sorted)).strip();
    if (!said.isEmpty() || untagged.isEmpty()) {
      context.say(said.isEmpty() ? "There is no photograph there." : said);
    }
    context.navigator().changed();
  }

  /** Another screen is up by now, and its scans are its own. */
  private static String notAsked(int untagged) {
    String shows = untagged == 1 ? " shows no tag" : " show no tag";
    return " " + Words.count(untagged, "photograph") + shows + ": read them again in Photographs.";
  }

  /** What could not be read, with why, of the first. */
  private static String left(PhotoFolder.Sorted sorted) {
    if (sorted.left().isEmpty()) {
      return "";
    }
    PhotoFolder.Left first = sorted.left().get(0);
    String more = sorted.left().size() > 1 ? " " + (sorted.left().size() - 1) + " more." : "";
    return " Left: " + first.why() + more;
  }
}
