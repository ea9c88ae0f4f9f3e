package wherefrom.ui.controls;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.layout.Region;

/**
 * A large field with letters to touch below it; a real keyboard types into it too. On wide glass
 * the letters stand as on a keyboard, on narrow glass as in the alphabet, figures on a page of
 * their own.
 */
public final class LetterBoard extends Region {
  private static final String WIDE = "1234567890qwertyuiopasdfghjkl-zxcvbnm,./'()&#";
  private static final String LETTERS = "abcdefghijklmnopqrstuvwxyz";
  private static final String SIGNS = "1234567890-.,/+()&'#:;=%*\"";
  private static final int WIDE_COLUMNS = 10;

  private static final double LEAST_FIELD_MM = 70;

  private static final int NARROW_COLUMNS = 8;

  /** On glass that stands upright. */
  private static final int LEAST_COLUMNS = 5;

  /** Capitals, the other page, the space. */
  private static final int EXTRA = 3;

  private final Touch touch;
  private final BoardField field;
  private final int most;
  private final StringBuilder typed;
  private final Tiles tiles;
  private final List<TouchKey> letters = new ArrayList<>();
  private final TouchKey shift;
  private final TouchKey page;
  private final TouchKey space;
  private final TouchKey erase;
  private Region done = new Region();
  private Region back = new Region();
  private String message = "";
  private boolean capitals;
  private boolean signs;
  private int columns;

  /**
   * @param prompt what is asked for; it stands before what is typed
   */
  public LetterBoard(Touch touch, String prompt, String initial, int most) {
    this.touch = touch;
    this.most = most;
    this.typed = new StringBuilder(initial);
    field = new BoardField(touch, prompt);
    shift = touch.padKey("Aa", () -> capitals(!capitals));
    shift.setAccessibleText("Capital letters");
    page = touch.padKey("123", this::turn);
    space = touch.padKey("", () -> type(" "));
    space.draw(Icon.SPACE.draw(touch.scale().px(7)));
    space.setAccessibleText("Space");
    erase = touch.padKey("Erase", this::erase);
    tiles = Tiles.row(touch.scale()).endToEnd();
    getChildren().addAll(field.view(), erase, tiles);
    capitals = initial.isEmpty();
    show();
  }

  /** Puts a key of the caller's, such as Done, beside the field. */
  public void done(Region key) {
    done = key;
    getChildren().add(key);
  }

  /** Puts the caller's way back before the field. */
  public void back(Region key) {
    back = key;
    getChildren().add(key);
  }

  private void turn() {
    signs = !signs;
    page.setWords(signs ? "abc" : "123");
    columns = 0;
    requestLayout();
  }

  private void press(int letter) {
    String character = Character.toString(letter);
    type(capitals ? character.toUpperCase(Locale.ROOT) : character);
  }

  private void capitals(boolean on) {
    capitals = on;
    shift.select(on);
    for (TouchKey key : letters) {
      String word = key.words();
      key.setWords(on ? word.toUpperCase(Locale.ROOT) : word.toLowerCase(Locale.ROOT));
    }
  }

  /** What is typed so far. */
  public String typed() {
    return typed.toString();
  }

  /** Shows a sentence in the field until the next letter; empty for none. */
  public void message(String sentence) {
    message = sentence;
    show();
  }

  /** Shows these words in place of what is typed. */
  public void show(String words) {
    typed.setLength(0);
    typed.append(words);
    capitals(words.isEmpty());
    show();
  }

  /** Takes a typed character. */
  public void type(String character) {
    message = "";
    if (typed.length() + character.length() <= most) {
      typed.append(character);
      if (capitals) {
        capitals(false);
      }
      show();
    }
  }

  public void erase() {
    message = "";
    if (!typed.isEmpty()) {
      typed.setLength(typed.offsetByCodePoints(typed.length(), -1));
      show();
    }
  }

  /** What is typed, and whether capitals come next, stand as they do now again when it is run. */
  public Runnable remember() {
    String was = typed();
    boolean large = capitals;
    return () -> {
      show(was);
      capitals(large);
    };
  }

  private void show() {
    requestLayout();
  }

  private double key() {
    return Math.ceil(shift.minHeight(-1));
  }

  private double gap() {
    return touch.scale().gap();
  }

  @Override
  protected double computeMinWidth(double height) {
    double head = back.minWidth(-1) + erase.minWidth(-1) + done.minWidth(-1) + 2 * gap();
    return Math.max(head, LEAST_COLUMNS * (wide() + gap()) - gap());
  }

  @Override
  protected double computeMinHeight(double width) {
    int fitting = width <= 0 ? NARROW_COLUMNS : (int) ((width + gap()) / (wide() + gap()));
    int columns = Math.max(1, Math.min(NARROW_COLUMNS, fitting));
    int rows = (LETTERS.length() + EXTRA + columns - 1) / columns;
    return top(width) - gap() + rows * (key() + gap());
  }

  /** A column is as wide as the widest key needs. */
  private double wide() {
    return Math.ceil(Math.max(shift.minWidth(-1), page.minWidth(-1)));
  }

  @Override
  protected double computePrefHeight(double width) {
    return computeMinHeight(width);
  }

  private void fill(int wanted) {
    if (columns == wanted) {
      return;
    }
    columns = wanted;
    boolean wide = wanted == WIDE_COLUMNS;
    letters.clear();
    (wide ? WIDE : signs ? SIGNS : LETTERS)
        .codePoints()
        .forEach(
            letter -> letters.add(touch.padKey(Character.toString(letter), () -> press(letter))));
    List<Node> keys = new ArrayList<>(letters);
    keys.add(shift);
    if (!wide) {
      keys.add(page);
    }
    keys.add(space);
    tiles.setCells(keys, wanted);
    capitals(capitals);
    keys.forEach(Node::applyCss);
  }

  /** What the keys beside the field leave of a row. */
  private double beside(double width) {
    double keys = back.prefWidth(-1) + erase.prefWidth(-1) + done.prefWidth(-1);
    return Math.floor(width - keys - 3 * gap());
  }

  /** On narrow glass the field has a row of its own. */
  private boolean isNarrow(double width) {
    return beside(width) < touch.scale().px(LEAST_FIELD_MM);
  }

  private double first() {
    return Math.max(key(), Math.ceil(done.minHeight(-1)));
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double wide = WIDE_COLUMNS * (touch.scale().px(Scale.KEY_MM) + gap()) - gap();
    boolean room = width >= wide && getHeight() >= 6 * (key() + gap()) - gap();
    fill(room ? WIDE_COLUMNS : NARROW_COLUMNS);
    double top = top(width);
    if (isNarrow(width)) {
      narrow(width);
    } else {
      oneRow(width, top - gap());
    }
    Panes.place(tiles, 0, top, width, Math.max(0, getHeight() - top));
  }

  /** What the field and the keys round it take, with the gap below them. */
  private double top(double width) {
    if (width <= 0) {
      return first() + gap();
    }
    return isNarrow(width)
        ? first() + fieldHigh(width) + 2 * gap()
        : Math.max(first(), fieldHigh(beside(width))) + gap();
  }

  private void oneRow(double width, double first) {
    double from = place(back, 0, first);
    double beside = beside(width);
    field.show(typed(), message, from, 0, beside, first);
    from = place(erase, from + beside + gap(), first);
    place(done, from, first);
  }

  private void narrow(double width) {
    double first = first();
    double liked = back.prefWidth(-1) + erase.prefWidth(-1) + done.prefWidth(-1) + 2 * gap();
    boolean tight = liked > width;
    double from = place(back, 0, tight ? back.minWidth(-1) : back.prefWidth(-1), first);
    double rest = Math.floor(width - from - gap() - Math.ceil(done.minWidth(-1)));
    from = place(erase, from, tight ? rest : erase.prefWidth(-1), first);
    Panes.place(done, from, 0, width - from, first);
    field.show(typed(), message, 0, first + gap(), width, fieldHigh(width));
  }

  private double place(Region key, double from, double high) {
    return place(key, from, key.prefWidth(-1), high);
  }

  /** Where the next one begins. */
  private double place(Region key, double from, double width, double high) {
    double wide = Math.ceil(width);
    Panes.place(key, from, 0, wide, high);
    return from + wide + gap();
  }

  private double fieldHigh(double width) {
    return Math.max(key(), field.high(width));
  }
}
