package wherefrom.ui.puttogether;

import java.util.List;
import wherefrom.job.handling.Handling;
import wherefrom.job.handling.NewPart;
import wherefrom.parts.Place;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.NewPartAsking;
import wherefrom.ui.app.Reasons;
import wherefrom.ui.app.ScreenId;

/** What can be done with an open place: see its part, leave it empty, take a new part. */
final class PlaceWays {
  private final Desk desk;
  private final MissingModel model;

  PlaceWays(Desk desk, MissingModel model) {
    this.desk = desk;
    this.model = model;
  }

  /** Asks which. */
  void choose(Place place) {
    List<Choice<Runnable>> ways =
        List.of(
            new Choice<>(() -> part(place), "Show its part", ""),
            new Choice<>(() -> excuse(place), "Leave it empty", "with a reason"),
            new Choice<>(
                () -> replace(place), "A new part instead", "its tag is printed, marked NEW"));
    desk.navigator().open(() -> new ChoiceScreen<>(desk, place.words(), ways, Runnable::run));
  }

  private void part(Place place) {
    desk.state()
        .findOwner(place)
        .ifPresent(part -> desk.navigator().show(ScreenId.PART, part.item()));
  }

  private void excuse(Place place) {
    Reasons.ask(
        desk, "Why does it stay empty?", MissingModel.EXCUSES, words -> excuse(place, words));
  }

  private void excuse(Place place, String reason) {
    model.excuse(place, reason);
    told();
  }

  private void replace(Place place) {
    Reasons.ask(desk, "Why a new part?", Handling.REPLACE_REASONS, words -> asked(place, words));
  }

  private void asked(Place place, String reason) {
    desk.state()
        .findOwner(place)
        .ifPresent(old -> NewPartAsking.ask(desk, old, part -> replace(place, reason, part)));
  }

  private void replace(Place place, String reason, NewPart part) {
    model
        .replace(place, reason, part)
        .ifPresent(item -> desk.navigator().show(ScreenId.PRINT_TAGS, item));
    told();
  }

  /** Says what went wrong, if anything did; what is shown is shown anew. */
  void told() {
    if (!model.trouble().isEmpty()) {
      desk.say(model.trouble());
    }
    desk.navigator().changed();
  }
}
