package wherefrom.ui.controls;

import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** A large number pad with the figures typed so far above it. */
public final class Keypad extends VBox implements FigurePad {
  /** What stands on the key that turns a figure's sign, wherever one can be less than nothing. */
  public static final String SIGN = "+ / −";

  private final Touch touch;
  private final FitText shown;
  private final int most;
  private final String decimalMark;
  private final StringBuilder typed = new StringBuilder();

  private Keypad(Touch touch, int most, String decimalMark) {
    super(touch.scale().gap());
    this.touch = touch;
    this.most = most;
    this.decimalMark = decimalMark;
    shown = touch.fit("", 10, Scale.SMALL_MM, true).centred();
    shown.getStyleClass().add("field");
    shown.setMinHeight(touch.scale().px(Scale.KEY_MM));
    getChildren().addAll(shown, Panes.grow(new Tiles(touch.scale(), 3, Scale.GAP_MM, keys())));
  }

  /** A pad for whole figures, such as the six of a typed code. */
  public static Keypad digits(Touch touch, int most) {
    return new Keypad(touch, most, "");
  }

  /** A pad for sizes, with the decimal mark of the person's language. */
  public static Keypad decimal(Touch touch, int most, Locale locale) {
    char mark = DecimalFormatSymbols.getInstance(locale).getDecimalSeparator();
    return new Keypad(touch, most, String.valueOf(mark));
  }

  private List<Node> keys() {
    List<Node> keys = new ArrayList<>();
    for (int digit = 1; digit <= 9; digit++) {
      keys.add(key(String.valueOf(digit)));
    }
    keys.add(decimalMark.isEmpty() ? big("Clear", this::clear) : key(decimalMark));
    keys.add(key("0"));
    keys.add(big("Erase", this::erase));
    return keys;
  }

  private TouchKey key(String figure) {
    return big(figure, () -> type(figure));
  }

  private TouchKey big(String words, Runnable act) {
    return touch.primary(words, act);
  }

  @Override
  public String typed() {
    return typed.toString();
  }

  @Override
  public void type(String character) {
    if (character.equals("-") && !decimalMark.isEmpty() && typed.isEmpty()) {
      // A gauge that sends a minus must not lose it, even where none is expected.
      add("-");
      return;
    }
    boolean mark = character.equals(".") || character.equals(",");
    if (mark && !decimalMark.isEmpty() && typed.indexOf(decimalMark) < 0) {
      add(decimalMark);
    } else if (character.matches("[0-9]")) {
      add(character);
    }
  }

  private void add(String character) {
    if (typed.length() < most) {
      typed.append(character);
      shown.setWords(typed.toString());
    }
  }

  /** Turns the figure's sign. */
  public void turnSign() {
    if (typed.indexOf("-") == 0) {
      typed.deleteCharAt(0);
    } else {
      typed.insert(0, '-');
    }
    shown.setWords(typed.toString());
  }

  @Override
  public void erase() {
    if (!typed.isEmpty()) {
      typed.setLength(typed.length() - 1);
      shown.setWords(typed.toString());
    }
  }

  public void clear() {
    typed.setLength(0);
    shown.setWords("");
  }
}
