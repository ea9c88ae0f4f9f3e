package wherefrom.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.ports.Equipment;
import wherefrom.job.print.Unprintable;
import wherefrom.job.record.BuildRecord;
import wherefrom.job.record.RecordPlots;

/** Writes the build record. */
final class RecordCommand implements Command {
  private final Equipment equipment;

  RecordCommand(Equipment equipment) {
    this.equipment = equipment;
  }

  @Override
  public Usage usage() {
    return Usage.of(
        "record",
        "",
        "Writes the build record as PDF, and as a table; says in short what is open.",
        Option.JOB,
        Option.maybe("--out", "F.pdf", "where to write it; - for standard output"),
        Option.maybe("--csv", "F.csv", "where to write its tables; - for standard output"),
        Outlet.REPLACE);
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput, IOException {
    Optional<Outlet> pdf = Outlet.find(call, "--out", answer);
    Optional<Outlet> csv = Outlet.find(call, "--csv", answer);
    List<Outlet> outlets = Stream.concat(pdf.stream(), csv.stream()).toList();
    Outlet.refuseSame(call, outlets);
    try (Bench bench = Bench.open(equipment, call, answer)) {
      BuildRecord record =
          BuildRecord.of(bench.job(), equipment.photos()).withPlots(RecordPlots.of(bench.job()));
      if (pdf.isPresent()) {
        Unprintable.warning(equipment.printer(), record).ifPresent(answer::say);
        equipment.reports().writeRecord(record, pdf.get().out());
      }
      if (csv.isPresent()) {
        equipment.reports().writeTables(record, csv.get().out());
      }
      say(record, outlets.stream().map(Outlet::name).toList(), answer);
      return Status.RIGHT;
    }
  }

  private static void say(BuildRecord record, List<String> files, Answer answer) {
    List<Object> rows = new ArrayList<>();
    List<String> lines = new ArrayList<>();
    for (RecordSection.Row row : record.sections().get(0).rows()) {
      rows.add(
          Fields.of("what", row.cells().get(0))
              .and("done", row.cells().get(1))
              .and("left", row.cells().get(2))
              .and("open", row.open())
              .all());
      lines.add(Answer.cells(row.cells().toArray(String[]::new)));
    }
    files.forEach(lines::add);
    answer.only(Fields.of("summary", rows).and("files", files), lines);
  }
}
