package wherefrom.ui.sample;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.engine.Layout;
import wherefrom.engine.LayoutCheck;
import wherefrom.job.LogbookException;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.shelf.Resume;
import wherefrom.job.shelf.Shelf;

/** A shelf in memory. */
public final class PaperShelf implements Shelf {
  private final Map<Path, OpenJob> jobs = new LinkedHashMap<>();
  private final Map<Path, String> troubles = new LinkedHashMap<>();
  private final Map<String, String> shared = new LinkedHashMap<>();
  private final List<Layout> layouts = new ArrayList<>();

  public PaperShelf put(String folder, OpenJob job) {
    jobs.put(Path.of(folder), job);
    return this;
  }

  /** A job that cannot be opened, and why. */
  public PaperShelf putDamaged(String folder, String trouble) {
    troubles.put(Path.of(folder), trouble);
    return this;
  }

  @Override
  public List<Entry> list() {
    List<Entry> entries = new ArrayList<>();
    jobs.forEach(
        (folder, job) ->
            entries.add(new Entry(folder, job.state().name(), Optional.of(Resume.of(job)), "")));
    troubles.forEach(
        (folder, trouble) ->
            entries.add(new Entry(folder, folder.toString(), Optional.empty(), trouble)));
    return entries;
  }

  @Override
  public OpenJob createIn(Path folder, NewJob begun) {
    return create(begun);
  }

  @Override
  public OpenJob create(NewJob begun) {
    if (begun.name().isBlank()) {
      throw new IllegalArgumentException("name: give the job a name.");
    }
    PaperLogbook logbook = new PaperLogbook();
    logbook.append(
        SampleJob.CLOCK.instant(),
        JobOpened.of(
            begun.name(), 100 + jobs.size(), begun.layout(), begun.kinds(), begun.units()));
    OpenJob job = new OpenJob(logbook, SampleJob.CLOCK);
    put(begun.name(), job);
    return job;
  }

  @Override
  public OpenJob open(Path folder) {
    OpenJob job = jobs.get(folder);
    if (job == null) {
      throw new LogbookException("There is no job in " + folder + " that can be read.");
    }
    return job;
  }

  @Override
  public List<Layout> listLayouts() {
    return List.copyOf(layouts);
  }

  @Override
  public boolean isLayoutTaken(String name) {
    return layouts.stream().anyMatch(kept -> kept.name().equals(name));
  }

  @Override
  public void keepLayout(Layout layout, boolean replace) {
    if (!replace && isLayoutTaken(layout.name())) {
      throw new LogbookException(layout.name() + " is there already.");
    }
    LayoutCheck.faults(layout).stream()
        .findFirst()
        .ifPresent(
            fault -> {
              throw new IllegalArgumentException(fault.sentence());
            });
    layouts.removeIf(kept -> kept.name().equals(layout.name()));
    layouts.add(layout);
  }

  /** From now on another job has tags with these typed codes. */
  public PaperShelf share(String name, String... digits) {
    for (String code : digits) {
      shared.put(code, name);
    }
    return this;
  }

  @Override
  public List<String> listTyped(String digits, int engine) {
    return Optional.ofNullable(shared.get(digits)).stream().toList();
  }

  @Override
  public Optional<String> find(int engine) {
    return SampleJob.NAMES.find(engine);
  }
}
