package wherefrom.ui.app;

import java.util.List;
import java.util.function.Consumer;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Touch;

/** Asks for one of several things, each a large key. */
public final class ChoiceScreen<T> extends Page {
  /**
   * @param done is given what was chosen; Back leaves without
   */
  public ChoiceScreen(Desk desk, String title, List<Choice<T>> choices, Consumer<T> done) {
    super(desk, title, false);
    Touch touch = desk.touch();
    boolean told = choices.stream().anyMatch(choice -> !choice.more().isEmpty());
    Pager<Choice<T>> list =
        Pager.list(touch, choice -> told ? row(desk, choice, done) : key(desk, choice, done));
    list.setItems(choices);
    lay(list);
  }

  private static <T> Region key(Desk desk, Choice<T> choice, Consumer<T> done) {
    return desk.touch().key(choice.words(), () -> choose(desk, choice, done)).left();
  }

  /** Where more is said of one of them, all have their names in the same letters. */
  private static <T> Region row(Desk desk, Choice<T> choice, Consumer<T> done) {
    List<String> more = choice.more().isEmpty() ? List.of() : List.of(choice.more());
    return ListRow.key(desk.touch(), choice.words(), more, () -> choose(desk, choice, done));
  }

  private static <T> void choose(Desk desk, Choice<T> choice, Consumer<T> done) {
    desk.navigator().back();
    done.accept(choice.value());
  }
}
