package wherefrom.server;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;
import wherefrom.files.AtomicFile;
import wherefrom.job.LogbookException;
import wherefrom.job.photos.Photos;
import wherefrom.logbook.PhotoFiles;

/** Photographs on the server; what was seen here lies in the job's folder on this machine, too. */
final class ServerPhotos implements Photos {
  private static final Logger LOGGER = Logger.getLogger("wherefrom");

  private final Database database;
  private final Mirror mirror;
  private final PhotoFiles here = new PhotoFiles();
  private final AtomicFile files = new AtomicFile();

  ServerPhotos(Database database, Mirror mirror) {
    this.database = database;
    this.mirror = mirror;
  }

  @Override
  public String add(Path jobFolder, Path picture, Set<String> named) throws IOException {
    String name = here.add(jobFolder, picture, named);
    byte[] bytes = Files.readAllBytes(here.locate(jobFolder, name));
    try {
      Mirror.Held job = mirror.get(jobFolder);
      // Sent again it counts once: its name is the sum of its bytes.
      return database.sendUntilHeard(
          connection -> {
            NewRows.addPhotograph(connection, job.id(), name, bytes);
            return name;
          });
    } catch (LogbookException e) {
      throw new IOException("The photograph could not be kept. " + e.getMessage(), e);
    }
  }

  @Override
  public Set<String> names(Path picture) throws IOException {
    return here.names(picture);
  }

  @Override
  public boolean isThere(Path jobFolder, String name) throws IOException {
    fetch(jobFolder, name);
    return here.isThere(jobFolder, name);
  }

  @Override
  public Path locate(Path jobFolder, String name) {
    Path there = here.locate(jobFolder, name);
    try {
      fetch(jobFolder, name);
    } catch (IOException e) {
      // Whoever opens it says that it is not there.
      LOGGER.log(Level.WARNING, "A photograph was not fetched.", e);
    }
    return there;
  }

  private void fetch(Path jobFolder, String name) throws IOException {
    Path there = here.locate(jobFolder, name);
    if (Files.exists(there)) {
      return;
    }
    try {
      Optional<byte[]> bytes =
          database.ask(connection -> find(connection, Mirror.name(jobFolder), name));
      if (bytes.isPresent()) {
        files.write(there, bytes.get());
      }
    } catch (LogbookException e) {
      throw new IOException(e.getMessage(), e);
    }
  }

  private static Optional<byte[]> find(Connection connection, String job, String name)
      throws SQLException {
    try (PreparedStatement select =
        connection.prepareStatement(
            "select bytes from photograph join job on job = id"
                + " where job.name = ? and photograph.name = ?")) {
      select.setString(1, job);
      select.setString(2, name);
      try (ResultSet found = select.executeQuery()) {
        return found.next() ? Optional.of(found.getBytes(1)) : Optional.empty();
      }
    }
  }

  /** Brings all photographs of a job to its folder on this machine. */
  void fetchAll(Path jobFolder) throws IOException {
    List<String> names = database.ask(connection -> names(connection, Mirror.name(jobFolder)));
    for (String name : names) {
      if (PhotoFiles.isName(name)) {
        fetch(jobFolder, name);
      } else {
        LOGGER.log(Level.WARNING, "The server has a photograph of no such name: {0}", name);
      }
    }
  }

  private static List<String> names(Connection connection, String job) throws SQLException {
    try (PreparedStatement select =
        connection.prepareStatement(
            "select photograph.name from photograph join job on job = id where job.name = ?")) {
      select.setString(1, job);
      List<String> names = new ArrayList<>();
      try (ResultSet found = select.executeQuery()) {
        while (found.next()) {
          names.add(found.getString(1));
        }
      }
      return names;
    }
  }
}
