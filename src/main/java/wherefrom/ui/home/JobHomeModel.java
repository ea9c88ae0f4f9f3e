package wherefrom.ui.home;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import wherefrom.job.LogbookCondition;
import wherefrom.job.OpenJob;
import wherefrom.job.shelf.Resume;
import wherefrom.ui.app.Dates;

/** Where a job was left, in lines for a person who comes back after months. */
final class JobHomeModel {
  private static final int MOST_WAITING = 3;

  /** A line of the account: what it is about, and what is so. */
  record Line(String heading, String words) {}

  private JobHomeModel() {}

  static List<Line> lines(OpenJob job, Clock clock) {
    Resume resume = Resume.of(job);
    List<Line> lines = new ArrayList<>();
    LogbookCondition condition = job.condition();
    if (!condition.sentence().isEmpty()) {
      lines.add(new Line("The logbook", condition.sentence()));
    }
    String stop = resume.stop().map(sentence -> " " + sentence).orElse("");
    lines.add(new Line("Do next", resume.doNext() + stop));
    lines.add(
        new Line(
            "Last worked on " + Dates.ago(resume.lastTouched(), clock), resume.lastStep() + "."));
    lines.add(new Line("So far", sofar(resume)));
    if (!resume.waiting().isEmpty()) {
      lines.add(new Line("Waiting for", waiting(resume.waiting())));
    }
    return lines;
  }

  private static String sofar(Resume resume) {
    return resume.inEngine()
        + " still in the engine, "
        + resume.fitted()
        + " fitted, "
        + resume.missing()
        + " to fit.";
  }

  private static String waiting(List<String> waiting) {
    int shown = Math.min(MOST_WAITING, waiting.size());
    String first = String.join("; ", waiting.subList(0, shown));
    int more = waiting.size() - shown;
    return more == 0 ? first + "." : first + "; and " + more + " more: see the bench map.";
  }
}
