package wherefrom.ui.photos;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import wherefrom.job.photos.PhotoFolder;
import wherefrom.job.reader.Sighting;
import wherefrom.job.tags.TagBook;
import wherefrom.parts.TagCode;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.files.FilesScreen;

/**
 * Reads a folder of photographs: those that show a tag are filed with its part, of the others the
 * person says whether they show the whole engine.
 */
final class FolderReading {
  private final ScreenContext context;
  private final PhotoFolder photos;

  private FolderReading(ScreenContext context) {
    this.context = context;
    List<TagCode> issued = context.issued();
    this.photos =
        new PhotoFolder(
            context.getJob(),
            new TagBook(context.state(), context.shelf()),
            context.services().photos(),
            file -> read(file, issued));
  }

  static void ask(ScreenContext context) {
    if (context.attempt(() -> context.getJob().requireWritable())) {
      context
          .navigator()
          .open(
              () ->
                  FilesScreen.folder(
                      context,
                      "Which photographs?",
                      folder -> new FolderReading(context).sort(folder)));
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

  private void sort(Path folder) {
    context.longWork("Reading the photographs", () -> photos.sort(folder), this::sorted);
  }

  private void sorted(PhotoFolder.Sorted sorted) {
    if (sorted.untagged().isEmpty()) {
      keep(sorted, sorted.tagged());
      return;
    }
    List<Choice<List<PhotoFolder.Seen>>> ways = new ArrayList<>();
    String untagged = Words.count(sorted.untagged().size(), "photograph", "photographs");
    ways.add(
        new Choice<>(
            sorted.seen(), "Keep all", untagged + " without a tag go with the whole engine"));
    if (!sorted.tagged().isEmpty()) {
      String tagged = Words.count(sorted.tagged().size(), "photograph", "photographs");
      ways.add(new Choice<>(sorted.tagged(), "Keep those with a tag", tagged + " go with parts"));
    }
    context
        .navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    context, untagged + " without a tag", ways, kept -> keep(sorted, kept)));
  }

  private void keep(PhotoFolder.Sorted sorted, List<PhotoFolder.Seen> wanted) {
    context.longWork(
        "Keeping the photographs",
        () -> photos.copy(wanted),
        copied -> {
          int fresh = photos.record(copied);
          context.say(Words.count(fresh, "photograph", "photographs") + " kept." + left(sorted));
          context.navigator().changed();
        });
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
