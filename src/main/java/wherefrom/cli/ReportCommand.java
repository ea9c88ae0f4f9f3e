package wherefrom.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import wherefrom.job.ports.Equipment;

/** Writes a report for whoever mends the program. */
final class ReportCommand implements Command {
  private static final String JOB = "--job";

  private final Equipment equipment;

  ReportCommand(Equipment equipment) {
    this.equipment = equipment;
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
    String text = equipment.program().report();
    if (call.find(JOB).isPresent()) {
      text += equipment.archives().text(call.path(JOB));
    }
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    outlet.write(out -> out.write(bytes));
    answer.only(Fields.of("file", outlet.name()), "The report is " + outlet.name() + ".");
    return Status.RIGHT;
  }
}
