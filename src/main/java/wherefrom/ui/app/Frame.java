package wherefrom.ui.app;

import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;

/**
 * The places of the window: the rail, the title's row, and what the screen shows. They are where
 * they are on every screen; where the glass stands upright the rail is the last row.
 */
final class Frame extends Region {
  private static final double MARGIN_MM = 4.1;

  /** Below contents that lack room. */
  private static final double LEAST_MARGIN_MM = 1;

  private final Scale scale;
  private final Rail rail;
  private final TitleRow title;
  private Region content = new Region();
  private boolean whole;

  Frame(Touch touch, Rail rail, TitleRow title) {
    this.scale = touch.scale();
    this.rail = rail;
    this.title = title;
    getChildren().setAll(content, title, rail);
  }

  /**
   * Shows a screen's contents.
   *
   * @param all whether they take the whole glass: of the rail then nothing but UNDO is left
   */
  void show(Region contents, boolean all) {
    whole = all;
    content = contents;
    title.setVisible(!all);
    // The rail lies above contents that take the whole glass: UNDO stays in its corner.
    getChildren().setAll(content, title, rail);
    requestLayout();
  }

  /** Told whenever the window has another size. */
  void onResized(Runnable listener) {
    widthProperty().addListener(changed -> listener.run());
    heightProperty().addListener(changed -> listener.run());
  }

  /**
   * Whether the contents have the room that they need, and the title with them; as long as there is
   * no window they do.
   */
  boolean fits() {
    if (getWidth() <= 0 || getHeight() <= 0) {
      return true;
    }
    Bounds room = room();
    boolean titled = whole || title.holdsTitle(room.getWidth(), room.getMinY() - margin());
    return titled
        && content.minWidth(-1) <= room.getWidth() + 1
        && content.minHeight(room.getWidth()) <= room.getHeight() + 1;
  }

  /** Lays contents out whose form follows from their size, so that they can say what they need. */
  void settle() {
    layout();
    layAllOut();
  }

  /** Asks all of the contents anew how much room they need, as after a change of letters. */
  void layAllOut() {
    layAllOut(content);
  }

  private static void layAllOut(Parent parent) {
    parent.requestLayout();
    for (Node child : parent.getChildrenUnmodifiable()) {
      if (child instanceof Parent inner) {
        layAllOut(inner);
      }
    }
  }

  /** Whether the contents take the whole glass. */
  boolean isWhole() {
    return whole;
  }

  private double margin() {
    return Math.floor(scale.px(MARGIN_MM));
  }

  private boolean isUpright() {
    return getHeight() > getWidth();
  }

  /**
   * Where the contents are. Those that lack room come nearer the lower edge, as far as they must,
   * and the title's row has one line; neither rail nor UNDO moves for that.
   */
  private Bounds room() {
    double wide = room(0, 0).getWidth();
    Bounds usual = room(title.high(wide, isUpright()), 0);
    double lacking = lacking(usual);
    if (whole || lacking <= 0) {
      return usual;
    }
    double most = isUpright() ? 0 : margin() - Math.floor(scale.px(LEAST_MARGIN_MM));
    double two = title.high(wide, false);
    if (lacking(room(two, 0)) <= 0) {
      return room(two, 0);
    }
    if (title.needsMore(wide) && lacking <= most) {
      return room(two, lacking);
    }
    double closer = lacking(room(title.least(), 0));
    return room(title.least(), Math.max(0, Math.min(most, closer)));
  }

  /** How much higher the contents would have to be, in pixels. */
  private double lacking(Bounds room) {
    return Math.ceil(content.minHeight(room.getWidth()) - room.getHeight() - 1);
  }

  private Bounds room(double top, double more) {
    double margin = margin();
    double width = getWidth() - 2 * margin;
    double height = getHeight() - 2 * margin;
    if (whole) {
      return new BoundingBox(margin, margin, width, height);
    }
    double side = isUpright() ? 0 : Math.ceil(rail.wide() + scale.gap());
    double below = isUpright() ? Math.ceil(rail.high() + scale.gap()) : 0;
    return new BoundingBox(
        margin + side, margin + top, width - side, Math.max(0, height + more - top - below));
  }

  @Override
  protected void layoutChildren() {
    double margin = margin();
    double width = getWidth() - 2 * margin;
    double height = getHeight() - 2 * margin;
    boolean upright = isUpright();
    rail.stand(upright, upright ? width : height);
    Panes.place(
        rail,
        margin,
        upright ? margin + height - rail.high() : margin,
        upright ? width : rail.wide(),
        upright ? rail.high() : height);
    Bounds room = room();
    double top = margin - title.reach();
    Panes.place(title, room.getMinX(), top, room.getWidth(), room.getMinY() - top);
    Panes.place(content, room.getMinX(), room.getMinY(), room.getWidth(), room.getHeight());
  }
}
