package wherefrom.ui.controls;

import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A large number pad with the figures typed so far above it. */
public final class Keypad extends VBox implements FigurePad {
  /** What stands on the key that turns a figure's sign, wherever one can be less than nothing. */
  public static final String SIGN = "+/−";

  private static final int UPRIGHT = 3;
  private static final int LOW = 4;

  private final Touch touch;
  private final FitText shown;
  private final int most;
  private final String decimalMark;
  private final List<Node> upright;
  private final List<Node> low;
  private final Tiles tiles;
  private final StringBuilder typed = new StringBuilder();
  private Optional<FieldRow> beside = Optional.empty();
  private boolean elsewhere;
  private Runnable told = () -> {};

  private Keypad(Touch touch, int most, String decimalMark) {
    super(touch.scale().gap());
    this.touch = touch;
    this.most = most;
    this.decimalMark = decimalMark;
    shown = touch.fit("", 10, Scale.SMALL_MM, true).centred();
    shown.getStyleClass().add("field");
    shown.setMinHeight(touch.scale().px(Scale.KEY_MM));
    upright = keys();
    // On low glass three rows of four.
    low = List.of(0, 1, 2, 11, 3, 4, 5, 9, 6, 7, 8, 10).stream().map(upright::get).toList();
    tiles = new Tiles(touch.scale(), UPRIGHT, Scale.GAP_MM, upright);
    getChildren().addAll(shown, Panes.grow(tiles));
  }

  private double high(int rows) {
    double gap = touch.scale().gap();
    double row = Math.ceil(upright.get(0).minHeight(-1));
    double field = beside.map(FieldRow::level).orElseGet(() -> shown.minHeight(-1));
    return rows * (row + gap) - gap + (elsewhere ? 0 : gap + field);
  }

  /** Puts keys beside the figures. */
  public void putBeside(Region... keys) {
    FieldRow row = new FieldRow(touch, shown, List.of(keys));
    beside = Optional.of(row);
    elsewhere = false;
    told = () -> {};
    getChildren().setAll(row, tiles);
  }

  /** The figures are shown elsewhere: the pad is its keys alone. */
  public void showElsewhere(Runnable changed) {
    elsewhere = true;
    beside = Optional.empty();
    told = changed;
    getChildren().setAll(tiles);
  }

  /** Shows what is typed once more, as where its unit has changed. */
  public void tell() {
    show();
  }

  private void show() {
    shown.setWords(typed.toString());
    told.run();
  }

  @Override
  protected double computeMinHeight(double width) {
    return Math.ceil(high(upright.size() / LOW));
  }

  @Override
  protected void layoutChildren() {
    double below = beside.filter(row -> row.isNarrow(getWidth())).map(FieldRow::below).orElse(0.0);
    boolean stacked = below > 0 && getHeight() >= high(upright.size() / LOW) + below;
    beside.ifPresent(row -> row.stack(stacked));
    double high = getHeight() - (stacked ? below : 0);
    boolean roomy = high >= high(upright.size() / UPRIGHT);
    tiles.setCells(roomy ? upright : low, roomy ? UPRIGHT : LOW);
    super.layoutChildren();
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
    keys.add(decimalMark.isEmpty() ? big("Clear all", this::clear) : key(decimalMark));
    keys.add(key("0"));
    keys.add(big("Erase", this::erase));
    return keys;
  }

  private TouchKey key(String figure) {
    return big(figure, () -> type(figure));
  }

  private TouchKey big(String words, Runnable act) {
    return touch.padKey(words, act);
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
      // A machinist types .0015; what is kept and shown everywhere is 0.0015.
      add(typed.length() == 0 || typed.toString().equals("-") ? "0" : "");
      add(decimalMark);
    } else if (character.matches("[0-9]")) {
      add(character);
    }
  }

  private void add(String character) {
    if (!character.isEmpty() && typed.length() < most) {
      typed.append(character);
      show();
    }
  }

  /** Turns the figure's sign. */
  public void turnSign() {
    if (typed.indexOf("-") == 0) {
      typed.deleteCharAt(0);
    } else {
      typed.insert(0, '-');
    }
    show();
  }

  @Override
  public void erase() {
    if (!typed.isEmpty()) {
      typed.setLength(typed.length() - 1);
      show();
    }
  }

  @Override
  public Runnable remember() {
    String was = typed();
    return () -> {
      typed.replace(0, typed.length(), was);
      show();
    };
  }

  public void clear() {
    typed.setLength(0);
    show();
  }
}
