package wherefrom.ui.puttogether;

import java.util.List;
import java.util.Optional;
import wherefrom.job.handling.NewPart;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.ReasonAsking;
import wherefrom.ui.app.ReplaceAsking;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;

/** What can be done with an open place: see its part, leave it empty, take a new part. */
final class PlaceWays {
  private final ScreenContext context;
  private final MissingModel model;
  private final Runnable printing;

  PlaceWays(ScreenContext context, MissingModel model) {
    this(context, model, () -> {});
  }

  /**
   * @param printing told when a new part was taken on and its tag is about to be printed
   */
  PlaceWays(ScreenContext context, MissingModel model, Runnable printing) {
    this.context = context;
    this.model = model;
    this.printing = printing;
  }

  /** Asks which. */
  void choose(Place place) {
    List<Choice<Runnable>> ways =
        List.of(
            new Choice<>(() -> part(place), "Show its part", ""),
            new Choice<>(() -> excuse(place), "Leave it empty", "with a reason"),
            new Choice<>(
                () -> model.rightful(place).ifPresent(this::replace),
                "A new part instead",
                "its tag is printed, marked NEW"));
    context.navigator().open(() -> new ChoiceScreen<>(context, place.words(), ways, Runnable::run));
  }

  private void part(Place place) {
    model.rightful(place).ifPresent(part -> context.navigator().show(ScreenId.PART, part.item()));
  }

  private void excuse(Place place) {
    ReasonAsking.ask(
        context, "Why does it stay empty?", MissingModel.EXCUSES, words -> excuse(place, words));
  }

  private void excuse(Place place, String reason) {
    model.excuse(place, reason);
    told();
  }

  private void replace(Part old) {
    replace(old, Optional.empty());
  }

  /**
   * Asks why and what of a new part in place of this one, and prints its tag.
   *
   * @param why what says already why it comes, if anything does
   */
  void replace(Part old, Optional<String> why) {
    ReplaceAsking.ask(context, old, why, (reason, fresh) -> replace(old, reason, fresh));
  }

  private void replace(Part old, String reason, NewPart fresh) {
    model
        .replace(old, reason, fresh)
        .ifPresent(
            item -> {
              printing.run();
              context.navigator().show(ScreenId.PRINT_TAGS, item);
              context.say("The old one is retired: put it away. Hang this tag on the new one.");
            });
    told();
  }

  /** Says what went wrong, if anything did; what is shown is shown anew. */
  void told() {
    if (!model.trouble().isEmpty()) {
      context.fail(model.trouble());
    }
    context.navigator().changed();
  }
}
