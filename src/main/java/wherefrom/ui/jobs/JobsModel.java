package wherefrom.ui.jobs;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.job.shelf.Resume;
import wherefrom.job.shelf.Shelf;
import wherefrom.ui.app.Dates;

/** What the list of jobs says of each job. */
final class JobsModel {

  /**
   * A job in the list.
   *
   * @param lines where it was left, or why it cannot be opened
   */
  record Line(Path folder, String name, List<String> lines) {
    Line {
      lines = List.copyOf(lines);
    }
  }

  /** How the copy of a job stands whose last entry has a sequence. */
  interface Copies {
    Optional<String> words(Path job, long sequence);
  }

  private final Clock clock;
  private final Copies copies;

  JobsModel(Clock clock, Copies copies) {
    this.clock = clock;
    this.copies = copies;
  }

  List<Line> lines(List<Shelf.Entry> jobs) {
    return jobs.stream().map(this::line).toList();
  }

  private Line line(Shelf.Entry entry) {
    List<String> lines = new ArrayList<>();
    if (!entry.trouble().isEmpty()) {
      lines.add(entry.trouble());
    }
    entry.resume().ifPresent(resume -> lines.addAll(resume(resume)));
    entry
        .resume()
        .flatMap(resume -> copies.words(entry.folder(), resume.sequence()))
        .ifPresent(lines::add);
    return new Line(entry.folder(), entry.name(), lines);
  }

  private List<String> resume(Resume resume) {
    String when = Dates.ago(resume.lastTouched(), clock);
    return List.of("Last worked on " + when + ": " + resume.lastStep() + ".", resume.doNext());
  }
}
