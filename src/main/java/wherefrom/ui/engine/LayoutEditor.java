package wherefrom.ui.engine;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import java.util.stream.Stream;
import wherefrom.engine.Arrangement;
import wherefrom.engine.Bank;
import wherefrom.engine.LifterType;
import wherefrom.engine.RockerMount;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;

/** Opens the right entry for a field and puts what was entered into the draft. */
final class LayoutEditor {
  private static final int MOST_DIGITS = 2;
  private static final int VEE_DIGITS = 3;

  private final ScreenContext context;
  private final LayoutDraft draft;

  LayoutEditor(ScreenContext context, LayoutDraft draft) {
    this.context = context;
    this.draft = draft;
  }

  void edit(LayoutFields.Row row) {
    switch (row.what()) {
      case TITLE -> text(row, draft::title);
      case NAME -> text(row, draft::name);
      case BANK_NAME -> text(row, words -> draft.bankName(row.bank(), words));
      case CYLINDERS -> text(row, words -> draft.cylinders(row.bank(), words));
      case VALVES -> text(row, words -> draft.valves(row.bank(), words));
      case FIRING_ORDER -> text(row, draft::firingOrder);
      case LEADING_BANK -> choose(row, banks(), draft::leadingBank);
      case ARRANGEMENT -> choose(row, arrangements(), draft::arrange);
      case VEE -> number(row, VEE_DIGITS, draft::vee);
      case MAINS -> number(row, LayoutDraft.Count.MAINS);
      case THRUST_MAIN -> number(row, LayoutDraft.Count.THRUST_MAIN);
      case ROD_JOURNALS -> number(row, LayoutDraft.Count.ROD_JOURNALS);
      case CAM_BEARINGS -> number(row, LayoutDraft.Count.CAM_BEARINGS);
      case MAIN_CAPS -> draft.mainCaps(!draft.layout().mainCaps());
      case LIFTERS ->
          draft.lifters(
              draft.layout().lifters() == LifterType.FLAT ? LifterType.ROLLER : LifterType.FLAT);
      case ROCKERS ->
          draft.rockers(
              draft.layout().rockers() == RockerMount.SHAFT
                  ? RockerMount.INDIVIDUAL
                  : RockerMount.SHAFT);
    }
  }

  private void text(LayoutFields.Row row, Consumer<String> set) {
    Consumer<String> done = words -> context.attempt(() -> set.accept(words));
    context
        .navigator()
        .open(() -> new TextEntryScreen(context, row.heading(), row.value(), refreshed(done)));
  }

  private void number(LayoutFields.Row row, LayoutDraft.Count which) {
    number(row, MOST_DIGITS, count -> draft.count(which, count));
  }

  private void number(LayoutFields.Row row, int mostDigits, IntConsumer set) {
    Consumer<String> done =
        digits -> {
          if (!digits.isEmpty()) {
            set.accept(Integer.parseInt(digits));
          }
        };
    context
        .navigator()
        .open(
            () ->
                NumberEntryScreen.digits(
                    context,
                    row.heading(),
                    "Now: " + row.value() + ". Type the new number.",
                    mostDigits,
                    refreshed(done)));
  }

  private <T> void choose(LayoutFields.Row row, List<Choice<T>> choices, Consumer<T> set) {
    List<Choice<T>> marked =
        choices.stream().map(choice -> choice.now(choice.words().equals(row.value()))).toList();
    context
        .navigator()
        .open(() -> new ChoiceScreen<>(context, row.heading(), marked, refreshed(set)));
  }

  private <T> Consumer<T> refreshed(Consumer<T> set) {
    return value -> {
      set.accept(value);
      context.navigator().changed();
    };
  }

  private List<Choice<String>> banks() {
    return draft.layout().banks().stream()
        .map(Bank::name)
        .map(name -> new Choice<>(name, name, "sits slightly ahead on the crank"))
        .toList();
  }

  private static List<Choice<Arrangement>> arrangements() {
    return Stream.of(Arrangement.values())
        .map(arrangement -> new Choice<>(arrangement, arrangement.word(), ""))
        .toList();
  }
}
