package wherefrom.ui.jobs;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.demo.DemoJob;
import wherefrom.job.shelf.Resume;
import wherefrom.job.shelf.Shelf;
import wherefrom.job.shelf.Standing;
import wherefrom.ui.app.Dates;
import wherefrom.ui.home.DayWords;

/** What the list of jobs says of each job. */
final class JobsModel {

  /**
   * A job in the list.
   *
   * @param sequence of its last entry; 0 where it cannot be opened
   * @param standing how it stands; empty where it cannot be opened
   * @param sofar how far it is, in few words
   * @param when it was last worked on, in few words
   * @param lines where it was left, or why it cannot be opened
   */
  record Line(
      Path folder,
      String name,
      long sequence,
      Optional<Standing> standing,
      String sofar,
      String when,
      List<String> lines) {
    Line {
      lines = List.copyOf(lines);
    }

    /** How far it is and when it was last worked on, or why it cannot be opened. */
    List<String> few() {
      return standing.isPresent() ? List.of(sofar + ", " + when) : lines;
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

  /** The job whose tags bear an engine number. */
  static Optional<Path> find(List<Line> jobs, int engine) {
    return jobs.stream()
        .filter(job -> job.standing().map(Standing::engine).filter(at -> at == engine).isPresent())
        .map(Line::folder)
        .findFirst();
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
    Optional<Standing> standing = entry.resume().map(Resume::standing);
    return new Line(
        entry.folder(),
        entry.name(),
        entry.resume().map(Resume::sequence).orElse(0L),
        standing,
        entry.trouble().isEmpty() ? standing.map(DayWords::sofar).orElse("") : entry.trouble(),
        entry.resume().map(this::when).orElse(""),
        lines);
  }

  /** The days of the demo are invented as well. */
  private String when(Resume resume) {
    return resume.standing().engine() == DemoJob.ENGINE
        ? "demo"
        : Dates.brief(resume.lastTouched(), clock);
  }

  private List<String> resume(Resume resume) {
    String when = Dates.ago(resume.lastTouched(), clock);
    return List.of("Last worked on " + when + ": " + resume.lastStep() + ".", resume.doNext());
  }
}
