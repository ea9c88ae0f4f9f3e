package wherefrom.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import wherefrom.job.image.GreyImage;
import wherefrom.job.ports.Services;
import wherefrom.job.reader.Reading;
import wherefrom.job.reader.Sighting;
import wherefrom.job.reader.Unread;
import wherefrom.parts.TagCode;

/** Reads the tags on picture files and in films. */
final class ReadCommand {

  private ReadCommand() {}

  static Command of() {
    return Command.of(
            "read",
            "Reads the tags on PNG and JPEG pictures and in films.",
            Option.maybe("--job", "DIR", "the job whose tags they are: more is read, in words"),
            Option.flag("--any", "also codes of any other make, marked as foreign"))
        .takes("FILE|FOLDER…")
        .noting(
            "One line per code: file, what it says, meaning. What cannot be read is said"
                + " on standard error, each place once; with --json also as an element without"
                + " \"code\": \"unread\" says why, \"outline\" its corners in pixels.",
            "A film (MP4, MOV, AVI and others) is read frame by frame like a camera, each tag once."
                + " It is not searched for codes of other makes.",
            "Exit status: 0 something was read, 1 no tag was found, 2 no file was a picture or a film, or one"
                + " that the call names could not be read; the others are read all the same.")
        .does(ReadCommand::run);
  }

  private static Status run(Call call, Answer answer) throws BadInput, IOException {
    List<Path> files = files(call);
    if (call.find("--job").isEmpty()) {
      return read(files, List.of(), Optional.empty(), call, answer);
    }
    try (OpenedJob bench = OpenedJob.open(call, answer)) {
      return read(files, bench.book().issued(), Optional.of(bench), call, answer);
    }
  }

  private static List<Path> files(Call call) throws BadInput, IOException {
    if (call.operands().isEmpty()) {
      throw call.wrong("Give a picture file or a folder of them.");
    }
    List<Path> files = new ArrayList<>();
    for (String operand : call.operands()) {
      Path path = call.path("FILE", operand);
      if (Files.isDirectory(path)) {
        try (Stream<Path> inside = Files.list(path)) {
          inside.filter(Files::isRegularFile).sorted().forEach(files::add);
        }
      } else {
        files.add(path);
      }
    }
    if (files.isEmpty()) {
      throw new BadInput("There is no file in " + String.join(", ", call.operands()) + ".");
    }
    return files;
  }

  private static Status read(
      List<Path> files,
      Collection<TagCode> issued,
      Optional<OpenedJob> bench,
      Call call,
      Answer answer) {
    boolean any = call.find("--any").isPresent();
    Set<String> named = Set.copyOf(call.operands());
    boolean refused = false;
    int pictures = 0;
    int tags = 0;
    for (Path file : files) {
      try {
        Reading reading = reading(file, issued, bench, any, call.services());
        pictures++;
        tags += list(file, reading, bench, any, answer);
      } catch (IOException e) {
        answer.say(Faults.sentence(e));
        refused |= named.contains(file.toString());
      }
    }
    return pictures == 0 || refused ? Status.BAD_INPUT : Status.stoppedIf(tags == 0);
  }

  private static Reading reading(
      Path file,
      Collection<TagCode> issued,
      Optional<OpenedJob> bench,
      boolean any,
      Services services)
      throws IOException {
    if (FilmReading.isFilm(file)) {
      return FilmReading.of(file, services, issued);
    }
    GreyImage picture = services.pictures().load(file);
    Reading reading =
        services
            .reader()
            .read(
                picture, issued, () -> bench.map(OpenedJob::printedElsewhere).orElseGet(List::of));
    return any ? with(reading, services.reader().listForeign(picture)) : reading;
  }

  /** A reading with the other codes that are not in it yet. */
  private static Reading with(Reading reading, List<Sighting> foreign) {
    Set<String> texts = new HashSet<>();
    List<Sighting> all = new ArrayList<>(reading.sightings());
    all.forEach(sighting -> texts.add(sighting.text()));
    foreign.stream().filter(sighting -> texts.add(sighting.text())).forEach(all::add);
    return new Reading(all, reading.unread());
  }

  private static int list(
      Path file, Reading reading, Optional<OpenedJob> bench, boolean any, Answer answer) {
    int tags = 0;
    for (Sighting sighting : reading.sightings()) {
      if (any || sighting.basis() != Sighting.Basis.FOREIGN) {
        list(file, sighting, bench, answer);
        tags++;
      }
    }
    for (Unread unread : reading.unread()) {
      answer.say(file + ": a tag that cannot be read. " + unread.cause().hint());
      answer.row(unread(file, unread));
    }
    if (tags == 0 && reading.unread().isEmpty()) {
      answer.say(file + ": no tag was found.");
    }
    return tags;
  }

  /** What was found and not read; as text it is said on standard error only. */
  private static Row unread(Path file, Unread unread) {
    return new Row.Told(
        "",
        Json.object(
            "file", file.toString(),
            "unread", unread.cause().name().toLowerCase(Locale.ROOT).replace('_', ' '),
            "hint", unread.cause().hint(),
            "outline", unread.outline()));
  }

  private static void list(Path file, Sighting sighting, Optional<OpenedJob> bench, Answer answer) {
    String text = sighting.text();
    boolean foreign = TagCode.find(text).isEmpty();
    String meaning = foreign ? "foreign: not one of ours" : meaning(text, bench);
    answer.row(
        new Row.Told(
            Answer.cells(file.toString(), text, meaning),
            Json.object(
                "file", file.toString(),
                "code", text,
                "meaning", meaning,
                "foreign", foreign)));
  }

  private static String meaning(String text, Optional<OpenedJob> bench) {
    return bench
        .map(open -> Meaning.of(open.book().find(text)))
        .or(() -> TagCode.find(text).map(Meaning::of))
        .orElse("not one of ours");
  }
}
