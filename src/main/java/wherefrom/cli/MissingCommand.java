package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.Equipment;
import wherefrom.job.StillMissing;
import wherefrom.parts.Place;

/** Lists the places that are still open. */
final class MissingCommand implements Command {
  private final Equipment equipment;

  MissingCommand(Equipment equipment) {
    this.equipment = equipment;
  }

  @Override
  public Usage usage() {
    return Usage.of("missing", "", "Lists the places that are still open.", Option.JOB)
        .noting(
            "A line a place, in the order of putting together: the place, its state, the tag's"
                + " digits.",
            "Last line: how many are missing.");
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput {
    try (Bench bench = Bench.open(equipment, call, answer)) {
      List<Fields> places = new ArrayList<>();
      List<String> lines = new ArrayList<>();
      for (Place place : new StillMissing(bench.job()).places()) {
        String state = bench.job().state().state(place).words();
        String tag =
            bench
                .job()
                .state()
                .findOwner(place)
                .map(part -> bench.book().of(part).digits())
                .orElse("");
        places.add(Fields.of("place", place.words()).and("state", state).and("tag", tag));
        lines.add(Answer.cells(place.words(), state, tag));
      }
      lines.add(places.size() + " missing");
      answer.only(Fields.of("missing", places.size()).and("places", places), lines);
      return Status.RIGHT;
    }
  }
}
