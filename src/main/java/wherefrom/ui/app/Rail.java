package wherefrom.ui.app;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Dimension2D;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.Icon;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;

/**
 * The keys that have one place on every screen: on the left edge from the top, UNDO in the lower
 * corner with Help beside it; where the glass stands upright, in the last row. Where not all have
 * room the last leads to the rest.
 */
final class Rail extends Region {
  /** Told from the key More that a screen of its own may have. */
  static final String REST = "Menu";

  private static final double ICON_MM = 6.4;

  /** The way back, and one more. */
  private static final int LEAST = 2;

  private static final double WIDE_MM = 23.7;
  private static final double WIDER_MM = 36.5;
  private static final double WIDEST_MM = 47.5;

  /** What stands on every screen, or nearly. */
  private static final List<String> ALWAYS = List.of("Back", REST, "Help", "UNDO");

  /** UNDO takes back: more room is kept beside it. */
  private static final double APART_MM = 2 * Scale.GAP_MM;

  private final Touch touch;
  private final Consumer<List<RailKey>> rest;
  private final Runnable undoing;
  private TouchKey undo;
  private boolean undone;
  private String undoWords = "UNDO";
  private List<RailKey> keys = List.of();
  private List<RailKey> besides = List.of();
  private List<RailKey> first = List.of();
  private List<TouchKey> shown = List.of();
  private List<TouchKey> besideUndo = List.of();
  private boolean upright;
  private boolean pictured = true;
  private double length;
  private double keyWide;
  private int rows = 1;
  private int room = -1;

  /** Words in letters of a size. */
  private record Asked(String words, double factor) {}

  private final Map<Asked, Double> widths = new HashMap<>();

  /**
   * @param rest shows the keys that have no room here
   */
  Rail(Touch touch, Runnable undoing, Consumer<List<RailKey>> rest) {
    this.touch = touch;
    this.rest = rest;
    this.undoing = undoing;
    this.undo = undoPlate();
    getStyleClass().add("rail");
    setPickOnBounds(false);
  }

  private TouchKey undoPlate() {
    return plate(new RailKey(Icon.UNDO, "UNDO", undoing));
  }

  /** What a key does may have changed since it was drawn. */
  private TouchKey plate(RailKey key, int at) {
    return plate(new RailKey(key.icon(), key.words(), key.spoken(), () -> press(at), key.on()));
  }

  private void press(int at) {
    first.get(at).act().run();
  }

  /** What the key beside UNDO does may have changed since it was drawn. */
  private RailKey pressed(RailKey key) {
    Runnable act = () -> besides.forEach(now -> now.act().run());
    return new RailKey(key.icon(), key.words(), key.spoken(), act, key.on());
  }

  private TouchKey plate(RailKey key) {
    double factor = Math.min(touch.scale().textFactor(), 1.5);
    TouchKey plate = touch.key(key.words(), key.act());
    if (pictured) {
      plate.draw(key.icon().draw(factor * touch.scale().px(ICON_MM)));
    }
    plate.setAccessibleRole(AccessibleRole.BUTTON);
    plate.setAccessibleText(key.spoken());
    return plate.tight().stress(key.on());
  }

  /** The width of the rail on the left edge, in pixels. */
  double wide() {
    double factor = touch.scale().textFactor();
    return touch.scale().px(factor >= 2 ? WIDEST_MM : factor > 1 ? WIDER_MM : WIDE_MM);
  }

  private double apart() {
    return touch.scale().px(APART_MM) + touch.scale().gap();
  }

  /** The height of a key, in pixels. */
  private double keyHigh() {
    return Math.ceil(undo.minHeight(keyWide > 0 ? keyWide : wide()));
  }

  /** The height of the rail where the glass stands upright, in pixels. */
  double high() {
    return rows * keyHigh() + (rows - 1) * touch.scale().gap();
  }

  /** The size of the key in the corner, in pixels. */
  Dimension2D corner() {
    return new Dimension2D(keyWide > 0 ? keyWide : wide(), keyHigh());
  }

  /**
   * Says how it stands.
   *
   * @param below whether it is below the screen
   * @param room as long as it may be, in pixels: its width there, else its height
   */
  void stand(boolean below, double room) {
    if (below != upright || room != length) {
      upright = below;
      length = room;
      arrange();
      this.room = -1;
      requestLayout();
    }
  }

  /**
   * Finds room for the way back and one more key on every screen. Below the screen keys are
   * narrower for that, or stand in two rows; beside it, with large letters on low glass, the words
   * stand alone: both are worth more than the signs.
   */
  private void arrange() {
    double gap = touch.scale().gap();
    rows = 1;
    keyWide = wide();
    boolean before = pictured;
    pictured = true;
    if (upright) {
      double four = Math.floor((length - apart() - 2 * gap) / 4);
      keyWide = Math.min(wide(), Math.floor((length - apart()) / 3));
      if (fitting(keyWide) < LEAST && four >= widest(ALWAYS)) {
        keyWide = four;
      } else if (fitting(keyWide) < LEAST) {
        rows = 2;
        pictured = false;
        keyWide = Math.floor((length - 2 * gap) / 3);
      }
    } else {
      pictured = fitting(Math.ceil(undoPlate().minHeight(wide()))) >= LEAST;
    }
    if (pictured != before) {
      undo = undoPlate();
      undo.setVisible(undone);
      undo.setAccessibleText(undoWords);
    }
  }

  private double widest(List<String> words) {
    double factor = touch.scale().textFactor();
    return words.stream()
        .mapToDouble(each -> widths.computeIfAbsent(new Asked(each, factor), this::width))
        .max()
        .orElse(0);
  }

  private double width(Asked asked) {
    return touch.key(asked.words(), () -> {}).tight().minWidth(-1);
  }

  /**
   * Shows keys in their order.
   *
   * @param last the key beside UNDO, which has its place whether UNDO is there or not
   * @param takesBack what UNDO would take back, in few words; empty where there is no UNDO
   */
  void show(List<RailKey> wanted, Optional<RailKey> last, Optional<String> takesBack) {
    List<RailKey> lasts = last.map(List::of).orElse(List.of());
    boolean same = looks(wanted).equals(looks(keys)) && looks(lasts).equals(looks(besides));
    keys = List.copyOf(wanted);
    besides = lasts;
    undone = takesBack.isPresent();
    undoWords = "UNDO: " + takesBack.orElse("");
    undo.setVisible(undone);
    undo.setAccessibleText(undoWords);
    if (same && room > 0) {
      // The keys stay as they are: one of them may be under a finger.
      first = first(room);
      return;
    }
    room = -1;
    requestLayout();
  }

  private static List<List<Object>> looks(List<RailKey> keys) {
    return keys.stream()
        .map(key -> List.<Object>of(key.icon(), key.words(), key.spoken(), key.on()))
        .toList();
  }

  /** How many keys have room before Help and UNDO, each so long. */
  private int fitting(double one) {
    double gap = touch.scale().gap();
    double forUndo = rows > 1 ? 0 : 2 * one + apart();
    return Math.max(1, (int) ((length - forUndo + gap) / (one + gap)));
  }

  /** The most keys whose words have room, too. */
  private int most() {
    int most = fitting(upright ? keyWide : keyHigh());
    while (most > 1 && widest(first(most).stream().map(RailKey::words).toList()) > keyWide) {
      most--;
    }
    return most;
  }

  private List<RailKey> first(int most) {
    if (keys.size() <= most) {
      return keys;
    }
    List<RailKey> others = keys.subList(most - 1, keys.size());
    List<RailKey> first = new ArrayList<>(keys.subList(0, most - 1));
    // A camera that runs is seen by the key behind which its own is.
    boolean on = others.stream().anyMatch(RailKey::on);
    first.add(new RailKey(Icon.MENU, REST, REST, () -> rest.accept(others), on));
    return first;
  }

  private void fill(int most) {
    first = first(most);
    List<TouchKey> plates = new ArrayList<>();
    for (int at = 0; at < first.size(); at++) {
      plates.add(plate(first.get(at), at));
    }
    shown = List.copyOf(plates);
    getChildren().setAll(shown);
    besideUndo = besides.stream().map(key -> plate(pressed(key))).toList();
    getChildren().addAll(besideUndo);
    getChildren().add(undo);
    getChildren().forEach(child -> child.applyCss());
  }

  @Override
  protected void layoutChildren() {
    if (keyWide == 0) {
      return;
    }
    if (room < 0) {
      room = most();
      fill(room);
    }
    double gap = touch.scale().gap();
    double high = keyHigh();
    for (int at = 0; at < shown.size(); at++) {
      double from = at * ((upright ? keyWide : high) + gap);
      place(shown.get(at), from, 0);
    }
    double corner = upright ? getWidth() - keyWide : getHeight() - high;
    double lower = upright ? getHeight() - high : 0;
    for (TouchKey key : besideUndo) {
      double apart = (upright ? keyWide : high) + touch.scale().px(APART_MM);
      place(key, corner - apart, lower);
    }
    place(undo, corner, lower);
  }

  /**
   * Puts a key at its place.
   *
   * @param along the rail, from its first key
   * @param lower how far it is below the first row
   */
  private void place(TouchKey key, double along, double lower) {
    Panes.place(key, upright ? along : 0, upright ? lower : along, keyWide, keyHigh());
  }
}
