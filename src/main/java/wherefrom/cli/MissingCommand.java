package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import wherefrom.job.ports.Equipment;
import wherefrom.job.puttogether.StillMissing;
import wherefrom.parts.Part;
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
            "Then a line for each part that sits in its place although something stands against"
                + " it, with a sentence.",
            "Last line: how many are missing, and how many are in, but.");
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput {
    try (Bench bench = Bench.open(equipment, call, answer)) {
      StillMissing missing = new StillMissing(bench.job());
      List<Fields> places = new ArrayList<>();
      List<Fields> fittedBut = new ArrayList<>();
      List<String> lines = new ArrayList<>();
      for (Place place : missing.places()) {
        String state = bench.job().state().state(place).words();
        String tag = bench.job().state().bench().findRightful(place).map(tag(bench)).orElse("");
        places.add(Fields.of("place", place.words()).and("state", state).and("tag", tag));
        lines.add(Answer.cells(place.words(), state, tag));
      }
      for (StillMissing.FittedBut one : missing.fittedBut()) {
        String state = bench.job().state().state(one.place()).words();
        String tag = tag(bench).apply(one.part());
        fittedBut.add(
            Fields.of("place", one.place().words())
                .and("state", state)
                .and("tag", tag)
                .and("sentence", one.sentence()));
        lines.add(Answer.cells(one.place().words(), state, tag, one.sentence()));
      }
      lines.add(
          places.size()
              + " missing"
              + (fittedBut.isEmpty() ? "" : ", " + fittedBut.size() + " in, but"));
      answer.only(
          Fields.of("missing", places.size()).and("places", places).and("fittedBut", fittedBut),
          lines);
      return Status.RIGHT;
    }
  }

  private static Function<Part, String> tag(Bench bench) {
    return part -> bench.book().of(part).digits();
  }
}
