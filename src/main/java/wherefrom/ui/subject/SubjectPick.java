package wherefrom.ui.subject;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import wherefrom.inspection.Subject;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.ScreenContext;

/** Opens what lies at one place of a drawing: the only thing there, or the one that is chosen. */
final class SubjectPick {
  private SubjectPick() {}

  static void open(
      ScreenContext context,
      String title,
      List<Subject> here,
      Function<Subject, String> state,
      Consumer<Subject> opened) {
    if (here.size() == 1) {
      opened.accept(here.get(0));
      return;
    }
    List<Choice<Subject>> choices =
        here.stream()
            .map(one -> new Choice<>(one, Named.title(context.state(), one), state.apply(one)))
            .toList();
    context.navigator().open(() -> new ChoiceScreen<>(context, title, choices, opened));
  }
}
