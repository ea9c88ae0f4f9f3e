package wherefrom.cli;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import wherefrom.engine.Layout;
import wherefrom.job.Appended;
import wherefrom.job.By;
import wherefrom.job.Logbook;
import wherefrom.job.LogbookBeside;
import wherefrom.job.NewEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.CostDropped;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.shelf.Shelf;
import wherefrom.logbook.LogbookFile;
import wherefrom.parts.TagCode;

/**
 * A shelf whose jobs have a second bench that is always first.
 *
 * @param does what the second bench writes before each act
 * @param came is told each time
 */
record RivalShelf(Shelf kept, Supplier<JobEntry> does, Runnable came) implements Shelf {

  /** Whose second bench does something that is nothing. */
  RivalShelf(Shelf kept, Runnable came) {
    this(kept, () -> new CostDropped(999_999, "by the other bench"), came);
  }

  /** Each act is written at its second sending: at its first the other bench has come before. */
  private static final class Rival extends LogbookBeside {
    private final Set<Long> rivalled = new HashSet<>();

    private final Supplier<JobEntry> does;
    private final Runnable came;

    Rival(Logbook kept, Supplier<JobEntry> does, Runnable came) {
      super(kept);
      this.does = does;
      this.came = came;
    }

    @Override
    public Appended append(long expected, NewEntry entry) {
      if (rivalled.add(entry.act())) {
        By ann = new By(2, "Ann");
        super.append(expected, new NewEntry(newAct(), entry.time(), ann, does.get()));
        came.run();
      }
      return super.append(expected, entry);
    }
  }

  @Override
  public OpenJob open(Path folder) {
    return OpenJob.in(
        folder, new Rival(LogbookFile.open(folder), does, came), Shop.CLOCK, By.FIRST);
  }

  @Override
  public List<Entry> list() {
    return kept.list();
  }

  @Override
  public OpenJob create(NewJob begun) {
    return kept.create(begun);
  }

  @Override
  public OpenJob createIn(Path folder, NewJob begun) {
    return kept.createIn(folder, begun);
  }

  @Override
  public Optional<Path> findJob(Path fileOrFolder) {
    return kept.findJob(fileOrFolder);
  }

  @Override
  public List<Layout> listLayouts() {
    return kept.listLayouts();
  }

  @Override
  public boolean isLayoutTaken(String name) {
    return kept.isLayoutTaken(name);
  }

  @Override
  public void keepLayout(Layout layout, boolean replace) {
    kept.keepLayout(layout, replace);
  }

  @Override
  public Optional<String> find(int engine) {
    return kept.find(engine);
  }

  @Override
  public List<String> listTyped(String digits, int engine) {
    return kept.listTyped(digits, engine);
  }

  @Override
  public List<TagCode> listPrinted(int engine) {
    return kept.listPrinted(engine);
  }
}
