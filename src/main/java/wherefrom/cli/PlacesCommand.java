package wherefrom.cli;

import wherefrom.job.EngineJob;
import wherefrom.job.ports.Equipment;
import wherefrom.parts.Part;
import wherefrom.parts.Place;

/** Lists every place with its card, its part's tag and its state. */
final class PlacesCommand implements Command {
  private final Equipment equipment;

  PlacesCommand(Equipment equipment) {
    this.equipment = equipment;
  }

  @Override
  public Usage usage() {
    return Usage.of("places", "", "Lists every place of a job.", Option.JOB)
        .noting(
            "A line a place: the place card's digits, the tag's digits, the place, its state.",
            "States: in, out, washing, at the machine shop, missing, fitted, other part fitted,"
                + " open, left empty.");
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput {
    try (Bench bench = Bench.open(equipment, call, answer)) {
      for (Place place : bench.job().state().places()) {
        list(bench, place, answer);
      }
      return Status.RIGHT;
    }
  }

  private static void list(Bench bench, Place place, Answer answer) {
    EngineJob state = bench.job().state();
    String card = bench.book().of(place.spot()).digits();
    String tag = state.findOwner(place).map(part -> tag(bench, part)).orElse("");
    String now = state.state(place).words();
    answer.row(
        Fields.of("placeCard", card)
            .and("tag", tag)
            .and("place", place.words())
            .and("key", place.key())
            .and("state", now),
        Answer.cells(card, tag, place.words(), now));
  }

  private static String tag(Bench bench, Part part) {
    return bench.book().of(part).digits();
  }
}
