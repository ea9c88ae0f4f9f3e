package wherefrom.cli;

import java.util.List;
import java.util.Optional;
import wherefrom.engine.Spot;
import wherefrom.job.Unmated;
import wherefrom.job.puttogether.Fitting;
import wherefrom.job.tags.CodeLookup;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.rules.Attempt;
import wherefrom.rules.Verdict;
import wherefrom.rules.VerdictName;
import wherefrom.rules.VerdictRules;

/** Fits one part after the other, each named with its place. */
final class Pairing {
  private final OpenedJob bench;
  private final Answer answer;
  private final boolean turned;
  private final Optional<String> onPurpose;

  /**
   * @param turned whether the parts are held the other way round
   * @param onPurpose why they are fitted against a stop; empty when they are not
   */
  Pairing(OpenedJob bench, Answer answer, boolean turned, Optional<String> onPurpose) {
    this.bench = bench;
    this.answer = answer;
    this.turned = turned;
    this.onPurpose = onPurpose;
  }

  /** Takes a part's and a place's code, in either order. */
  Status fit(String one, String other) throws BadInput {
    CodeLookup first = bench.book().find(one);
    CodeLookup second = bench.book().find(other);
    if (first instanceof CodeLookup.Refused refused) {
      return refuse(refused.verdict(), spot(second));
    }
    if (second instanceof CodeLookup.Refused refused) {
      return refuse(refused.verdict(), spot(first));
    }
    Optional<Part> part = part(first).or(() -> part(second));
    Optional<Spot> spot = spot(first).or(() -> spot(second));
    if (part.isPresent() && spot.isPresent()) {
      return fit(part.get(), spot.get());
    }
    throw new BadInput(
        "A part's code and a place card's code are wanted, not "
            + Meaning.of(first)
            + " and "
            + Meaning.of(second)
            + ".");
  }

  private static Optional<Part> part(CodeLookup found) {
    return found instanceof CodeLookup.APart part
        ? Optional.of(part.part().part())
        : Optional.empty();
  }

  private static Optional<Spot> spot(CodeLookup found) {
    return found instanceof CodeLookup.ASpot spot ? Optional.of(spot.spot()) : Optional.empty();
  }

  /** The same entry as a scan at the bench makes. */
  private Status refuse(Verdict verdict, Optional<Spot> spot) {
    new Fitting(bench.job()).refuse(verdict, spot);
    return say(verdict);
  }

  private Status fit(Part part, Spot spot) throws BadInput {
    Fitting fitting = new Fitting(bench.job());
    if (onPurpose.isEmpty()) {
      return sayFitted(fitting.fit(part, spot, turned));
    }
    Optional<Unmated> unmated = fitting.findUnmated(part, spot);
    Attempt attempt = new Attempt(part, spot, turned);
    Verdict against = Refusals.get(() -> fitting.fitOnPurpose(attempt, onPurpose.get()));
    return against.stops() ? sayOnPurpose(part, spot, against, unmated) : say(against);
  }

  private String againstStop(Part part, Spot spot, Verdict against, Optional<Unmated> unmated) {
    boolean alone = against.name() == VerdictName.WRONG_END;
    boolean hidden =
        !alone
            && VerdictRules.isTurned(bench.state().bench(), new Attempt(part, spot, this.turned));
    String more =
        (hidden ? " It is turned, too." : "") + unmated.map(what -> " " + what.words()).orElse("");
    String where = part.words() + ", at " + spot.words() + ".";
    return "Fitted against the stop \"" + against.word() + "\": " + where + more;
  }

  private Status sayOnPurpose(Part part, Spot spot, Verdict against, Optional<Unmated> unmated) {
    String sentence = againstStop(part, spot, against, unmated);
    List<String> mates =
        unmated.stream()
            .flatMap(what -> what.places().stream())
            .map(Place::words)
            .sorted()
            .toList();
    answer.row(
        new Row.Told(
            Row.lines("fitted on purpose", sentence),
            Json.object(
                "verdict",
                "fitted on purpose",
                "stopped",
                false,
                "against",
                against.word(),
                "sentence",
                sentence,
                "noLongerMated",
                mates)));
    return Status.RIGHT;
  }

  private Status say(Verdict verdict) {
    answer.row(Meaning.Judged.of(bench, verdict));
    return Status.stoppedIf(verdict.stops());
  }

  private Status sayFitted(Verdict verdict) {
    answer.row(Meaning.Fitted.of(bench, verdict));
    return Status.stoppedIf(verdict.stops());
  }
}
