package wherefrom.logbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import wherefrom.job.entry.JobOpened;

/**
 * Where the job with an engine number lies, of a shop of many jobs. What is kept beside them only
 * says where to look first: the job's own logbook has the word, and where that says otherwise all
 * are looked at.
 */
final class EngineFolders {
  static final String FILE = ".wherefrom-engines";
  private static final String PART = FILE + ".part";

  private final Path shop;
  private final List<Path> jobs;

  /**
   * @param jobs the folders of the shop that may be jobs
   */
  EngineFolders(Path shop, List<Path> jobs) {
    this.shop = shop;
    this.jobs = jobs;
  }

  /** How the job with this engine number was opened; empty where no job has it. */
  Optional<JobOpened> find(int engine) {
    String wanted = engine + " ";
    Optional<JobOpened> hinted =
        lines().stream()
            .filter(line -> line.startsWith(wanted))
            .findFirst()
            .flatMap(line -> in(line.substring(wanted.length()), engine));
    return hinted.isPresent() ? hinted : amongAll(engine);
  }

  private List<String> lines() {
    try {
      return SealedLines.find(Files.readAllBytes(shop.resolve(FILE))).orElse(List.of());
    } catch (IOException e) {
      return List.of();
    }
  }

  private Optional<JobOpened> in(String name, int engine) {
    return jobs.stream()
        .filter(job -> String.valueOf(job.getFileName()).equals(name))
        .findFirst()
        .flatMap(job -> Openings.find(job, engine));
  }

  private Optional<JobOpened> amongAll(int engine) {
    Map<Integer, String> found = new TreeMap<>();
    Optional<JobOpened> wanted = Optional.empty();
    for (Path job : jobs) {
      Optional<OpeningLine> line = OpeningLine.of(job);
      line.flatMap(OpeningLine::findEngine)
          .ifPresent(number -> found.putIfAbsent(number, String.valueOf(job.getFileName())));
      if (wanted.isEmpty()) {
        wanted = Openings.find(job, line, engine);
      }
    }
    if (wanted.isPresent()) {
      keep(found);
    }
    return wanted;
  }

  private void keep(Map<Integer, String> found) {
    List<String> lines =
        found.entrySet().stream().map(each -> each.getKey() + " " + each.getValue()).toList();
    try {
      Path part = shop.resolve(PART);
      Files.write(part, SealedLines.seal(lines));
      Files.move(part, shop.resolve(FILE), StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      // Nothing rests on it.
    }
  }
}
