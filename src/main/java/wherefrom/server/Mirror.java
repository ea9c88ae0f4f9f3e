package wherefrom.server;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import wherefrom.files.AtomicFile;
import wherefrom.files.Folders;
import wherefrom.job.LogbookException;
import wherefrom.logbook.LogLines;

/**
 * What the server holds as folders of this machine: to list, to check, to copy and to export jobs
 * as those in folders are. Nothing is written here that is not on the server already, and all of it
 * can be deleted at any time.
 */
final class Mirror {
  /** A job of the server, and how many bytes its files have. */
  record Held(int id, String name, int engine, long bytes) {}

  private static final String HELD =
      "select id, name, engine,"
          + " (select coalesce(sum(octet_length(line) + 1 + octet_length(headers)), 0)"
          + " from entry where job = id) from job order by id";

  private final Database database;
  private final Path folder;
  private final AtomicFile files = new AtomicFile();

  Mirror(Database database, Path folder) {
    this.database = database;
    this.folder = folder;
  }

  Path folder() {
    return folder;
  }

  /** The folder of a job. */
  Path folder(String name) {
    return folder.resolve(name);
  }

  /** The name by which the server knows a job's folder. */
  static String name(Path job) {
    return String.valueOf(job.getFileName());
  }

  /** The jobs that the server has, by name. */
  Map<String, Held> list() {
    return database.ask(
        connection -> {
          Map<String, Held> held = new LinkedHashMap<>();
          try (PreparedStatement select = connection.prepareStatement(HELD);
              ResultSet found = select.executeQuery()) {
            while (found.next()) {
              Held job =
                  new Held(found.getInt(1), found.getString(2), found.getInt(3), found.getLong(4));
              held.put(job.name(), job);
            }
          }
          return held;
        });
  }

  /** A job that the server must have. */
  Held get(Path job) {
    Held held = list().get(name(job));
    if (held == null) {
      throw new LogbookException(
          "There is no job " + name(job) + " on the shared server. List the jobs first.");
    }
    return held;
  }

  /** Makes a job's folder, by which the job is known while it is open. */
  void make(Held job) {
    try {
      Folders.make(folder(job.name()));
    } catch (IOException e) {
      throw new LogbookException(folder + " cannot be written: " + e.getMessage() + ".", e);
    }
  }

  /** Brings the folders of all jobs up to date, but for one engine's. */
  void refresh(int but) {
    try {
      Map<String, Held> held = list();
      Folders.make(folder);
      try (Stream<Path> there = Files.list(folder)) {
        for (Path old : there.filter(Files::isDirectory).toList()) {
          if (!held.containsKey(name(old))) {
            Folders.remove(old);
          }
        }
      }
      for (Held job : held.values()) {
        if (job.engine() != but) {
          refresh(job);
        }
      }
    } catch (IOException e) {
      throw new LogbookException(folder + " cannot be written: " + e.getMessage() + ".", e);
    }
  }

  /** Brings a job's folder up to date. */
  void refresh(Held job) throws IOException {
    Path there = folder(job.name());
    Folders.make(there);
    if (bytes(there) == job.bytes()) {
      return;
    }
    List<LogLines.Line> lines =
        database.ask(
            connection ->
                LineRows.newer(connection, job.id(), 0).stream().map(LineRows.Row::line).toList());
    for (Map.Entry<String, byte[]> file : LogLines.files(lines).entrySet()) {
      files.write(there.resolve(file.getKey()), file.getValue());
    }
  }

  private static long bytes(Path job) throws IOException {
    try (Stream<Path> inside = Files.list(job)) {
      long bytes = 0;
      for (Path file : inside.filter(Mirror::isLogbook).toList()) {
        bytes += Files.size(file);
      }
      return bytes;
    }
  }

  private static boolean isLogbook(Path file) {
    return name(file).endsWith(".jsonl");
  }
}
