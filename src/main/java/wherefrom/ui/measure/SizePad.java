package wherefrom.ui.measure;

import java.util.Locale;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.quantity.UnitChoice;
import wherefrom.quantity.UnitSystem;
import wherefrom.ui.controls.FigurePad;
import wherefrom.ui.controls.Keypad;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Split;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;

/** A number pad for sizes with the unit beside the figure; a gauge that types does as well. */
final class SizePad implements FigurePad {
  /** Room for a scan's digits behind a figure, until they are taken back. */
  private static final int MOST = 24;

  private final Touch touch;
  private final Keypad pad;
  private final EntryUnit unit;
  private final TouchKey turn;
  private final Region[] beside;

  SizePad(Touch touch, UnitSystem system, UnitChoice units, boolean signed) {
    this.touch = touch;
    pad = Panes.grow(Keypad.decimal(touch, MOST, Locale.getDefault(Locale.Category.FORMAT)));
    unit = new EntryUnit(system, units);
    turn = touch.padKey("", this::turn);
    TouchKey sign = touch.padKey(Keypad.SIGN, pad::turnSign);
    beside = signed ? new Region[] {sign, turn} : new Region[] {turn};
    for (Region key : beside) {
      key.setMinWidth(Region.USE_PREF_SIZE);
    }
    show();
  }

  /** With the largest letters nothing but the pad has room. */
  private boolean isAlone() {
    return touch.scale().textFactor() >= 2;
  }

  /**
   * The pad with what is said beside it and the tag that takes the figure. With the largest letters
   * the figure is on the tag, and what is said must be elsewhere.
   *
   * @param keys further keys; may be empty
   * @return made anew on each call
   */
  Region with(Region said, TagKey tag, Region keys) {
    if (isAlone()) {
      String words = tag.words();
      pad.showElsewhere(() -> tag.setWords(isEmpty() ? words : onTag(words), ""));
      HBox first = Panes.row(touch.scale(), Panes.grow(tag));
      first.getChildren().addAll(beside);
      return Panes.column(touch.scale(), first, pad);
    }
    pad.putBeside(beside);
    VBox side = Panes.column(touch.scale(), Panes.grow(said), tag, keys);
    side.setPrefWidth(touch.scale().px(80));
    return new Split(touch.scale(), pad, side);
  }

  /** The figure as the tag has room for it: a second key beside it takes that of all but digits. */
  private String onTag(String words) {
    return beside.length > 1 ? pad.typed() : words.replaceFirst(" it$|$", "") + " " + typed();
  }

  private void turn() {
    unit.turn();
    show();
  }

  private void show() {
    turn.setWords(unit.unit().symbol());
    turn.setAccessibleText("unit: " + unit.unit().symbol());
    pad.tell();
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

  @Override
  public Runnable remember() {
    Runnable figure = pad.remember();
    Runnable itsUnit = unit.remember();
    return () -> {
      figure.run();
      itsUnit.run();
      show();
    };
  }
}
