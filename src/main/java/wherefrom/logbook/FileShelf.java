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
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntSupplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wherefrom.demo.DemoJob;
import wherefrom.engine.Layout;
import wherefrom.files.Outgoing;
import wherefrom.files.Progress;
import wherefrom.job.By;
import wherefrom.job.LogbookException;
import wherefrom.job.NewEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.shelf.NewJobs;
import wherefrom.job.shelf.Resume;
import wherefrom.job.shelf.Shelf;
import wherefrom.parts.TagCode;

/** A folder whose folders are jobs. The person's own layouts lie in one of them. */
public final class FileShelf implements Shelf {
  static final String LAYOUTS = "layouts";

  private final Path folder;
  private final Clock clock;
  private final By by;
  private final EngineNumbers numbers;
  private final TypedCodes typed;
  private final LayoutJson layouts = new LayoutJson();

  /**
   * @param folder may not exist yet
   * @param random any numbers, evenly spread: engine numbers are drawn from them
   */
  public FileShelf(Path folder, Clock clock, IntSupplier random) {
    this(folder.toAbsolutePath().normalize(), clock, new EngineNumbers(random), By.FIRST);
  }

  private FileShelf(Path folder, Clock clock, EngineNumbers numbers, By by) {
    this.folder = folder;
    this.clock = clock;
    this.by = by;
    this.numbers = numbers;
    this.typed = new TypedCodes(clock);
  }

  @Override
  public Shelf at(By bench) {
    return new FileShelf(folder, clock, numbers, bench);
  }

  @Override
  public List<Entry> list() {
    List<Path> folders = mayBeJobs(folder);
    List<Entry> entries = new ArrayList<>();
    int done = 0;
    for (Path job : folders) {
      new JobIndex(job, clock, ProgramStamp.get()).find().ifPresent(entries::add);
      Progress.step(++done, folders.size());
    }
    return entries.stream()
        .sorted(Comparator.comparing(FileShelf::lastTouched).reversed())
        .toList();
  }

  private static Instant lastTouched(Entry entry) {
    return entry.resume().map(Resume::lastTouched).orElse(Instant.EPOCH);
  }

  @Override
  public Optional<Path> findJob(Path fileOrFolder) {
    Path whole = fileOrFolder.toAbsolutePath().normalize();
    if (LogFiles.isJob(whole)) {
      return Optional.of(whole);
    }
    boolean logbooks = LogFiles.isOne(String.valueOf(whole.getFileName()));
    return Optional.ofNullable(whole.getParent()).filter(job -> logbooks && LogFiles.isJob(job));
  }

  @Override
  public void tidy() {
    new Leftovers(clock.instant()).clearShop(folder);
  }

  /** The jobs in a folder; where the folder is a job itself, it is the only one. */
  static List<Path> jobFolders(Path folder) {
    return mayBeJobs(folder).stream().filter(LogFiles::isJob).toList();
  }

  private static List<Path> mayBeJobs(Path folder) {
    if (LogFiles.isJob(folder)) {
      return List.of(folder);
    }
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> inside = Files.list(folder)) {
      return inside
          .filter(job -> !String.valueOf(job.getFileName()).startsWith("."))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new LogbookException(folder + " cannot be read: " + DiskErrors.of(e) + ".", e);
    }
  }

  @Override
  public Optional<String> find(int engine) {
    return new EngineFolders(folder, mayBeJobs(folder)).find(engine).map(JobOpened::name);
  }

  @Override
  public List<String> listTyped(String digits, int engine) {
    return typed.list(jobFolders(folder), digits, engine);
  }

  @Override
  public List<TagCode> listPrinted(int engine) {
    return typed.listPrinted(jobFolders(folder), engine);
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
    NewJobs.require(begun);
    return begin(freeFolder(begun.name()), begun);
  }

  @Override
  public OpenJob createIn(Path job, NewJob begun) {
    NewJobs.require(begun);
    if (!JobFolder.isFree(job)) {
      throw new LogbookException(
          LogFiles.isJob(job)
              ? job + " holds a job already. Choose another folder."
              : job + " is not empty. Choose a new folder for the job.");
    }
    return begin(job, begun);
  }

  /** A number for a new engine, whose tags differ as far as can be from those on the shelf. */
  public int nextEngine() {
    Set<Integer> known = new TreeSet<>(openings().keySet());
    // The demo comes to a shelf with its own number, before or after.
    known.add(DemoJob.ENGINE);
    return numbers.next(known);
  }

  /** A folder of the shelf for a new job, named after it, in which nothing was ever kept. */
  public Path freeFolder(String name) {
    return FolderNames.unused(folder, name);
  }

  private OpenJob begin(Path job, NewJob begun) {
    int engine = nextEngine();
    LogbookFile logbook = LogbookFile.create(job);
    try {
      JobOpened opened =
          JobOpened.of(begun.name().strip(), engine, begun.layout(), begun.kinds(), begun.units());
      logbook.append(0, new NewEntry(logbook.newAct(), clock.instant(), by, opened));
      return OpenJob.in(job, logbook, clock, by);
    } catch (RuntimeException e) {
      logbook.close();
      throw e;
    }
  }

  @Override
  public OpenJob open(Path job) {
    LogbookFile logbook = LogbookFile.open(job);
    try {
      requireBegun(logbook);
      if (logbook.condition().writable()) {
        new Leftovers(clock.instant()).clearJob(job);
      }
      return OpenJob.in(job, logbook, clock, by);
    } catch (LogbookException e) {
      logbook.close();
      String sentence = logbook.condition().sentence();
      throw sentence.isEmpty() || logbook.condition().writable()
          ? e
          : new LogbookException(sentence, e);
    }
  }

  private static void requireBegun(LogbookFile logbook) {
    boolean damaged = !logbook.condition().writable();
    if (logbook.entries().isEmpty() && !damaged) {
      throw new LogbookException(FolderScan.unused(logbook.folder()));
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
      throw new LogbookException(kept + " cannot be read: " + DiskErrors.of(e) + ".", e);
    }
  }

  private Path layoutFile(String name) {
    return folder.resolve(LAYOUTS).resolve(name + ".json");
  }

  @Override
  public boolean isLayoutTaken(String name) {
    return Files.exists(layoutFile(name));
  }

  @Override
  public void keepLayout(Layout layout, boolean replace) {
    NewJobs.requireSound(layout);
    try {
      Path file = layoutFile(layout.name());
      layouts.write(layout, replace ? Outgoing.replacing(file) : Outgoing.to(file));
    } catch (IOException e) {
      throw new LogbookException(DiskErrors.of(e), e);
    }
  }
}
