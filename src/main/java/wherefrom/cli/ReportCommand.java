package wherefrom.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import wherefrom.job.Program;

/** Writes a report for whoever mends the program. */
final class ReportCommand implements Command {
  private static final String JOB = "--job";

  private final Program program;

  ReportCommand(Program program) {
    this.program = program;
  }

  @Override
  public Usage usage() {
    return Usage.of(
            "report",
            "",
            "Writes version, system and log to a file, for whoever mends the program.",
            Option.needed("--out", "F.txt", "where to write; - for standard output"),
            Option.maybe(JOB, "DIR", "adds the logbook of this job"),
            Outlet.REPLACE)
        .noting("Nothing of any job is in it without --job.");
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput, IOException {
    Outlet outlet = Outlet.get(call, "--out", answer);
    Optional<String> job = call.find(JOB);
    String text = job.isPresent() ? program.report(call.path(JOB)) : program.report();
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    outlet.write(out -> out.write(bytes));
    answer.only(Fields.of("file", outlet.name()), "The report is " + outlet.name() + ".");
    return Status.RIGHT;
  }
}
