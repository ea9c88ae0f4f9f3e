package wherefrom.server;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.engine.Layout;
import wherefrom.job.By;
import wherefrom.job.LogbookException;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.shelf.NewJobs;
import wherefrom.job.shelf.Shelf;
import wherefrom.logbook.FileShelf;
import wherefrom.logbook.LogLines;
import wherefrom.parts.TagCode;

/** The jobs of a shared server. The person's own layouts lie on this machine. */
final class ServerShelf implements Shelf {
  private static final int NO_ENGINE = 0;

  private final Database database;
  private final Mirror mirror;
  private final NewRows jobs;
  private final FileShelf copies;
  private final Shelf layouts;
  private final Clock clock;
  private final By by;

  /**
   * @param copies the shelf of what the mirror holds
   * @param layouts where the person's own layouts lie
   * @param by the bench that is wanted, and who is at it
   */
  ServerShelf(
      Database database, Mirror mirror, FileShelf copies, Shelf layouts, Clock clock, By by) {
    this.database = database;
    this.mirror = mirror;
    this.jobs = new NewRows(database);
    this.copies = copies;
    this.layouts = layouts;
    this.clock = clock;
    this.by = by;
  }

  @Override
  public List<Entry> list() {
    mirror.refresh(NO_ENGINE);
    return copies.list();
  }

  @Override
  public Optional<String> find(int engine) {
    mirror.refresh(NO_ENGINE);
    return copies.find(engine);
  }

  @Override
  public List<String> listTyped(String digits, int engine) {
    mirror.refresh(engine);
    return copies.listTyped(digits, engine);
  }

  @Override
  public List<TagCode> listPrinted(int engine) {
    freshen(engine);
    return copies.listPrinted(engine);
  }

  /**
   * Where the server is out of reach the copies stay as they are: a picture is read all the same.
   */
  private void freshen(int but) {
    try {
      mirror.refresh(but);
    } catch (LogbookException away) {
      return;
    }
  }

  @Override
  public OpenJob create(NewJob begun) {
    NewJobs.require(begun);
    mirror.refresh(NO_ENGINE);
    return begin(copies.freeFolder(begun.name()), begun);
  }

  @Override
  public OpenJob createIn(Path folder, NewJob begun) {
    NewJobs.require(begun);
    String name = Mirror.name(mirror.folder(Mirror.name(folder)));
    mirror.refresh(NO_ENGINE);
    // Some systems take capital letters in a folder's name for small ones.
    if (mirror.list().keySet().stream().anyMatch(name::equalsIgnoreCase)) {
      throw new LogbookException(
          "The shared server has a job " + name + " already. Choose another name.");
    }
    return begin(mirror.folder(name), begun);
  }

  /** Another bench may begin a job under the same name or number at this moment: one of them is. */
  private OpenJob begin(Path folder, NewJob begun) {
    int engine = copies.nextEngine();
    JobOpened opened =
        JobOpened.of(begun.name().strip(), engine, begun.layout(), begun.kinds(), begun.units());
    LoggedEntry first = new LoggedEntry(1, clock.instant(), by, opened);
    byte[] header = LogLines.header();
    LogLines.Line line = new LogLines.Line(header, LogLines.line(first, LogLines.sum(header)));
    jobs.add(Mirror.name(folder), engine, List.of(line), Map.of());
    return open(folder);
  }

  @Override
  public OpenJob open(Path folder) {
    Mirror.Held held = mirror.get(folder);
    mirror.make(held);
    ServerLogbook logbook = ServerLogbook.open(database, held.id());
    try {
      return OpenJob.in(mirror.folder(held.name()), logbook, clock, by);
    } catch (RuntimeException e) {
      logbook.close();
      String sentence = logbook.condition().sentence();
      throw sentence.isEmpty() ? e : new LogbookException(sentence, e);
    }
  }

  @Override
  public boolean needsFolder() {
    return false;
  }

  @Override
  public List<Layout> listLayouts() {
    return layouts.listLayouts();
  }

  @Override
  public boolean isLayoutTaken(String name) {
    return layouts.isLayoutTaken(name);
  }

  @Override
  public void keepLayout(Layout layout, boolean replace) {
    layouts.keepLayout(layout, replace);
  }
}
