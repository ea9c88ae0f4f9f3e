package wherefrom.ui.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import wherefrom.files.FileNames;
import wherefrom.files.Outgoing;
import wherefrom.files.Progress;
import wherefrom.job.pages.TidyTable;
import wherefrom.job.tables.JobTables;
import wherefrom.text.Words;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.files.FilesScreen;

/** The job's tables, each a file, in a folder of their own where the person says. */
final class TablesOut {
  private final ScreenContext context;

  TablesOut(ScreenContext context) {
    this.context = context;
  }

  void ask() {
    context
        .navigator()
        .open(() -> FilesScreen.folder(context, "Where to save the tables", this::into));
  }

  /** A folder that is there already is left as it is; the new one stands beside it. */
  private void into(Path where) {
    Path wanted = where.resolve(FileNames.of(context.state().name(), "tables", ""));
    Path folder = Files.exists(wanted) ? FileNames.beside(wanted) : wanted;
    List<TidyTable> tables = JobTables.of(context.getJob());
    context.longWork(
        "Writing the tables",
        context.writings().of(() -> write(tables, folder)),
        written ->
            context.say(
                Words.count(tables.size(), "table", "tables") + " are in " + written + "."));
  }

  private Path write(List<TidyTable> tables, Path folder) throws IOException {
    Files.createDirectories(folder);
    for (int at = 0; at < tables.size(); at++) {
      TidyTable table = tables.get(at);
      Outgoing csv = Outgoing.to(folder.resolve(table.name() + ".csv"));
      context.services().reports().writeTable(table, csv);
      Progress.step(at + 1, tables.size());
    }
    return folder;
  }
}
