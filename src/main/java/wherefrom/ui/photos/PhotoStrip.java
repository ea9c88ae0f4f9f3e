package wherefrom.ui.photos;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javafx.scene.layout.HBox;
import wherefrom.job.photos.Photograph;
import wherefrom.ui.app.Desk;
import wherefrom.ui.controls.Panes;

/** Photographs beside each other in small; each opens large. */
public final class PhotoStrip {
  private static final int ACROSS = 3;
  private static final int ACROSS_WHERE_LARGE = 2;

  private PhotoStrip() {}

  /** As many as a list has room for on the smallest glass, beside keys that turn it. */
  public static int across(Desk desk) {
    return desk.touch().isLarge() ? ACROSS_WHERE_LARGE : ACROSS;
  }

  /**
   * Rows of at most a number of photographs each.
   *
   * @param of gives all photographs among which one turns the pages when one is large
   */
  public static List<HBox> rows(
      Desk desk, PhotoLoader loader, Supplier<List<Photograph>> of, int across) {
    List<Photograph> all = of.get();
    List<HBox> rows = new ArrayList<>();
    for (int from = 0; from < all.size(); from += across) {
      HBox row = Panes.row(desk.scale());
      for (int at = from; at < Math.min(all.size(), from + across); at++) {
        int number = at;
        row.getChildren()
            .add(
                PhotoKey.of(
                    desk.touch(),
                    loader,
                    all.get(at),
                    () -> desk.navigator().open(() -> new PhotoScreen(desk, of, number))));
      }
      rows.add(row);
    }
    return rows;
  }
}
