package wherefrom.job.shelf;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wherefrom.engine.Layout;
import wherefrom.job.By;
import wherefrom.job.LogbookException;
import wherefrom.job.OpenJob;
import wherefrom.job.tags.JobNames;
import wherefrom.parts.PartKind;
import wherefrom.quantity.UnitSystem;

/** The folder that holds the jobs of a workshop. */
public interface Shelf extends JobNames {

  /**
   * What a job is begun with.
   *
   * @param name any text a person recognises, not blank
   */
  record NewJob(String name, Layout layout, Set<PartKind> kinds, UnitSystem units) {
    public NewJob {
      kinds = Set.copyOf(kinds);
    }
  }

  /**
   * A job on the shelf.
   *
   * @param trouble what stands against opening it, in a sentence; empty when nothing does
   */
  record Entry(Path folder, String name, Optional<Resume> resume, String trouble) {}

  /** The same shelf, whose jobs are worked on at this bench; where it knows none, as it is. */
  default Shelf at(By bench) {
    return this;
  }

  /** The jobs, the one that was last worked on first. */
  List<Entry> list();

  /**
   * Begins a job in a folder of its own on the shelf.
   *
   * @throws IllegalArgumentException with a sentence when the layout or the name is wrong
   * @throws LogbookException when it cannot be written
   */
  OpenJob create(NewJob begun);

  /**
   * Begins a job in this folder of the shelf, which must not exist yet or be empty.
   *
   * @throws IllegalArgumentException with a sentence when the layout or the name is wrong
   * @throws LogbookException when it cannot be written, or something lies in the folder
   */
  OpenJob createIn(Path folder, NewJob begun);

  /**
   * Opens a job. Where another program holds it, or it is damaged, it opens for reading only.
   *
   * @throws LogbookException when there is no job in the folder that can be read
   */
  OpenJob open(Path folder);

  /**
   * The job's folder that a file or folder stands for: the folder itself, or that of a file which
   * only the logbook has. Such files are opened as a job and never as anything else.
   */
  default Optional<Path> findJob(Path fileOrFolder) {
    return Optional.empty();
  }

  /** Removes what a kill left behind, where it is old and surely ours. */
  default void tidy() {}

  /** The person's own layouts, kept on the shelf. */
  List<Layout> listLayouts();

  /**
   * Whether something is kept under a layout's name already, a file that cannot be read included.
   */
  boolean isLayoutTaken(String name);

  /**
   * Keeps a layout of the person's own.
   *
   * @param replace whether an older one of the same name may go
   * @throws IllegalArgumentException with a sentence that names the field, when it is wrong
   * @throws LogbookException when it cannot be written, or the name is taken and may not go
   */
  void keepLayout(Layout layout, boolean replace);

  /** Whether its jobs lie in a folder of this machine, which then must be there. */
  default boolean needsFolder() {
    return true;
  }
}
