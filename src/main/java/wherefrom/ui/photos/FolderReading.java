package wherefrom.ui.photos;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import wherefrom.inspection.Subject;
import wherefrom.job.photos.PhotoFolder;
import wherefrom.job.reader.Sighting;
import wherefrom.job.tags.TagBook;
import wherefrom.parts.TagCode;
import wherefrom.text.Words;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.files.FilesScreen;

/**
 * Reads photographs, one by one or a folder of them: those that show a tag are filed with its part,
 * of the others the person is asked one by one what they show.
 */
final class FolderReading {
  private final ScreenContext context;
  private final Optional<Subject> likely;
  private final PhotoFolder photos;

  private FolderReading(ScreenContext context, Optional<Subject> likely) {
    this.context = context;
    this.likely = likely;
    List<TagCode> issued = context.issued();
    this.photos =
        new PhotoFolder(
            context.getJob(),
            new TagBook(context.state(), context.shelf()),
            context.services().photos(),
            file -> read(file, issued));
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
                      folder -> new FolderReading(context, likely).sort(List.of(folder))));
    }
  }

  /** Reads these, and those in folders among them. */
  static void read(ScreenContext context, Optional<Subject> likely, List<Path> files) {
    if (context.attempt(() -> context.getJob().requireWritable())) {
      new FolderReading(context, likely).sort(files);
    }
  }

  private List<String> read(Path file, List<TagCode> issued) throws IOException {
    return context
        .services()
        .reader()
        .read(context.services().pictures().load(file), issued)
        .sightings()
        .stream()
        .map(Sighting::text)
        .toList();
  }

  private void sort(List<Path> files) {
    context.longWork("Reading the photographs", () -> photos.sort(files), this::keep);
  }

  private void keep(PhotoFolder.Sorted sorted) {
    if (sorted.tagged().isEmpty()) {
      told(sorted, 0);
      return;
    }
    context.longWork(
        "Keeping the photographs",
        () -> photos.copy(sorted.tagged()),
        copied -> told(sorted, photos.record(copied)));
  }

  private void told(PhotoFolder.Sorted sorted, int fresh) {
    List<Path> untagged = sorted.untagged().stream().map(PhotoFolder.Seen::file).toList();
    if (!untagged.isEmpty()) {
      context.navigator().open(() -> new OfferScreen(context, untagged, likely));
    }
    String kept = fresh == 0 ? "" : Words.count(fresh, "photograph") + " kept with parts.";
    String had = sorted.had().isEmpty() ? "" : " " + sorted.had().size() + " kept before.";
    String said = (kept + had + left(sorted)).strip();
    if (!said.isEmpty() || untagged.isEmpty()) {
      context.say(said.isEmpty() ? "There is no photograph there." : said);
    }
    context.navigator().changed();
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
