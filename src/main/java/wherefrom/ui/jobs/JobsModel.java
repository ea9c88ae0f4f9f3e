package wherefrom.ui.jobs;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import wherefrom.job.Resume;
import wherefrom.job.Shelf;
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

  private final Clock clock;

  JobsModel(Clock clock) {
    this.clock = clock;
  }

  List<Line> lines(Shelf shelf) {
    return shelf.list().stream().map(this::line).toList();
  }

  private Line line(Shelf.Entry entry) {
    List<String> lines = new ArrayList<>();
    if (!entry.trouble().isEmpty()) {
      lines.add(entry.trouble());
    }
    entry.resume().ifPresent(resume -> lines.addAll(resume(resume)));
    return new Line(entry.folder(), entry.name(), lines);
  }

  private List<String> resume(Resume resume) {
    String when = Dates.ago(resume.lastTouched(), clock);
    return List.of("Last worked on " + when + ": " + resume.lastStep() + ".", resume.doNext());
  }
}
