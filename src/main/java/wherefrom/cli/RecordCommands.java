package wherefrom.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wherefrom.inspection.Subject;
import wherefrom.job.pages.PaperSize;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.pages.TidyTable;
import wherefrom.job.photos.Photograph;
import wherefrom.job.photos.Photographing;
import wherefrom.job.print.Unprintable;
import wherefrom.job.record.BuildRecord;
import wherefrom.job.record.RecordPlots;
import wherefrom.job.tables.JobTables;

/** The build record, and photographs of parts and features. */
final class RecordCommands {

  private RecordCommands() {}

  static List<Command> all() {
    return List.of(
        Command.of(
                "record",
                "Writes the build record as PDF, and as a table; says in short what is open.",
                Option.JOB,
                Option.maybe("--out", "F.pdf", "where to write it; - for standard output"),
                Option.maybe("--csv", "F.csv", "where to write its tables; - for standard output"),
                Option.maybe(
                    "--tables", "DIR", "a folder for tables of one fact a row; - for JSON alone"),
                PaperOption.BINDER.option(),
                Outlet.REPLACE)
            .does(RecordCommands::record),
        Command.of(
                "photo",
                "Keeps a photograph of a part or a feature; without a file lists those kept.",
                Option.JOB,
                Option.maybe("--caption", "TEXT", "what to see on it"))
            .takes("[CODE|FEATURE] [FILE]")
            .noting("A FEATURE carries no tag and is named by its key, such as lobe@3EX.")
            .does(RecordCommands::photo));
  }

  private static Status record(Call call, Answer answer) throws BadInput, IOException {
    Optional<Outlet> pdf = Outlet.find(call, "--out", answer);
    Optional<Outlet> csv = Outlet.find(call, "--csv", answer);
    List<Outlet> outlets = Stream.concat(pdf.stream(), csv.stream()).toList();
    Outlet.refuseSame(call, outlets);
    PaperSize paper = PaperOption.BINDER.get(call);
    Optional<TableFolder> tables = TableFolder.find(call);
    try (OpenedJob bench = OpenedJob.open(call, answer)) {
      BuildRecord record =
          BuildRecord.of(bench.job(), call.services().photos())
              .withPlots(RecordPlots.of(bench.job()));
      if (pdf.isPresent()) {
        Unprintable.warning(call.services().printer(), record).ifPresent(answer::say);
        call.services().reports().writeRecord(record, paper, pdf.get().out());
      }
      if (csv.isPresent()) {
        call.services().reports().writeTables(record, csv.get().out());
      }
      if (tables.isEmpty()) {
        return answer.only(RecordRow.of(record, outlets));
      }
      List<TidyTable> all = JobTables.of(bench.job());
      List<String> written = tables.get().write(all, call.services().reports());
      return answer.only(tables.get().told(RecordRow.of(record, outlets), written, all));
    }
  }

  private record SummaryRow(String what, String done, String left, boolean open) {
    static SummaryRow of(RecordSection.Row row) {
      List<String> cells = row.cells();
      return new SummaryRow(cells.get(0), cells.get(1), cells.get(2), row.open());
    }
  }

  private record RecordRow(List<SummaryRow> summary, List<String> files, Row.Beside told)
      implements Row {
    static RecordRow of(BuildRecord record, List<Outlet> outlets) {
      List<RecordSection.Row> rows = record.sections().get(0).rows();
      List<String> files = outlets.stream().map(Outlet::name).toList();
      List<String> lines = new ArrayList<>();
      rows.forEach(row -> lines.add(Answer.cells(row.cells().toArray())));
      lines.addAll(files);
      return new RecordRow(
          rows.stream().map(SummaryRow::of).toList(), files, new Row.Beside(Row.lines(lines)));
    }
  }

  private static Status photo(Call call, Answer answer) throws BadInput, IOException {
    Subjects.Call given = Subjects.split(call.operands());
    if (given.rest().size() > 1) {
      throw call.wrong("One photograph at a time.");
    }
    try (OpenedJob bench = OpenedJob.open(call, answer)) {
      Optional<Subject> subject = Optional.empty();
      if (given.subject().isPresent()) {
        subject = Optional.of(Subjects.shown(bench, given.subject().get()));
      }
      if (given.rest().isEmpty()) {
        list(bench, subject, answer);
        return Status.RIGHT;
      }
      Path picture = call.path("FILE", given.rest().get(0));
      return answer.only(keep(bench, subject, picture, call));
    }
  }

  private static Row keep(OpenedJob bench, Optional<Subject> subject, Path picture, Call call)
      throws IOException {
    Photographing photographing = new Photographing(bench.job());
    photographing.require(subject);
    String name = call.services().photos().add(bench.job().folder(), picture);
    photographing.add(subject, "", name, call.text("--caption"));
    List<Photograph> all = Photograph.listAll(bench.state());
    return PhotoRow.of(bench, all.get(all.size() - 1));
  }

  private static void list(OpenedJob bench, Optional<Subject> subject, Answer answer) {
    List<Photograph> wanted = new ArrayList<>(Photograph.listAll(bench.state()));
    subject.ifPresent(of -> wanted.retainAll(Photograph.listOf(bench.state(), of)));
    wanted.forEach(photo -> answer.row(PhotoRow.of(bench, photo)));
  }

  private record PhotoRow(String of, String caption, String file, String time) implements Row {
    static PhotoRow of(OpenedJob bench, Photograph photo) {
      return new PhotoRow(
          photo.words(bench.state()),
          photo.story(),
          photo.file(),
          bench.job().days().stamp(photo.time()));
    }

    @Override
    public String text() {
      return Answer.cells(of, caption, file);
    }
  }
}
