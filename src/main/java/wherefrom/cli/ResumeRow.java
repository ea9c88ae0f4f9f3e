package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import wherefrom.job.shelf.Resume;

/** Where a job was left. */
record ResumeRow(String name, Resume resume, String lastTouched) implements Row {
  static ResumeRow of(OpenedJob bench) {
    Resume resume = Resume.of(bench.job());
    String touched = bench.job().days().stamp(resume.lastTouched());
    return new ResumeRow(bench.state().name(), resume, touched);
  }

  @Override
  public String text() {
    List<String> lines = new ArrayList<>();
    lines.add(name + ", last worked on " + lastTouched + ".");
    lines.add("Last: " + resume.lastStep() + ".");
    resume.stop().ifPresent(stop -> lines.add("Stopped: " + stop));
    lines.add(
        String.format(
            Locale.ROOT,
            "In the engine %d, fitted %d, to fit %d.",
            resume.inEngine(),
            resume.fitted(),
            resume.missing()));
    resume.waiting().forEach(waiting -> lines.add("Away: " + waiting + "."));
    lines.add(resume.doNext());
    return Row.lines(lines);
  }

  @Override
  public Map<String, Object> fields() {
    return Json.object(
        "name", name,
        "lastTouched", lastTouched,
        "lastStep", resume.lastStep(),
        "stop", resume.stop().orElse(""),
        "inEngine", resume.inEngine(),
        "toFit", resume.missing(),
        "fitted", resume.fitted(),
        "waiting", resume.waiting(),
        "doNext", resume.doNext());
  }
}
