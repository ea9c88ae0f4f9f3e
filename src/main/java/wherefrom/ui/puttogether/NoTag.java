package wherefrom.ui.puttogether;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import wherefrom.job.EngineJob;
import wherefrom.job.puttogether.ToFit;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.shop.RetagScreen;
import wherefrom.ui.takeapart.PartName;

/**
 * The part in the hand has no tag, or one that nobody can read. It is told by where it lay or by
 * its readings, gets a tag again, and goes on into the place that waits, if one does.
 */
public final class NoTag {
  private final ScreenContext context;
  private final Consumer<Part> known;
  private final List<Part> wanted;

  /**
   * @param wanted the parts that it may be, as somebody named it or as its place waits
   */
  private NoTag(ScreenContext context, Consumer<Part> known, List<Part> wanted) {
    this.context = context;
    this.known = known;
    this.wanted = List.copyOf(wanted);
  }

  /** The part that is asked for in putting together, or any where none is. */
  static NoTag of(ScreenContext context, PutTogetherModel model, Consumer<Part> known) {
    Halves due = model.dueHalves();
    List<Part> wanted =
        model
            .wanted()
            .map(List::of)
            .or(
                () ->
                    due.here()
                        .filter(place -> due.asksForPart())
                        .map(place -> wanted(context.state(), place)))
            .orElse(List.of());
    return new NoTag(context, known, wanted);
  }

  /** Asks for any part, while nothing goes in. */
  public static void ask(ScreenContext context) {
    new NoTag(context, part -> {}, List.of()).ask();
  }

  /** The parts that are still to go in at the spot, the innermost first. */
  private static List<Part> wanted(EngineJob state, Place waiting) {
    List<Place> there =
        state.places().stream()
            .filter(place -> place.spot().equals(waiting.spot()))
            .filter(place -> state.findSeated(place).isEmpty())
            .toList();
    return ToFit.inOrder(there).stream()
        .flatMap(place -> state.bench().findRightful(place).stream())
        .toList();
  }

  void ask() {
    List<Choice<Runnable>> ways = new ArrayList<>();
    for (Part part : wanted) {
      ways.add(
          new Choice<>(
              () -> known(part), "It lay as the " + name(part), "in its own basket, bag or spot"));
    }
    Choice<Runnable> measure =
        new Choice<>(
            () -> RetagScreen.open(context),
            "Measure it",
            "its readings tell which part it is; then a new tag");
    Choice<Runnable> bench =
        new Choice<>(
            () -> context.navigator().show(ScreenId.BENCH_MAP),
            "Look on the bench map",
            "choose its kind, tap where it lay");
    ways.addAll(wanted.isEmpty() ? List.of(bench, measure) : List.of(measure, bench));
    open("How do you know it?", ways);
  }

  private String name(Part part) {
    return PartName.of(context.state().layout(), part.home()).inLine();
  }

  /** A new tag first, so that what goes in can be told again; else in at once. */
  private void known(Part part) {
    open(
        "The " + name(part) + " has no tag",
        List.of(
            new Choice<>(() -> print(part), "Print its tag again", "then scan it"),
            new Choice<>(
                () -> known.accept(part), "Put it in without", "nothing proves which part it is")));
  }

  private void print(Part part) {
    context.navigator().show(ScreenId.PRINT_TAGS, part.item());
    context.say("Hang the new tag on it. Go back and scan it.");
  }

  private void open(String title, List<Choice<Runnable>> ways) {
    context.navigator().open(() -> new ChoiceScreen<>(context, title, ways, Runnable::run));
  }
}
