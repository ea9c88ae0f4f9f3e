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
import wherefrom.ui.app.Desk;
import wherefrom.ui.files.FilesScreen;

/**
 * Reads a folder of photographs: those that show a tag are filed with its part, of the others the
 * person says whether they show the whole engine.
 */
final class FolderReading {
  private final Desk desk;
  private final PhotoFolder photos;

  private FolderReading(Desk desk) {
    this.desk = desk;
    List<TagCode> issued = desk.issued();
    this.photos =
        new PhotoFolder(
            desk.getJob(),
            new TagBook(desk.state(), desk.shelf()),
            desk.equipment().photos(),
            file -> read(file, issued));
  }

  static void ask(Desk desk) {
    if (desk.attempt(() -> desk.getJob().requireWritable())) {
      desk.navigator()
          .open(
              () ->
                  FilesScreen.folder(
                      desk, "Which photographs?", folder -> new FolderReading(desk).sort(folder)));
    }
  }

  private List<String> read(Path file, List<TagCode> issued) throws IOException {
    return desk
        .equipment()
        .reader()
        .read(desk.equipment().pictures().load(file), issued)
        .sightings()
        .stream()
        .map(Sighting::text)
        .toList();
  }

  private void sort(Path folder) {
    desk.longWork("Reading the photographs", () -> photos.sort(folder), this::sorted);
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
    desk.navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    desk, untagged + " without a tag", ways, kept -> keep(sorted, kept)));
  }

  private void keep(PhotoFolder.Sorted sorted, List<PhotoFolder.Seen> wanted) {
    desk.longWork(
        "Keeping the photographs",
        () -> photos.copy(wanted),
        copied -> {
          int fresh = photos.record(copied);
          desk.say(Words.count(fresh, "photograph", "photographs") + " kept." + left(sorted));
          desk.navigator().changed();
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
