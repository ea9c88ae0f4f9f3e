package wherefrom.job.photos;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wherefrom.files.Progress;
import wherefrom.inspection.Subject;
import wherefrom.job.OpenJob;
import wherefrom.job.tags.CodeLookup;
import wherefrom.job.tags.TagBook;

/**
 * A folder of photographs, as it comes off a phone: those that show a tag belong to what bears it,
 * the others to nothing yet. One picture is in memory at a time.
 */
public final class PhotoFolder {

  /** What sees the tags on a picture. */
  @FunctionalInterface
  public interface Eye {
    /**
     * The tags that are on it.
     *
     * @throws IOException with a plain sentence when it is no picture that can be read
     */
    List<String> read(Path picture) throws IOException;
  }

  /**
   * A picture that can be kept.
   *
   * @param file where it lies
   * @param of whose tags are on it: parts, bags, big parts; none where it shows no tag of this job
   */
  public record Seen(Path file, List<Subject> of) {
    public Seen {
      of = List.copyOf(of);
    }
  }

  /** Reads pictures, away from the thread that works on the job. */
  @FunctionalInterface
  public interface Reading extends Callable<Codes> {
    @Override
    Codes call() throws IOException;
  }

  /** What was read on pictures. */
  public static final class Codes {
    private final Map<Path, List<String>> seen = new LinkedHashMap<>();
    private final List<Left> left = new ArrayList<>();
    private final List<Path> had = new ArrayList<>();
    private final List<Path> back = new ArrayList<>();
  }

  /** A file that is left where it is, and why. */
  public record Left(Path file, String why) {}

  /**
   * Pictures, sorted.
   *
   * @param left those that cannot be kept
   * @param had those that the job has already
   * @param back those that the logbook names, and whose kept file was gone or damaged: it is there
   *     again
   */
  public record Sorted(List<Seen> seen, List<Left> left, List<Path> had, List<Path> back) {
    public Sorted {
      back = List.copyOf(back);
      had = List.copyOf(had);
      seen = List.copyOf(seen);
      left = List.copyOf(left);
    }

    /** Those that show a tag of the job. */
    public List<Seen> tagged() {
      return seen.stream().filter(one -> !one.of().isEmpty()).toList();
    }

    /** Those that show none. */
    public List<Seen> untagged() {
      return seen.stream().filter(one -> one.of().isEmpty()).toList();
    }
  }

  /** A picture that lies in the job's folder now, under a name. */
  public record Copied(Seen seen, String name) {}

  private final OpenJob job;
  private final Photos photos;
  private final Eye eye;

  public PhotoFolder(OpenJob job, Photos photos, Eye eye) {
    this.job = job;
    this.photos = photos;
    this.eye = eye;
  }

  /**
   * The files that are meant: each by itself, and those in folders, but not in folders within them
   * nor what the system hides.
   */
  public static List<Path> files(List<Path> given) throws IOException {
    List<Path> files = new ArrayList<>();
    for (Path each : given) {
      if (!Files.isDirectory(each)) {
        files.add(each);
        continue;
      }
      try (Stream<Path> inside = Files.list(each)) {
        inside.filter(PhotoFolder::isShown).sorted().forEach(files::add);
      }
    }
    return List.copyOf(files);
  }

  private static boolean isShown(Path file) {
    return Files.isRegularFile(file) && !String.valueOf(file.getFileName()).startsWith(".");
  }

  /** Reads every file and sorts them; nothing new is kept yet. */
  public Sorted sort(List<Path> given, TagBook tags) throws IOException {
    return sort(reading(given).call(), tags);
  }

  /**
   * What reads every file, on any thread: it asks nothing of the job. What the job has by now is
   * not read again; where the file of such a photograph is gone, it is put back.
   */
  public Reading reading(List<Path> given) {
    Set<String> known =
        Photograph.listAll(job.state()).stream().map(Photograph::file).collect(Collectors.toSet());
    Path folder = job.folder();
    return () -> {
      List<Path> files = files(given);
      Codes read = new Codes();
      for (int at = 0; at < files.size(); at++) {
        take(folder, files.get(at), known, read);
        Progress.step(at + 1, files.size());
      }
      return read;
    };
  }

  private void take(Path folder, Path file, Set<String> known, Codes read) {
    try {
      Optional<String> name = photos.names(file).stream().filter(known::contains).findFirst();
      if (name.isEmpty()) {
        read.seen.put(file, eye.read(file));
      } else if (photos.isThere(folder, name.get())) {
        read.had.add(file);
      } else {
        photos.add(folder, file, Set.of(name.get()));
        read.back.add(file);
      }
    } catch (IOException e) {
      read.left.add(new Left(file, String.valueOf(e.getMessage())));
    }
  }

  /**
   * Sorts what was read by what it shows the tags of.
   *
   * @param tags what the job has issued by now
   */
  public Sorted sort(Codes read, TagBook tags) {
    List<Seen> seen = new ArrayList<>();
    read.seen.forEach((file, codes) -> seen.add(new Seen(file, shown(codes, tags))));
    return new Sorted(seen, read.left, read.had, read.back);
  }

  private static List<Subject> shown(List<String> codes, TagBook tags) {
    Set<Subject> shown = new LinkedHashSet<>();
    codes.forEach(code -> subject(tags.find(code)).ifPresent(shown::add));
    return List.copyOf(shown);
  }

  /** What a tag is of that can be photographed; empty for cards and baskets. */
  public static Optional<Subject> subject(CodeLookup found) {
    return found.match(
        part -> Optional.of(Subject.ofPart(part.part().part().item())),
        spot -> Optional.empty(),
        card -> Optional.empty(),
        basket -> Optional.empty(),
        bag -> bag.bag().map(one -> Subject.ofBag(one.number())),
        bigPart -> Optional.of(Subject.ofBigPart(bigPart.part().number())),
        refused -> Optional.empty());
  }

  /** Copies pictures into the job's folder; away from the window's thread. */
  public List<Copied> copy(List<Seen> pictures) throws IOException {
    List<Copied> copied = new ArrayList<>();
    for (int at = 0; at < pictures.size(); at++) {
      Seen seen = pictures.get(at);
      copied.add(new Copied(seen, photos.add(job.folder(), seen.file())));
      Progress.step(at + 1, pictures.size());
    }
    return copied;
  }

  /**
   * Records what was copied, as one step: with each whose tag it shows, or with the whole engine.
   * What the job has already is not recorded again.
   *
   * @return how many are new
   */
  public int record(List<Copied> copied) {
    Photographing photographing = new Photographing(job);
    return job.asOne(
        () -> {
          Set<String> known = new LinkedHashSet<>();
          Photograph.listAll(job.state()).forEach(one -> known.add(key(one.subject(), one.file())));
          int fresh = 0;
          for (Copied one : copied) {
            for (Optional<Subject> of : subjects(one.seen())) {
              if (known.add(key(of, one.name()))) {
                photographing.add(of, "", one.name(), "");
                fresh++;
              }
            }
          }
          return fresh;
        });
  }

  private static String key(Optional<Subject> of, String file) {
    return of.map(Subject::key).orElse("") + " " + file;
  }

  private static List<Optional<Subject>> subjects(Seen seen) {
    return seen.of().isEmpty()
        ? List.of(Optional.empty())
        : seen.of().stream().map(Optional::of).toList();
  }
}
