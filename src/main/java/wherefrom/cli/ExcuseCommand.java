package wherefrom.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wherefrom.engine.Spot;
import wherefrom.job.ports.Equipment;
import wherefrom.job.puttogether.StillMissing;
import wherefrom.job.tags.Found;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/** Leaves places empty, for a reason. */
final class ExcuseCommand implements Command {
  private final Equipment equipment;
  private final Codes codes;

  ExcuseCommand(Equipment equipment, BufferedReader in) {
    this.equipment = equipment;
    this.codes = Codes.single(in);
  }

  @Override
  public Usage usage() {
    return Usage.of(
        "excuse",
        "CODE…|-",
        "Leaves the home of a part, or the place at a place card, empty or as it is, for a reason.",
        Option.JOB,
        Option.REASON,
        Option.maybe("--kind", "KIND", "whose place at the card, where several are tracked"));
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput, IOException {
    String reason = call.get("--reason");
    if (reason.isBlank()) {
      throw call.wrong("Say why the place stays as it is.");
    }
    try (Bench bench = Bench.open(equipment, call, answer)) {
      return codes.each(call, answer, code -> excuse(bench, code.get(0), call, reason, answer));
    }
  }

  private static Status excuse(Bench bench, String code, Call call, String reason, Answer answer)
      throws BadInput {
    Place place = place(bench, code, call.find("--kind"));
    if (bench.job().state().findSeated(place).isPresent()
        && bench.job().state().listAgainst(place).isEmpty()) {
      throw new BadInput(
          "A part sits at "
              + place.words()
              + " and nothing stands against it: no excuse is needed.");
    }
    boolean empty = bench.job().state().findSeated(place).isEmpty();
    new StillMissing(bench.job()).excuse(place, reason);
    answer.row(
        Fields.of("place", place.words()).and("reason", reason.strip()),
        (empty ? "Left empty: " : "Left as it is: ")
            + place.words()
            + ": "
            + Answer.cell(reason.strip())
            + ".");
    return Status.RIGHT;
  }

  private static Place place(Bench bench, String code, Optional<String> kind) throws BadInput {
    Found found = bench.find(code);
    if (found instanceof Found.APart part) {
      return part.part().part().home();
    }
    if (found instanceof Found.ASpot spot) {
      return place(bench, spot.spot(), kind);
    }
    throw new BadInput(code + " names no place of this job: " + Meaning.sentence(found));
  }

  private static Place place(Bench bench, Spot spot, Optional<String> kind) throws BadInput {
    List<Place> there =
        bench.job().state().places().stream()
            .filter(place -> place.spot().equals(spot))
            .filter(place -> kind.isEmpty() || place.kind().key().equals(kind.get()))
            .toList();
    if (there.size() == 1) {
      return there.get(0);
    }
    String kinds =
        bench.job().state().places().stream()
            .filter(place -> place.spot().equals(spot))
            .map(Place::kind)
            .map(PartKind::key)
            .collect(Collectors.joining(", "));
    throw new BadInput("Say with --kind which place at " + spot.words() + ": " + kinds + ".");
  }
}
