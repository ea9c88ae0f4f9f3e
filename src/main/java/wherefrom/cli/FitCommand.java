package wherefrom.cli;

import java.io.IOException;
import java.util.Optional;

/** Judges parts at their places and logs what is fitted. */
final class FitCommand {
  private FitCommand() {}

  static Command of() {
    return Command.of(
            "fit",
            "Judges a part at a place and logs the fit where it is right.",
            Option.JOB,
            Option.maybe("--on-purpose", "REASON", "fit it in spite of a stop, for this reason"),
            Option.flag("--turned", "the part is held the other way around"))
        .takes("PART-CODE PLACE-CODE|-")
        .noting(
            "First the verdict, then its sentence and the way out on the next line.",
            "With -, a part's and a place's code on each line of standard input.")
        .does(FitCommand::fit);
  }

  private static Status fit(Call call, Answer answer) throws BadInput, IOException {
    Optional<String> reason = call.find("--on-purpose");
    boolean turned = call.find("--turned").isPresent();
    if (reason.filter(String::isBlank).isPresent()) {
      throw call.wrong("--on-purpose: say why the part is fitted here on purpose.");
    }
    try (OpenedJob bench = OpenedJob.open(call, answer)) {
      Pairing pairing = new Pairing(bench, answer, turned, reason);
      return Codes.eachPair(call, answer, pair -> pairing.fit(pair.get(0), pair.get(1)));
    }
  }
}
