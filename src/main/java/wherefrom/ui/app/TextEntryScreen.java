package wherefrom.ui.app;

import java.util.function.Consumer;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.LetterBoard;
import wherefrom.ui.controls.Panes;

/** Asks for a few words, by touch or on a real keyboard. */
public final class TextEntryScreen implements WholeGlass, Typable {
  private static final int MOST = 120;

  private final ScreenContext context;
  private final String title;
  private final Consumer<String> done;
  private final LetterBoard board;
  private final boolean keeping;

  /**
   * @param done is given the words when Done is pressed; Back leaves without
   */
  public TextEntryScreen(
      ScreenContext context, String title, String initial, Consumer<String> done) {
    this(context, title, initial, done, false);
  }

  /**
   * One whose words are never lost: they are handed over whichever way it is left.
   *
   * @param done is given the words when Done or Back is pressed, or another screen comes up
   */
  public static TextEntryScreen keeping(
      ScreenContext context, String title, String initial, Consumer<String> done) {
    return new TextEntryScreen(context, title, initial, done, true);
  }

  private TextEntryScreen(
      ScreenContext context, String title, String initial, Consumer<String> done, boolean keeping) {
    this.context = context;
    this.keeping = keeping;
    this.title = title;
    this.done = done;
    board = Panes.grow(new LetterBoard(context.touch(), title, initial, MOST));
    board.back(context.touch().key("Back", context.navigator()::back));
    board.done(context.touch().tag("Done", "", this::enter));
  }

  @Override
  public String title() {
    return title;
  }

  /** Letters need the whole glass where it is small. */
  @Override
  public boolean whole() {
    return true;
  }

  @Override
  public void message(String sentence) {
    board.message(sentence);
  }

  @Override
  public Region view() {
    return board;
  }

  @Override
  public boolean onJob() {
    return false;
  }

  @Override
  public Object standsFor() {
    return this;
  }

  @Override
  public void type(String character) {
    board.type(character);
  }

  @Override
  public void erase() {
    board.erase();
  }

  @Override
  public Runnable remember() {
    return board.remember();
  }

  @Override
  public void enter() {
    context.navigator().back();
    if (!keeping) {
      hand();
    }
  }

  /** Where the words cannot be kept they are asked for again, as they were typed. */
  private void hand() {
    String words = board.typed().strip();
    if (context.succeeds(() -> done.accept(words))) {
      context.navigator().changed();
    } else {
      context.navigator().open(() -> this);
    }
  }

  @Override
  public void takeOver(Screen before) {
    if (before instanceof TextEntryScreen same) {
      board.show(same.board.typed());
    }
  }

  @Override
  public void hidden() {
    if (keeping) {
      done.accept(board.typed().strip());
    }
  }
}
