package wherefrom.logbook;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import wherefrom.job.LogbookException;
import wherefrom.job.OpenJob;
import wherefrom.job.Resume;
import wherefrom.job.Shelf;

/**
 * What a list says of a job, kept in a small file beside its logbook. It counts only while the
 * logbook's files are those that it was made of, and this very program made it; else the logbook is
 * read. It is never copied, exported or read when a job is opened.
 */
final class JobIndex {
  static final String FILE = "logbook.index";
  static final String PART = ".logbook-index.part";
  private static final int VERSION = 1;

  private final Path job;
  private final Clock clock;
  private final String program;

  /**
   * @param program tells this version of the program from every other: each counts and words in its
   *     own way
   */
  JobIndex(Path job, Clock clock, String program) {
    this.job = job;
    this.clock = clock;
    this.program = program;
  }

  /** What there is to say of the job, read anew where it has changed. */
  Shelf.Entry entry() {
    try {
      JsonNode stamp = FileStamp.of(job);
      Optional<Shelf.Entry> known = find(stamp);
      if (known.isPresent()) {
        return known.get();
      }
      Shelf.Entry read = read();
      keep(stamp, read);
      return read;
    } catch (IOException e) {
      return nameless(job + " cannot be read: " + Reasons.of(e) + ".");
    }
  }

  private Shelf.Entry read() {
    try {
      Scanned scanned = LogbookFile.scan(job);
      if (scanned.isUnused()) {
        return nameless(Scanned.unused(job));
      }
      try (OpenJob open = new OpenJob(LogbookFile.of(job, scanned), clock)) {
        return new Shelf.Entry(
            job, open.state().name(), Optional.of(Resume.of(open)), scanned.sentence());
      }
    } catch (LogbookException e) {
      return nameless(String.valueOf(e.getMessage()));
    }
  }

  private Shelf.Entry nameless(String trouble) {
    return new Shelf.Entry(job, String.valueOf(job.getFileName()), Optional.empty(), trouble);
  }

  private Optional<Shelf.Entry> find(JsonNode stamp) {
    try {
      byte[] bytes = Files.readAllBytes(job.resolve(FILE));
      List<Piece> lines = Piece.split(bytes);
      if (lines.size() != 1 || !lines.get(0).isWhole()) {
        return Optional.empty();
      }
      JsonNode kept = LogLine.json(lines.get(0));
      boolean counts =
          kept.path("version").asInt() == VERSION
              && kept.path("program").asText().equals(program)
              && kept.path("of").equals(stamp);
      return counts ? Optional.of(entry(kept)) : Optional.empty();
    } catch (IOException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private Shelf.Entry entry(JsonNode kept) {
    return new Shelf.Entry(
        job,
        kept.path("name").asText(),
        Optional.of(kept.path("resume")).filter(JsonNode::isObject).map(ResumeJson::read),
        kept.path("trouble").asText());
  }

  /** Where it cannot be kept, as on a stick that is write-protected, the list takes longer. */
  private void keep(JsonNode stamp, Shelf.Entry entry) {
    ObjectNode object = EntryCodec.MAPPER.createObjectNode();
    object.put("version", VERSION);
    object.put("program", program);
    object.set("of", stamp);
    object.put("name", entry.name());
    entry.resume().ifPresent(resume -> object.set("resume", ResumeJson.write(resume)));
    object.put("trouble", entry.trouble());
    try {
      Path part = job.resolve(PART);
      Files.write(part, Sums.ended(LogLine.seal(object)));
      Files.move(part, job.resolve(FILE), StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      // Nothing rests on it.
    }
  }
}
