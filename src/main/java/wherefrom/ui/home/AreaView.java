package wherefrom.ui.home;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;

/** The areas on their wire where all find room; else as a list that is turned by pages. */
final class AreaView extends Region {
  private static final int IN_A_ROW = 2;

  /** What the keys that turn the list, and the edges of a key, take of each one's width. */
  private static final double TURNING_MM = 28;

  private final Touch touch;
  private final List<Region> keys;
  private final List<AreaFace> faces;
  private final AreaGrid grid;
  private boolean listed;
  private Region shown;

  AreaView(Touch touch, List<Region> keys, List<AreaFace> faces) {
    this.touch = touch;
    this.faces = List.copyOf(faces);
    this.keys = List.copyOf(keys);
    grid = new AreaGrid(touch, keys);
    shown = grid;
    getChildren().setAll(grid);
    setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
  }

  private Region list() {
    List<List<Region>> rows = new ArrayList<>();
    for (int from = 0; from < keys.size(); from += IN_A_ROW) {
      rows.add(keys.subList(from, Math.min(from + IN_A_ROW, keys.size())));
    }
    Pager<List<Region>> pager =
        Pager.list(touch, row -> Tiles.row(touch.scale(), row.toArray(Node[]::new)));
    pager.setItems(rows);
    return pager;
  }

  /** In a list of large letters some names leave no room for their signs: then all do without. */
  private void sign() {
    double share = (getWidth() - touch.scale().gap()) / IN_A_ROW - touch.scale().px(TURNING_MM);
    boolean shown = !listed || faces.stream().allMatch(face -> face.hasRoomForSign(share));
    faces.forEach(face -> face.sign(shown));
  }

  @Override
  protected void layoutChildren() {
    if (!listed && !grid.fits(getWidth(), getHeight())) {
      listed = true;
      shown = list();
      getChildren().setAll(shown);
      shown.applyCss();
    }
    sign();
    Panes.place(shown, 0, 0, getWidth(), getHeight());
  }
}
