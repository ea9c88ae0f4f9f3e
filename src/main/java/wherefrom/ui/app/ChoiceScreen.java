package wherefrom.ui.app;

import java.util.List;
import java.util.function.Consumer;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Touch;

/** Asks for one of several things, each a large key. */
public class ChoiceScreen<T> extends Page {
  /**
   * @param done is given what was chosen; Back leaves without
   */
  public ChoiceScreen(
      ScreenContext context, String title, List<Choice<T>> choices, Consumer<T> done) {
    super(context, title, false);
    Touch touch = context.touch();
    boolean told = choices.stream().anyMatch(choice -> !choice.more().isEmpty());
    Pager<Choice<T>> list =
        Pager.list(touch, choice -> told ? row(context, choice, done) : key(context, choice, done));
    list.setItems(choices);
    lay(list);
  }

  private static <T> Region key(ScreenContext context, Choice<T> choice, Consumer<T> done) {
    return context.touch().key(choice.words(), () -> choose(context, choice, done)).left();
  }

  /** Where more is said of one of them, all have their names in the same letters. */
  private static <T> Region row(ScreenContext context, Choice<T> choice, Consumer<T> done) {
    List<String> more = choice.more().isEmpty() ? List.of() : List.of(choice.more());
    return ListRow.key(context.touch(), choice.words(), more, () -> choose(context, choice, done));
  }

  private static <T> void choose(ScreenContext context, Choice<T> choice, Consumer<T> done) {
    context.navigator().back();
    done.accept(choice.value());
    // What it came back to was drawn before the choice was handed over.
    context.navigator().changed();
  }
}
