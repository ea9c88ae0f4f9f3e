package wherefrom.ui.photos;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import wherefrom.drawing.PartState;
import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.job.photos.Photograph;
import wherefrom.text.Words;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.drawn.PartStates;
import wherefrom.ui.engine.EnginePages;
import wherefrom.ui.sketches.GroupPictures;
import wherefrom.ui.subject.Cell;
import wherefrom.ui.subject.GridScreen;
import wherefrom.ui.subject.Group;
import wherefrom.ui.subject.Named;
import wherefrom.ui.subject.SubjectIndex;

/** From everything that can be photographed to one part or place: by its kind, then as drawn. */
final class SubjectChoice {
  private final ScreenContext context;
  private final Consumer<Subject> chosen;

  /**
   * @param chosen told of the part or place
   */
  SubjectChoice(ScreenContext context, Consumer<Subject> chosen) {
    this.context = context;
    this.chosen = chosen;
  }

  /** A key for each kind: what carries no tag first, then the parts. */
  List<Cell> cells() {
    EngineJob job = context.state();
    List<Cell> cells = new ArrayList<>();
    List<Cell> parts = new ArrayList<>();
    for (Group group : Group.of(job)) {
      if (group.subjects().isEmpty()) {
        continue;
      }
      Cell cell =
          new Cell(
              group.words(),
              count(job, group.subjects()),
              () -> open(group),
              GroupPictures.of(context, group.key()),
              OptionalDouble.empty());
      (group.subjects().get(0) instanceof Subject.APart ? parts : cells).add(cell);
    }
    cells.addAll(parts);
    return cells;
  }

  private void open(Group group) {
    if (group.subjects().size() == 1) {
      chosen.accept(group.subjects().get(0));
      return;
    }
    SubjectIndex.of(
            context,
            group.words(),
            group.subjects(),
            subject -> standing(context.state(), subject),
            chosen)
        .ifPresentOrElse(index -> new EnginePages(context, index).open(), () -> list(group));
  }

  /** Where the drawing has no place for them. */
  private void list(Group group) {
    context.navigator().open(() -> new GridScreen(context, group.words(), "", () -> places(group)));
  }

  private List<Cell> places(Group group) {
    return group.subjects().stream()
        .map(
            subject ->
                new Cell(
                    Named.place(context.state(), subject),
                    count(context.state(), List.of(subject)),
                    () -> chosen.accept(subject)))
        .toList();
  }

  private static PartState standing(EngineJob job, Subject subject) {
    String count = count(job, List.of(subject));
    return count.isEmpty() ? PartStates.toDo("no photo") : PartStates.done(count);
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
