package wherefrom.ui.app;

import java.util.List;
import java.util.function.Consumer;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Touch;

/** Asks for one of several things, each a large key. */
public class ChoiceScreen<T> extends Page {
  private final Consumer<T> done;
  private final List<String> told;

  /**
   * @param done is given what was chosen; Back leaves without
   */
  public ChoiceScreen(
      ScreenContext context, String title, List<Choice<T>> choices, Consumer<T> done) {
    super(context, title, false);
    Touch touch = context.touch();
    boolean more = choices.stream().anyMatch(choice -> !choice.more().isEmpty());
    Pager<Choice<T>> list =
        Pager.list(touch, choice -> more ? row(context, choice) : key(context, choice));
    list.setItems(choices);
    this.done = done;
    this.told = touch.isLarge() ? told(choices) : List.of();
    lay(list);
  }

  private ChoiceScreen(
      ScreenContext context, String title, Consumer<T> done, List<Choice<T>> choices) {
    super(context, title, false);
    this.done = done;
    told = told(choices);
    VBox rows = Panes.column(context.scale());
    VBox names = Panes.column(context.scale());
    for (Choice<T> choice : choices) {
      rows.getChildren().add(row(context, choice));
      names.getChildren().add(key(context, choice));
    }
    lay(new AllAtOnce(rows, names));
  }

  private static <T> List<String> told(List<Choice<T>> choices) {
    return choices.stream()
        .filter(choice -> !choice.more().isEmpty())
        .map(choice -> choice.words() + ": " + choice.more())
        .toList();
  }

  /** The same with all of a few answers at once; what has no room with them is behind Help. */
  public static <T> ChoiceScreen<T> atOnce(
      ScreenContext context, String title, List<Choice<T>> choices, Consumer<T> done) {
    return new ChoiceScreen<>(context, title, done, choices);
  }

  @Override
  public Help help() {
    return told.isEmpty() ? super.help() : new Help(told);
  }

  private Region key(ScreenContext context, Choice<T> choice) {
    return context.touch().key(choice.words(), () -> choose(choice)).left().select(choice.now());
  }

  /**
   * Where more is said of one of them, all have their names in the same letters; where those are
   * large more names stand on a page without it.
   */
  private Region row(ScreenContext context, Choice<T> choice) {
    List<String> more = choice.more().isEmpty() ? List.of() : List.of(choice.more());
    ListRow row =
        ListRow.key(context.touch(), choice.words(), more, () -> choose(choice))
            .select(choice.now());
    return context.touch().isLarge() ? row.sparing() : row;
  }

  /** Where what was chosen cannot be kept it is asked for again. */
  private void choose(Choice<T> choice) {
    context.navigator().back();
    if (!context.succeeds(() -> done.accept(choice.value()))) {
      context.navigator().open(() -> this);
      return;
    }
    // What it came back to was drawn before the choice was handed over.
    context.navigator().changed();
  }
}
