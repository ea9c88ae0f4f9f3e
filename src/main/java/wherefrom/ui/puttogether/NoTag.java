package wherefrom.ui.puttogether;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
 * its readings, gets a tag again, and goes on into the place that waits.
 */
final class NoTag {
  private final ScreenContext context;
  private final PutTogetherScreen screen;
  private final List<Part> wanted;

  /**
   * @param place the place that waits for its part
   */
  NoTag(ScreenContext context, PutTogetherScreen screen, Optional<Place> place) {
    this.context = context;
    this.screen = screen;
    wanted = place.map(at -> wanted(context.state(), at)).orElse(List.of());
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
    ways.add(
        new Choice<>(
            () -> RetagScreen.open(context),
            "Measure it",
            "its readings tell which part it is; then a new tag"));
    ways.add(
        new Choice<>(
            () -> context.navigator().show(ScreenId.BENCH_MAP),
            "Look on the bench map",
            "tap where it lay; Put it back"));
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
            new Choice<>(() -> print(part), "Print its tag again", "then scan it: the place waits"),
            new Choice<>(
                () -> screen.known(part), "Put it in without", "nothing proves which part it is")));
  }

  private void print(Part part) {
    context.navigator().show(ScreenId.PRINT_TAGS, part.item());
    context.say("Hang the new tag on it. Go back and scan it.");
  }

  private void open(String title, List<Choice<Runnable>> ways) {
    context.navigator().open(() -> new ChoiceScreen<>(context, title, ways, Runnable::run));
  }
}
