package wherefrom.logbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import wherefrom.files.Incoming;

/** The files that make up a job: the logbook's and the photographs. */
final class JobFiles {
  /** A million entries and more. */
  private static final int MOST_LOG = 500_000_000;

  private JobFiles() {}

  /** Their names from the job's folder, with {@code /} between; the logbook first. */
  static List<String> of(Path job) throws IOException {
    List<String> names = new ArrayList<>();
    for (int number : LogFiles.in(job, new RealDisk()).keySet()) {
      names.add(LogFiles.name(number));
    }
    for (String photo : photos(job)) {
      names.add(PhotoFiles.FOLDER + "/" + photo);
    }
    return names;
  }

  /** The photographs that lie in a job's folder, referred to or not. */
  static List<String> photos(Path job) throws IOException {
    Path folder = job.resolve(PhotoFiles.FOLDER);
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(file -> !Incoming.isSpecial(file))
          .map(file -> String.valueOf(file.getFileName()))
          .filter(PhotoFiles::isName)
          .sorted()
          .toList();
    }
  }

  /** How many bytes a file of a job may have when it is brought in. */
  static int most(String name) {
    return LogFiles.isOne(name) ? MOST_LOG : PhotoFiles.MOST_BYTES;
  }

  /** Whether a name is that of a job's file: no other name is ever written to. */
  static boolean isOne(String name) {
    String photos = PhotoFiles.FOLDER + "/";
    return LogFiles.isOne(name)
        || (name.startsWith(photos) && PhotoFiles.isName(name.substring(photos.length())));
  }
}
