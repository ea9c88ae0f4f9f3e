package wherefrom.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wherefrom.job.photos.PhotoFolder;
import wherefrom.job.photos.Photograph;
import wherefrom.job.reader.Sighting;

/** Keeps the photographs of a folder: those that show tags with their parts. */
final class PhotosCommand {
  private static final Option ENGINE =
      Option.flag("--engine", "keep those without a tag as photographs of the whole engine");

  private PhotosCommand() {}

  static Command of() {
    return Command.of(
            "photos", "Keeps a folder's photographs with the parts whose tags they show.", ENGINE)
        .takes("FOLDER")
        .noting(
            "One line per picture: file, of what. A picture without a tag is listed and left,"
                + " but with --engine.",
            "To keep one of those with what it shows: photo CODE FILE, or photo FEATURE FILE.",
            "Exit status: 0 all were kept, 1 some were left.")
        .onJob(PhotosCommand::run);
  }

  private record PictureRow(String file, String of, boolean kept) implements Row {}

  private static Status run(OpenedJob bench, Call call, Answer answer)
      throws BadInput, IOException {
    if (call.operands().size() != 1) {
      throw call.wrong("Give one folder of pictures.");
    }
    Path folder = call.path("FOLDER", call.operands().get(0));
    if (!Files.isDirectory(folder)) {
      throw call.wrong("There is no folder " + folder + ".");
    }
    bench.job().requireWritable();
    PhotoFolder photos =
        new PhotoFolder(bench.job(), call.services().photos(), file -> codes(bench, call, file));
    PhotoFolder.Sorted sorted = photos.sort(List.of(folder), bench.book());
    boolean engine = call.has(ENGINE);
    List<PhotoFolder.Seen> wanted = engine ? sorted.seen() : sorted.tagged();
    photos.record(photos.copy(wanted));
    return tell(bench, sorted, engine, answer);
  }

  private static Status tell(
      OpenedJob bench, PhotoFolder.Sorted sorted, boolean engine, Answer answer) {
    List<Row> rows = new ArrayList<>();
    for (PhotoFolder.Seen seen : sorted.seen()) {
      boolean tagged = !seen.of().isEmpty();
      String of =
          tagged
              ? seen.of().stream()
                  .map(one -> Photograph.words(bench.state(), Optional.of(one)))
                  .collect(Collectors.joining("; "))
              : engine ? "the whole engine" : "no tag: left";
      rows.add(new PictureRow(String.valueOf(seen.file().getFileName()), of, tagged || engine));
    }
    for (Path had : sorted.had()) {
      rows.add(new PictureRow(String.valueOf(had.getFileName()), "kept before", true));
    }
    for (Path back : sorted.back()) {
      rows.add(new PictureRow(String.valueOf(back.getFileName()), "put back: it was gone", true));
    }
    rows.forEach(answer::row);
    sorted.left().forEach(left -> answer.fault(left.why()));
    if (!sorted.left().isEmpty()) {
      return Status.STOPPED;
    }
    return engine || sorted.untagged().isEmpty() ? Status.RIGHT : Status.STOPPED;
  }

  private static List<String> codes(OpenedJob bench, Call call, Path file) throws IOException {
    return call
        .services()
        .reader()
        .read(call.services().pictures().load(file), bench.book().issued(), bench::printedElsewhere)
        .sightings()
        .stream()
        .map(Sighting::text)
        .toList();
  }
}
