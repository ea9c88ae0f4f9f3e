package wherefrom.server;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import wherefrom.files.AtomicFile;
import wherefrom.files.Folders;
import wherefrom.job.LogbookException;
import wherefrom.logbook.FolderNames;
import wherefrom.logbook.LogLines;

/**
 * What the server holds as folders of this machine: to list, to check, to copy and to export jobs
 * as those in folders are. Nothing is written here that is not on the server already, and all of it
 * can be deleted at any time.
 */
final class Mirror {
  /** A job of the server. */
  record Held(int id, String name, int engine) {}

  private static final Logger LOGGER = Logger.getLogger("wherefrom");

  private static final String HELD = "select id, name, engine from job";

  /** The sum of what a job's files hold, one after the other: a byte that differs shows. */
  private static final String SUM =
      "select encode(sha256(coalesce(string_agg(headers || line || '\\x0a'::bytea, ''::bytea"
          + " order by sequence), ''::bytea)), 'hex') from entry where job = ?";

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

  /**
   * The folder of a job.
   *
   * @throws LogbookException where the name is not that of one folder: it may lead anywhere
   */
  Path folder(String name) {
    if (!FolderNames.isOne(name)) {
      throw new LogbookException(
          "A job cannot be called \"" + name + "\" on a shared server. Choose a plain name.");
    }
    return folder.resolve(name);
  }

  /** The name by which the server knows a job's folder; empty where a path names none. */
  static String name(Path job) {
    return Optional.ofNullable(job.getFileName()).map(Path::toString).orElse("");
  }

  /** The jobs that the server has, by name. */
  Map<String, Held> list() {
    return database.ask(
        connection -> {
          Map<String, Held> held = new LinkedHashMap<>();
          try (PreparedStatement select = connection.prepareStatement(HELD + " order by id");
              ResultSet found = select.executeQuery()) {
            while (found.next()) {
              take(held(found), held);
            }
          }
          return held;
        });
  }

  private static Held held(ResultSet found) throws SQLException {
    return new Held(found.getInt(1), found.getString(2), found.getInt(3));
  }

  /** A name that was not given by this program is left alone, and the other jobs are there. */
  private static void take(Held job, Map<String, Held> jobs) {
    if (FolderNames.isOne(job.name())) {
      jobs.put(job.name(), job);
    } else {
      LOGGER.log(
          Level.WARNING, "Job {0} on the server has a name that no folder can have.", job.id());
    }
  }

  /** A job that the server must have. */
  Held get(Path job) {
    String name = name(job);
    return database
        .ask(connection -> find(connection, name))
        .filter(held -> FolderNames.isOne(held.name()))
        .orElseThrow(
            () ->
                new LogbookException(
                    "There is no job " + name + " on the shared server. List the jobs first."));
  }

  private static Optional<Held> find(Connection connection, String name) throws SQLException {
    try (PreparedStatement select = connection.prepareStatement(HELD + " where name = ?")) {
      select.setString(1, name);
      try (ResultSet found = select.executeQuery()) {
        return found.next() ? Optional.of(held(found)) : Optional.empty();
      }
    }
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

  /** Brings a job's folder up to date: it holds the server's bytes, and no others. */
  void refresh(Held job) throws IOException {
    Path there = folder(job.name());
    Folders.make(there);
    if (sum(there).equals(database.ask(connection -> sum(connection, job.id())))) {
      return;
    }
    List<LogLines.Line> lines =
        database.ask(
            connection ->
                LineRows.newer(connection, job.id(), 0).stream().map(LineRows.Row::line).toList());
    Map<String, byte[]> fresh = LogLines.files(lines);
    for (Path old : logbooks(there)) {
      if (!fresh.containsKey(name(old))) {
        Files.delete(old);
      }
    }
    for (Map.Entry<String, byte[]> file : fresh.entrySet()) {
      files.write(there.resolve(file.getKey()), file.getValue());
    }
  }

  private static String sum(Connection connection, int job) throws SQLException {
    try (PreparedStatement select = connection.prepareStatement(SUM)) {
      select.setInt(1, job);
      try (ResultSet sum = select.executeQuery()) {
        sum.next();
        return sum.getString(1);
      }
    }
  }

  private static String sum(Path job) throws IOException {
    List<byte[]> files = new ArrayList<>();
    for (Path file : logbooks(job)) {
      files.add(Files.readAllBytes(file));
    }
    return LogLines.digest(files);
  }

  private static List<Path> logbooks(Path job) throws IOException {
    try (Stream<Path> inside = Files.list(job)) {
      return inside.filter(Mirror::isLogbook).sorted().toList();
    }
  }

  private static boolean isLogbook(Path file) {
    return name(file).endsWith(".jsonl");
  }
}
