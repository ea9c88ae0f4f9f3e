package wherefrom.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.inspection.Subject;
import wherefrom.job.photos.Photograph;
import wherefrom.job.photos.Photographing;
import wherefrom.job.ports.Equipment;

/** Keeps photographs of a part or a feature; lists those that are kept. */
final class PhotoCommand implements Command {
  private static final Option CAPTION = Option.maybe("--caption", "TEXT", "what to see on it");

  private final Equipment equipment;

  PhotoCommand(Equipment equipment) {
    this.equipment = equipment;
  }

  @Override
  public Usage usage() {
    return Usage.of(
            "photo",
            "[CODE|FEATURE] [FILE]",
            "Keeps a photograph of a part or a feature; without a file lists those kept.",
            Option.JOB,
            CAPTION)
        .noting("A FEATURE carries no tag and is named by its key, such as lobe@3EX.");
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput, IOException {
    Subjects.Call given = Subjects.split(call.operands());
    if (given.rest().size() > 1) {
      throw call.wrong("One photograph at a time.");
    }
    try (Bench bench = Bench.open(equipment, call, answer)) {
      Optional<Subject> subject = Optional.empty();
      if (given.subject().isPresent()) {
        subject = Optional.of(Subjects.get(bench, given.subject().get()));
      }
      if (given.rest().isEmpty()) {
        list(bench, subject, answer);
        return Status.RIGHT;
      }
      Path picture = call.path("FILE", given.rest().get(0));
      new Photographing(bench.job()).require(subject);
      String name = equipment.photos().add(bench.job().folder(), picture);
      new Photographing(bench.job()).add(subject, "", name, call.find(CAPTION.name()).orElse(""));
      answer.alone();
      list(bench, newest(bench), answer);
      return Status.RIGHT;
    }
  }

  private static List<Photograph> newest(Bench bench) {
    List<Photograph> all = Photograph.listAll(bench.job().state());
    return all.subList(all.size() - 1, all.size());
  }

  private static void list(Bench bench, Optional<Subject> subject, Answer answer) {
    List<Photograph> all = Photograph.listAll(bench.job().state());
    List<Photograph> wanted = new ArrayList<>(all);
    subject.ifPresent(of -> wanted.retainAll(Photograph.listOf(bench.job().state(), of)));
    list(bench, wanted, answer);
  }

  private static void list(Bench bench, List<Photograph> photos, Answer answer) {
    for (Photograph photo : photos) {
      String words = photo.words(bench.job().state());
      answer.row(
          Fields.of("of", words)
              .and("caption", photo.story())
              .and("file", photo.file())
              .and("time", photo.time().toString()),
          Answer.cells(words, photo.story(), photo.file()));
    }
  }
}
