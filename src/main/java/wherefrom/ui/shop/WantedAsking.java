package wherefrom.ui.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import wherefrom.quantity.UnitSystem;
import wherefrom.rules.consequence.ShopWork;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.subject.Cell;

/** Asks what is wanted, with its figure where the work has one. */
final class WantedAsking {

  /** Work that is asked for often. */
  private enum Work {
    RUN_OUT("measure runout", false),
    CRACKS("check for cracks", ShopWork.CRACK_TEST, false),
    CLEAN("clean", false),
    RESIZE("resize rods", ShopWork.RESIZE, false),
    VALVES("grind the valve face", ShopWork.VALVES, false),
    FACES("grind the lifter or rocker face", false),
    GUIDES("fit new guides", false),
    POLISH("polish", false),
    BORE("bore and hone to", true),
    GRIND("grind to", true),
    CUT("cut by", true),
    OTHER("something else", false);

    private final String words;
    private final ShopWork kind;
    private final boolean sized;

    Work(String words, boolean sized) {
      this(words, ShopWork.OTHER, sized);
    }

    Work(String words, ShopWork kind, boolean sized) {
      this.words = words;
      this.kind = kind;
      this.sized = sized;
    }

    String shown() {
      return Words.capital(words) + (sized ? "…" : "");
    }
  }

  private final ScreenContext context;
  private final Consumer<WorkWanted> done;
  private final String unit;

  private WantedAsking(ScreenContext context, Consumer<WorkWanted> done) {
    this.context = context;
    this.done = done;
    this.unit = context.state().units() == UnitSystem.INCH ? "in" : "mm";
  }

  static void ask(ScreenContext context, Consumer<WorkWanted> done) {
    new WantedAsking(context, done).ask();
  }

  /** The same as keys of the screen that asks. */
  static List<Cell> cells(ScreenContext context, Consumer<WorkWanted> done) {
    WantedAsking asking = new WantedAsking(context, done);
    return Stream.of(Work.values())
        .map(work -> new Cell(work.shown(), "", () -> asking.chosen(work)))
        .toList();
  }

  private void ask() {
    List<Choice<Work>> choices = new ArrayList<>();
    for (Work work : Work.values()) {
      choices.add(new Choice<>(work, work.shown(), ""));
    }
    context
        .navigator()
        .open(() -> new ChoiceScreen<>(context, "What is wanted?", choices, this::chosen));
  }

  private void chosen(Work work) {
    if (work == Work.OTHER) {
      context
          .navigator()
          .open(
              () ->
                  new TextEntryScreen(
                      context, "What is wanted?", "", words -> finish(WorkWanted.of(words))));
    } else if (work.sized) {
      figure(
          work.words,
          "The size wanted, in " + unit + ".",
          size ->
              figure(
                  work.words + " " + size + " " + unit,
                  "How far off is still good, in " + unit + "? Done alone: not said.",
                  within -> finish(new WorkWanted(work.kind, work.words, size, within, unit))));
    } else {
      finish(WorkWanted.of(work.kind, work.words));
    }
  }

  private void figure(String title, String question, Consumer<String> then) {
    context.navigator().open(() -> NumberEntryScreen.size(context, title, question, 9, then));
  }

  private void finish(WorkWanted wanted) {
    done.accept(wanted);
    context.navigator().changed();
  }
}
