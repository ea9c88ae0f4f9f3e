package wherefrom.ui.measure;

import java.util.Locale;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.UnitSystem;
import wherefrom.ui.controls.FigurePad;
import wherefrom.ui.controls.Keypad;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;

/** A number pad for sizes with the unit below it; a gauge that types does as well. */
final class SizePad extends VBox implements FigurePad {
  /** Room for a scan's digits behind a figure, until they are taken back. */
  private static final int MOST = 24;

  private final boolean large;
  private final Keypad pad;
  private final EntryUnit unit;
  private final TouchKey turn;

  SizePad(Touch touch, UnitSystem system, Dimension dimension, boolean signed) {
    super(touch.scale().gap());
    Locale locale = Locale.getDefault(Locale.Category.FORMAT);
    large = touch.isLarge();
    pad = Panes.grow(Keypad.decimal(touch, MOST, locale));
    unit = new EntryUnit(system, dimension);
    turn = touch.key("", this::turn);
    TouchKey sign = touch.key(Keypad.SIGN, pad::turnSign);
    Region below = signed ? Tiles.row(touch.scale(), sign, turn) : turn;
    getChildren().addAll(pad, below);
    setMinWidth(touch.scale().px(touch.isLarge() ? 120 : 110));
    show();
  }

  private void turn() {
    unit.turn();
    show();
  }

  private void show() {
    String now = name(unit.unit().symbol());
    turn.setWords(large ? now : now + " (press for " + name(unit.other().symbol()) + ")");
  }

  private static String name(String symbol) {
    return symbol.equals("in") ? "inch" : symbol;
  }

  /** The figure with its unit; empty where nothing is typed. */
  @Override
  public String typed() {
    String figure = pad.typed();
    return figure.isEmpty() ? "" : figure + " " + unit.unit().symbol();
  }

  /** The figure alone, in the unit that stands. */
  boolean isEmpty() {
    return pad.typed().isEmpty();
  }

  void clear() {
    pad.clear();
    unit.settle();
  }

  @Override
  public void type(String character) {
    if (Character.isLetter(character.codePointAt(0)) || character.equals("\"")) {
      unit.type(character);
      show();
    } else {
      pad.type(character);
    }
  }

  @Override
  public void erase() {
    pad.erase();
  }
}
