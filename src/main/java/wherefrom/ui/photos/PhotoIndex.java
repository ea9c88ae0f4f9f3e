package wherefrom.ui.photos;

import java.util.ArrayList;
import java.util.List;
import wherefrom.drawing.PartState;
import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.job.photos.Photograph;
import wherefrom.text.Words;
import wherefrom.ui.app.Desk;
import wherefrom.ui.drawn.PartStates;
import wherefrom.ui.engine.EnginePages;
import wherefrom.ui.subject.Cell;
import wherefrom.ui.subject.GridScreen;
import wherefrom.ui.subject.Group;
import wherefrom.ui.subject.Named;
import wherefrom.ui.subject.SubjectIndex;

/** The way to the photographs of everything: what carries no tag first, then the parts. */
public final class PhotoIndex {
  private PhotoIndex() {}

  /** Opens the list of everything that can be photographed. */
  public static void open(Desk desk) {
    desk.navigator().open(() -> new GridScreen(desk, "Photographs of", "", () -> groups(desk)));
  }

  private static List<Cell> groups(Desk desk) {
    EngineJob job = desk.state();
    List<Cell> cells = new ArrayList<>();
    int all = Photograph.listAll(job).size();
    cells.add(
        new Cell(
            "The whole engine",
            all == 0 ? "" : all + " in all",
            () -> desk.navigator().open(() -> PhotosScreen.ofAll(desk))));
    List<Cell> parts = new ArrayList<>();
    for (Group group : Group.of(job)) {
      Cell cell = new Cell(group.words(), count(job, group.subjects()), () -> open(desk, group));
      (group.subjects().get(0) instanceof Subject.APart ? parts : cells).add(cell);
    }
    cells.addAll(parts);
    return cells;
  }

  private static void open(Desk desk, Group group) {
    if (group.subjects().size() == 1) {
      photos(desk, group.subjects().get(0));
      return;
    }
    SubjectIndex.of(
            desk,
            group.words(),
            group.subjects(),
            subject -> standing(desk.state(), subject),
            subject -> photos(desk, subject))
        .ifPresentOrElse(index -> new EnginePages(desk, index).open(), () -> list(desk, group));
  }

  /** Where the drawing has no place for them. */
  private static void list(Desk desk, Group group) {
    desk.navigator().open(() -> new GridScreen(desk, group.words(), "", () -> places(desk, group)));
  }

  private static PartState standing(EngineJob job, Subject subject) {
    String count = count(job, List.of(subject));
    return count.isEmpty() ? PartStates.toDo("no photo") : PartStates.done(count);
  }

  private static List<Cell> places(Desk desk, Group group) {
    return group.subjects().stream()
        .map(
            subject ->
                new Cell(
                    Named.place(desk.state(), subject),
                    count(desk.state(), List.of(subject)),
                    () -> photos(desk, subject)))
        .toList();
  }

  private static void photos(Desk desk, Subject subject) {
    String title = Named.title(desk.state(), subject);
    desk.navigator().open(() -> PhotosScreen.of(desk, subject, title));
  }

  /** {@code 2 photos}; empty where there is none. */
  private static String count(EngineJob job, List<Subject> subjects) {
    long count =
        Photograph.listAll(job).stream()
            .filter(photo -> photo.subject().filter(subjects::contains).isPresent())
            .count();
    return count == 0 ? "" : Words.count(count, "photo");
  }
}
