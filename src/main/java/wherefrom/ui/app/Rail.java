package wherefrom.ui.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.Icon;
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
  private static final double WIDE_MM = 23.7;
  private static final double WIDER_MM = 36.5;
  private static final double WIDEST_MM = 47.5;

  /** UNDO takes back: more room is kept beside it. */
  private static final double APART_MM = 2 * Scale.GAP_MM;

  private final Touch touch;
  private final Consumer<List<RailKey>> rest;
  private final TouchKey undo;
  private List<RailKey> keys = List.of();
  private List<RailKey> besides = List.of();
  private List<RailKey> first = List.of();
  private List<TouchKey> shown = List.of();
  private List<TouchKey> besideUndo = List.of();
  private boolean upright;
  private int room = -1;

  /**
   * @param rest shows the keys that have no room here
   */
  Rail(Touch touch, Runnable undoing, Consumer<List<RailKey>> rest) {
    this.touch = touch;
    this.rest = rest;
    this.undo = plate(new RailKey(Icon.UNDO, "UNDO", undoing));
    getStyleClass().add("rail");
    setPickOnBounds(false);
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
    TouchKey plate =
        touch.key(key.words(), key.act()).draw(key.icon().draw(factor * touch.scale().px(ICON_MM)));
    plate.setAccessibleRole(AccessibleRole.BUTTON);
    plate.setAccessibleText(key.spoken());
    return plate.tight().stress(key.on());
  }

  /** The width of the rail on the left edge, in pixels. */
  double wide() {
    double factor = touch.scale().textFactor();
    return touch.scale().px(factor >= 2 ? WIDEST_MM : factor > 1 ? WIDER_MM : WIDE_MM);
  }

  /**
   * The width of a key, in pixels: in a row they become narrower where two and UNDO, the least that
   * there is, would not stand side by side.
   */
  private double keyWide() {
    double apart = touch.scale().px(APART_MM) + touch.scale().gap();
    return upright ? Math.min(wide(), Math.floor((getWidth() - apart) / 3)) : wide();
  }

  /** The height of the rail as a row, in pixels. */
  double high() {
    return Math.ceil(undo.minHeight(wide()));
  }

  /** Says whether it is a row below the screen. */
  void stand(boolean row) {
    if (row != upright) {
      upright = row;
      room = -1;
      requestLayout();
    }
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
    undo.setVisible(takesBack.isPresent());
    undo.setAccessibleText("UNDO: " + takesBack.orElse(""));
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

  private int fitting() {
    double gap = touch.scale().gap();
    double each = (upright ? keyWide() : high()) + gap;
    double all = upright ? getWidth() : getHeight();
    double forUndo = (upright ? keyWide() : high()) + touch.scale().px(APART_MM) + each;
    return Math.max(1, (int) ((all - forUndo + gap) / each));
  }

  private List<RailKey> first(int most) {
    if (keys.size() <= most) {
      return keys;
    }
    List<RailKey> others = keys.subList(most - 1, keys.size());
    List<RailKey> first = new ArrayList<>(keys.subList(0, most - 1));
    first.add(new RailKey(Icon.MENU, REST, () -> rest.accept(others)));
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
    int most = fitting();
    if (most != room) {
      room = most;
      fill(most);
    }
    double gap = touch.scale().gap();
    double wide = keyWide();
    double high = high();
    for (int at = 0; at < shown.size(); at++) {
      double from = at * ((upright ? wide : high) + gap);
      shown.get(at).resizeRelocate(upright ? from : 0, upright ? 0 : from, wide, high);
    }
    double apart = (upright ? wide : high) + touch.scale().px(APART_MM);
    for (TouchKey key : besideUndo) {
      double from = (upright ? getWidth() - wide : getHeight() - high) - apart;
      key.resizeRelocate(upright ? from : 0, upright ? 0 : from, wide, high);
    }
    undo.resizeRelocate(
        upright ? getWidth() - wide : 0, upright ? 0 : getHeight() - high, wide, high);
  }
}
