package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.ports.Equipment;
import wherefrom.job.shelf.Resume;

/** Says where a job was left. */
final class ResumeCommand implements Command {
  private final Equipment equipment;

  ResumeCommand(Equipment equipment) {
    this.equipment = equipment;
  }

  @Override
  public Usage usage() {
    return Usage.of("resume", "", "Says where a job was left, and what to do next.", Option.JOB);
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput {
    try (Bench bench = Bench.open(equipment, call, answer)) {
      Resume resume = Resume.of(bench.job());
      answer.only(
          Fields.of("lastTouched", resume.lastTouched().toString())
              .and("lastStep", resume.lastStep())
              .and("stop", resume.stop().orElse(""))
              .and("inEngine", resume.inEngine())
              .and("missing", resume.missing())
              .and("fitted", resume.fitted())
              .and("waiting", resume.waiting())
              .and("doNext", resume.doNext()),
          lines(bench, resume));
      return Status.RIGHT;
    }
  }

  private static List<String> lines(Bench bench, Resume resume) {
    List<String> lines = new ArrayList<>();
    lines.add(bench.job().state().name() + ", last worked on " + resume.lastTouched() + ".");
    lines.add("Last: " + resume.lastStep() + ".");
    resume.stop().ifPresent(stop -> lines.add("Stopped: " + stop));
    lines.add(
        "In the engine "
            + resume.inEngine()
            + ", fitted "
            + resume.fitted()
            + ", missing "
            + resume.missing()
            + ".");
    resume.waiting().forEach(waiting -> lines.add("Away: " + waiting + "."));
    lines.add(resume.doNext());
    return lines;
  }
}
