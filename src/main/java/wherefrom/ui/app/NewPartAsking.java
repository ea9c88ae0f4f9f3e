package wherefrom.ui.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import wherefrom.job.EngineJob;
import wherefrom.job.FittingSize;
import wherefrom.job.SurfaceSizes;
import wherefrom.job.handling.NewPart;
import wherefrom.parts.Part;
import wherefrom.quantity.Unit;
import wherefrom.quantity.UnitSystem;
import wherefrom.rules.size.CutSurface;

/** Asks the size and the sort of a new part, where it has one; what the list says comes first. */
public final class NewPartAsking {
  private static final String OTHER = "?";

  private final ScreenContext context;
  private final Consumer<NewPart> done;

  private NewPartAsking(ScreenContext context, Consumer<NewPart> done) {
    this.context = context;
    this.done = done;
  }

  /** Whether anything must be known of the new part that takes the place of an old one. */
  static boolean asks(ScreenContext context, Part old) {
    return CutSurface.find(old.kind()).isPresent()
        || NewPart.findSortWanted(context.state(), old).isPresent();
  }

  /** Asks what must be known of the new part that takes the place of an old one. */
  public static void ask(ScreenContext context, Part old, Consumer<NewPart> done) {
    NewPartAsking asking = new NewPartAsking(context, done);
    Optional<CutSurface> surface = CutSurface.find(old.kind());
    Optional<String> sort = NewPart.findSortWanted(context.state(), old);
    if (surface.isPresent()) {
      asking.size(surface.get(), old);
    } else if (sort.isPresent()) {
      asking.sort(sort.get());
    } else {
      done.accept(NewPart.LIKE_THE_OLD);
    }
  }

  private void size(CutSurface surface, Part old) {
    List<Choice<String>> choices = new ArrayList<>();
    listed(context.state(), old).ifPresent(choices::add);
    choices.add(new Choice<>("standard", "Standard", ""));
    boolean inch = context.state().units() == UnitSystem.INCH;
    surface
        .steps()
        .list(inch ? Unit.INCH : Unit.MILLIMETRE)
        .forEach(step -> choices.add(new Choice<>(step.text(), surface.said(step), "")));
    choices.add(new Choice<>(OTHER, "Another figure", ""));
    choices.add(new Choice<>("", "Not known", "its size is not checked then"));
    context
        .navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    context, "Size of the new part", choices, size -> sized(size, inch)));
  }

  private static Optional<Choice<String>> listed(EngineJob job, Part old) {
    return new SurfaceSizes(job)
        .findToBuy(old.home())
        .filter(FittingSize::isKnown)
        .map(size -> new Choice<>(NewPart.LISTED, "As the list says", size.words()));
  }

  private void sized(String size, boolean inch) {
    if (!size.equals(OTHER)) {
      done.accept(new NewPart(size, ""));
      return;
    }
    String unit = inch ? "in" : "mm";
    context
        .navigator()
        .open(
            () ->
                NumberEntryScreen.size(
                    context,
                    "Size of the new part",
                    "How far from standard, in " + unit + "?",
                    7,
                    typed ->
                        done.accept(new NewPart(typed.isEmpty() ? "" : typed + " " + unit, ""))));
  }

  private void sort(String wanted) {
    List<Choice<String>> choices =
        List.of(
            new Choice<>(wanted, "A " + wanted + " one", "as the rules want"),
            new Choice<>("", "Like the old one", ""));
    context
        .navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    context,
                    "Sort of the new part",
                    choices,
                    sort -> done.accept(new NewPart("", sort))));
  }
}
