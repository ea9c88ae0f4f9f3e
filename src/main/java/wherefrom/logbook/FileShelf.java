package wherefrom.logbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntSupplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wherefrom.engine.Layout;
import wherefrom.engine.LayoutCheck;
import wherefrom.engine.LayoutFault;
import wherefrom.files.Outgoing;
import wherefrom.files.Progress;
import wherefrom.job.LogbookException;
import wherefrom.job.OpenJob;
import wherefrom.job.Resume;
import wherefrom.job.Shelf;
import wherefrom.job.entry.JobOpened;
import wherefrom.workings.Entry;

/** A folder whose folders are jobs. The person's own layouts lie in one of them. */
public final class FileShelf implements Shelf {
  static final String LAYOUTS = "layouts";

  private final Path folder;
  private final Clock clock;
  private final EngineNumbers numbers;
  private final LayoutJson layouts = new LayoutJson();

  /**
   * @param folder may not exist yet
   * @param random any numbers, evenly spread: engine numbers are drawn from them
   */
  public FileShelf(Path folder, Clock clock, IntSupplier random) {
    this.folder = folder.toAbsolutePath().normalize();
    this.clock = clock;
    this.numbers = new EngineNumbers(random);
  }

  @Override
  public List<Entry> list() {
    List<Path> jobs = jobFolders(folder);
    List<Entry> entries = new ArrayList<>();
    for (Path job : jobs) {
      entries.add(entry(job));
      Progress.step(entries.size(), jobs.size());
    }
    return entries.stream()
        .sorted(Comparator.comparing(FileShelf::lastTouched).reversed())
        .toList();
  }

  private static Instant lastTouched(Entry entry) {
    return entry.resume().map(Resume::lastTouched).orElse(Instant.EPOCH);
  }

  private Entry entry(Path job) {
    try (OpenJob read = new OpenJob(LogbookFile.read(job), clock)) {
      String trouble = LogbookFile.trouble(job);
      return new Entry(job, read.state().name(), Optional.of(Resume.of(read)), trouble);
    } catch (LogbookException e) {
      return new Entry(job, String.valueOf(job.getFileName()), Optional.empty(), words(e));
    }
  }

  private static String words(LogbookException e) {
    return String.valueOf(e.getMessage());
  }

  /** The jobs in a folder; where the folder is a job itself, it is the only one. */
  static List<Path> jobFolders(Path folder) {
    if (LogFiles.isJob(folder)) {
      return List.of(folder);
    }
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> inside = Files.list(folder)) {
      return inside
          .filter(job -> !String.valueOf(job.getFileName()).startsWith("."))
          .filter(LogFiles::isJob)
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new LogbookException(folder + " cannot be read: " + Reasons.of(e) + ".", e);
    }
  }

  @Override
  public Optional<String> find(int engine) {
    return Optional.ofNullable(openings().get(engine)).map(JobOpened::name);
  }

  /** Every job that can be read, by engine number. */
  Map<Integer, JobOpened> openings() {
    return jobFolders(folder).stream()
        .map(Openings::find)
        .flatMap(Optional::stream)
        .collect(
            Collectors.toMap(
                JobOpened::engine, opened -> opened, (first, second) -> first, TreeMap::new));
  }

  @Override
  public OpenJob create(NewJob begun) {
    require(begun);
    return begin(FolderNames.free(folder, begun.name()), begun);
  }

  @Override
  public OpenJob createIn(Path job, NewJob begun) {
    require(begun);
    if (Files.exists(job)) {
      try (Stream<Path> inside = Files.list(job)) {
        if (inside.findAny().isPresent()) {
          throw new LogbookException(job + " is not empty. Choose a new folder for the job.");
        }
      } catch (IOException e) {
        throw new LogbookException(job + " cannot be used: " + Reasons.of(e) + ".", e);
      }
    }
    return begin(job, begun);
  }

  private static void require(NewJob begun) {
    if (begun.name().isBlank()) {
      throw new IllegalArgumentException("Give the job a name that you will recognise.");
    }
    if (begun.name().strip().codePointCount(0, begun.name().strip().length())
        > JobOpened.MOST_LETTERS) {
      throw new IllegalArgumentException(
          "The job's name is longer than " + JobOpened.MOST_LETTERS + " letters: shorten it.");
    }
    requireSound(begun.layout());
    if (begun.kinds().isEmpty()) {
      throw new IllegalArgumentException("Choose at least one kind of part to track.");
    }
  }

  private static void requireSound(Layout layout) {
    List<LayoutFault> faults = LayoutCheck.faults(layout);
    if (!faults.isEmpty()) {
      throw new IllegalArgumentException(
          faults.stream().map(LayoutFault::sentence).collect(Collectors.joining(" ")));
    }
  }

  private OpenJob begin(Path job, NewJob begun) {
    int engine = numbers.next(openings().keySet());
    LogbookFile logbook = LogbookFile.create(job);
    try {
      logbook.append(
          clock.instant(),
          new JobOpened(
              begun.name().strip(), engine, begun.layout(), begun.kinds(), begun.units()));
      return new OpenJob(logbook, clock);
    } catch (RuntimeException e) {
      logbook.close();
      throw e;
    }
  }

  @Override
  public OpenJob open(Path job) {
    LogbookFile logbook = LogbookFile.open(job);
    try {
      return new OpenJob(logbook, clock);
    } catch (LogbookException e) {
      logbook.close();
      String sentence = logbook.condition().sentence();
      throw sentence.isEmpty() ? e : new LogbookException(sentence, e);
    }
  }

  @Override
  public List<Layout> listLayouts() {
    Path kept = folder.resolve(LAYOUTS);
    if (!Files.isDirectory(kept)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(kept)) {
      return files
          .filter(file -> file.toString().endsWith(".json"))
          .sorted()
          .map(layouts::findSound)
          .flatMap(Optional::stream)
          .toList();
    } catch (IOException e) {
      throw new LogbookException(kept + " cannot be read: " + Reasons.of(e) + ".", e);
    }
  }

  @Override
  public void keepLayout(Layout layout) {
    requireSound(layout);
    try {
      Path file = folder.resolve(LAYOUTS).resolve(layout.name() + ".json");
      layouts.write(layout, Outgoing.replacing(file));
    } catch (IOException e) {
      throw new LogbookException(Reasons.of(e), e);
    }
  }
}
