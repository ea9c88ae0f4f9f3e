package wherefrom.ui.controls;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** A large field with letters and figures to touch below it; a real keyboard types into it too. */
public final class LetterBoard extends VBox {
  private static final List<String> ROWS =
      List.of("1234567890", "qwertyuiop", "asdfghjkl-", "zxcvbnm,./");

  private final Touch touch;
  private final FitText field;
  private final int most;
  private final StringBuilder typed;
  private final List<TouchKey> letters = new ArrayList<>();
  private final HBox lastRow;
  private boolean capitals;

  public LetterBoard(Touch touch, String initial, int most) {
    super(touch.scale().gap());
    this.touch = touch;
    this.most = most;
    this.typed = new StringBuilder(initial);
    field = touch.text("");
    field.getStyleClass().add("field");
    field.setMinHeight(touch.scale().px(Scale.KEY_MM));
    getChildren().add(field);
    for (String row : ROWS) {
      getChildren().add(Panes.grow(Tiles.row(touch.scale(), row(row))));
    }
    lastRow = lastRow();
    getChildren().add(lastRow);
    capitals(initial.isEmpty());
    show();
  }

  private Node[] row(String characters) {
    return characters
        .chars()
        .mapToObj(
            letter -> {
              TouchKey key = touch.key(Character.toString(letter), () -> press(letter));
              letters.add(key);
              return (Node) key;
            })
        .toArray(Node[]::new);
  }

  private HBox lastRow() {
    Scale scale = touch.scale();
    TouchKey shift = touch.key("Capital", () -> capitals(!capitals));
    TouchKey space = Panes.grow(touch.key("Space", () -> type(" ")));
    TouchKey erase = touch.key("Erase", this::erase);
    return Panes.row(scale, shift, space, erase);
  }

  /** Puts a key of the caller's, such as Done, at the end of the last row. */
  public void addToLastRow(TouchKey key) {
    lastRow.getChildren().add(key);
  }

  private void press(int letter) {
    String character = Character.toString(letter);
    type(capitals ? character.toUpperCase(Locale.ROOT) : character);
  }

  private void capitals(boolean on) {
    capitals = on;
    for (TouchKey key : letters) {
      String word = key.words();
      key.setWords(on ? word.toUpperCase(Locale.ROOT) : word.toLowerCase(Locale.ROOT));
    }
  }

  /** What is typed so far. */
  public String typed() {
    return typed.toString();
  }

  /** Takes a typed character. */
  public void type(String character) {
    if (typed.length() + character.length() <= most) {
      typed.append(character);
      if (capitals) {
        capitals(false);
      }
      show();
    }
  }

  public void erase() {
    if (!typed.isEmpty()) {
      typed.setLength(typed.offsetByCodePoints(typed.length(), -1));
      show();
    }
  }

  private void show() {
    field.setWords(typed + "_");
  }
}
