package wherefrom.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.files.Outgoing;
import wherefrom.job.pages.TidyCell;
import wherefrom.job.pages.TidyTable;
import wherefrom.job.ports.Reports;
import wherefrom.job.tables.JobTables;

/**
 * The folder that a call wants the tables in, each in a file of its own; or none, where they are
 * wanted as JSON alone.
 */
record TableFolder(Optional<Path> folder, boolean replace) {
  private static final String OPTION = "--tables";
  private static final String JSON_ALONE = "-";

  /** As the option says; a file that is there is refused before anything is written. */
  static Optional<TableFolder> find(Call call) throws BadInput {
    Optional<String> given = call.find(OPTION);
    if (given.isEmpty()) {
      return Optional.empty();
    }
    if (given.get().equals(JSON_ALONE)) {
      return Optional.of(new TableFolder(Optional.empty(), false));
    }
    TableFolder found = new TableFolder(Optional.of(call.path(OPTION)), call.has(Outlet.REPLACE));
    found.refuseTaken(call);
    return Optional.of(found);
  }

  private static Path file(Path folder, String table) {
    return folder.resolve(table + ".csv");
  }

  private void refuseTaken(Call call) throws BadInput {
    Path at = folder.orElseThrow();
    if (Files.exists(at) && !Files.isDirectory(at)) {
      throw call.wrong(at + " is not a folder.");
    }
    for (String name : replace ? List.<String>of() : JobTables.NAMES) {
      Optional<String> taken = Outgoing.findTaken(file(at, name));
      if (taken.isPresent()) {
        throw call.wrong(taken.get() + " Give another folder, or --replace to write over it.");
      }
    }
  }

  /** Writes each table; gives the names of the files. */
  List<String> write(List<TidyTable> tables, Reports reports) throws IOException {
    List<String> written = new ArrayList<>();
    if (folder.isPresent()) {
      Files.createDirectories(folder.get());
      for (TidyTable table : tables) {
        Path file = file(folder.get(), table.name());
        reports.writeTable(table, replace ? Outgoing.replacing(file) : Outgoing.to(file));
        written.add(file.toString());
      }
    }
    return written;
  }

  /** The answer of the call with the tables behind it. */
  Row told(Row answer, List<String> written, List<TidyTable> tables) {
    Map<String, Object> fields = new LinkedHashMap<>(answer.fields());
    List<Object> files = new ArrayList<>();
    if (fields.get("files") instanceof List<?> before) {
      files.addAll(before);
    }
    files.addAll(written);
    fields.put("files", files);
    Map<String, Object> content = new LinkedHashMap<>();
    tables.forEach(table -> content.put(table.name(), objects(table)));
    fields.put("tables", content);
    List<String> lines = new ArrayList<>(List.of(answer.text()));
    lines.addAll(written);
    return new Row.Told(Row.lines(lines), fields);
  }

  /** A row as an object; what is not known is left out of it. */
  private static List<Map<String, Object>> objects(TidyTable table) {
    List<Map<String, Object>> objects = new ArrayList<>();
    for (List<TidyCell> row : table.rows()) {
      Map<String, Object> object = new LinkedHashMap<>();
      for (int at = 0; at < row.size(); at++) {
        String column = table.columns().get(at);
        row.get(at).value().ifPresent(value -> object.put(column, value));
      }
      objects.add(object);
    }
    return objects;
  }
}
