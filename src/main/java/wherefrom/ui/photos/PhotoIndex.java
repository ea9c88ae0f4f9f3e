package wherefrom.ui.photos;

import java.util.ArrayList;
import java.util.List;
import wherefrom.inspection.Subject;
import wherefrom.job.photos.Photograph;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.subject.Cell;
import wherefrom.ui.subject.GridScreen;
import wherefrom.ui.subject.Named;

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
    List<Cell> cells = new ArrayList<>();
    int all = Photograph.listAll(context.state()).size();
    cells.add(
        new Cell(
            "The whole engine",
            all == 0 ? "" : all + " in all",
            () -> context.navigator().show(ScreenId.PHOTOGRAPHS)));
    cells.addAll(new SubjectChoice(context, subject -> photos(context, subject)).cells());
    return cells;
  }

  private static void photos(ScreenContext context, Subject subject) {
    String title = Named.title(context.state(), subject);
    context.navigator().open(() -> PhotosScreen.of(context, subject, title));
  }
}
