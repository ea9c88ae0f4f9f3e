package wherefrom.ui.photos;

import java.util.ArrayList;
import java.util.List;
import wherefrom.drawing.PartState;
import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.job.photos.Photograph;
import wherefrom.text.Words;
import wherefrom.ui.app.ScreenContext;
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
  public static void open(ScreenContext context) {
    context
        .navigator()
        .open(() -> new GridScreen(context, "Photographs of", "", () -> groups(context)));
  }

  private static List<Cell> groups(ScreenContext context) {
    EngineJob job = context.state();
    List<Cell> cells = new ArrayList<>();
    int all = Photograph.listAll(job).size();
    cells.add(
        new Cell(
            "The whole engine",
            all == 0 ? "" : all + " in all",
            () -> context.navigator().open(() -> PhotosScreen.ofAll(context))));
    List<Cell> parts = new ArrayList<>();
    for (Group group : Group.of(job)) {
      Cell cell = new Cell(group.words(), count(job, group.subjects()), () -> open(context, group));
      (group.subjects().get(0) instanceof Subject.APart ? parts : cells).add(cell);
    }
    cells.addAll(parts);
    return cells;
  }

  private static void open(ScreenContext context, Group group) {
    if (group.subjects().size() == 1) {
      photos(context, group.subjects().get(0));
      return;
    }
    SubjectIndex.of(
            context,
            group.words(),
            group.subjects(),
            subject -> standing(context.state(), subject),
            subject -> photos(context, subject))
        .ifPresentOrElse(
            index -> new EnginePages(context, index).open(), () -> list(context, group));
  }

  /** Where the drawing has no place for them. */
  private static void list(ScreenContext context, Group group) {
    context
        .navigator()
        .open(() -> new GridScreen(context, group.words(), "", () -> places(context, group)));
  }

  private static PartState standing(EngineJob job, Subject subject) {
    String count = count(job, List.of(subject));
    return count.isEmpty() ? PartStates.toDo("no photo") : PartStates.done(count);
  }

  private static List<Cell> places(ScreenContext context, Group group) {
    return group.subjects().stream()
        .map(
            subject ->
                new Cell(
                    Named.place(context.state(), subject),
                    count(context.state(), List.of(subject)),
                    () -> photos(context, subject)))
        .toList();
  }

  private static void photos(ScreenContext context, Subject subject) {
    String title = Named.title(context.state(), subject);
    context.navigator().open(() -> PhotosScreen.of(context, subject, title));
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
