package wherefrom.cli;

import java.nio.file.Path;
import java.util.Optional;
import wherefrom.job.Equipment;
import wherefrom.job.Found;
import wherefrom.job.OpenJob;
import wherefrom.job.Shelf;
import wherefrom.job.TagBook;

/** The job of a call, open, with its neighbours on the shelf. */
record Bench(Shelf shelf, OpenJob job) implements AutoCloseable {

  /** Opens the job of {@code --job}; what was noticed on opening is said on standard error. */
  static Bench open(Equipment equipment, Call call, Answer answer) throws BadInput {
    Path folder = call.path("--job").toAbsolutePath().normalize();
    Path around = Optional.ofNullable(folder.getParent()).orElse(folder);
    Shelf shelf = equipment.shelves().apply(around);
    OpenJob job = shelf.open(folder);
    String noticed = job.condition().sentence();
    if (!noticed.isEmpty()) {
      answer.say(noticed);
    }
    return new Bench(shelf, job);
  }

  TagBook book() {
    return new TagBook(job.state(), shelf);
  }

  Found find(String code) {
    return book().find(code);
  }

  @Override
  public void close() {
    job.close();
  }
}
