package wherefrom.ui.photos;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import wherefrom.job.photos.Photograph;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;

/** Photographs beside each other in small; each opens large. */
public final class PhotoStrip {
  private static final int ACROSS = 3;
  private static final int ACROSS_WHERE_LARGE = 2;

  /** A photograph of a row is so many times as large as usual where there is room. */
  private static final double MOST = 1.7;

  private PhotoStrip() {}

  /** As many as a list has room for on the smallest glass, beside keys that turn it. */
  public static int across(ScreenContext context) {
    return context.scale().textFactor() > 1 ? ACROSS_WHERE_LARGE : ACROSS;
  }

  /** How many a list of this width has room for; as many as on the smallest glass at least. */
  static int fitting(ScreenContext context, double width) {
    double gap = context.scale().gap();
    double each = context.scale().px(PhotoKey.WIDE_MM) + gap;
    return Math.max(across(context), (int) ((width + gap) / each));
  }

  /**
   * One row of at most a number of photographs, as low as a finger lets it be where its room is
   * low, larger than usual where there is much; empty where there are none.
   */
  public static Optional<HBox> row(
      ScreenContext context, PhotoLoader loader, Supplier<List<Photograph>> of, int across) {
    Optional<HBox> row = rows(context, loader, of, across).stream().findFirst();
    double least = context.scale().px(Scale.KEY_MM);
    row.stream()
        .flatMap(made -> made.getChildren().stream())
        .filter(PhotoKey.class::isInstance)
        .map(PhotoKey.class::cast)
        .forEach(
            key -> {
              key.setMinHeight(least);
              key.grow(MOST);
            });
    row.ifPresent(made -> VBox.setVgrow(made, Priority.ALWAYS));
    return row;
  }

  /**
   * Rows of at most a number of photographs each.
   *
   * @param of gives all photographs among which one turns the pages when one is large
   */
  public static List<HBox> rows(
      ScreenContext context, PhotoLoader loader, Supplier<List<Photograph>> of, int across) {
    List<Photograph> all = of.get();
    List<HBox> rows = new ArrayList<>();
    for (int from = 0; from < all.size(); from += across) {
      HBox row = Panes.row(context.scale());
      for (int at = from; at < Math.min(all.size(), from + across); at++) {
        int number = at;
        row.getChildren()
            .add(
                PhotoKey.of(
                    context.touch(),
                    loader,
                    all.get(at),
                    () -> context.navigator().open(() -> new PhotoScreen(context, of, number))));
      }
      rows.add(row);
    }
    return rows;
  }
}
