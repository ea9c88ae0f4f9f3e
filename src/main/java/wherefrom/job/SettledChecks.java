package wherefrom.job;

import java.util.Optional;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.entry.CheckAnswered;
import wherefrom.parts.Part;
import wherefrom.rules.consequence.Consequence;
import wherefrom.rules.consequence.KnownCheck;

/**
 * Checks of rules that a look or a reading answers, whenever it was made: a used flat lifter's foot
 * is known to be domed once its quick test passed or its crown was accepted.
 */
final class SettledChecks {
  private static final String CHECK = "lifter-foot";
  private static final String PLAN = "lifter-crown";

  private SettledChecks() {}

  static Optional<CheckAnswered> find(EngineJob job, Consequence consequence) {
    if (!consequence.checkKey().is(KnownCheck.LIFTER_CROWN)) {
      return Optional.empty();
    }
    boolean domed =
        !consequence.places().isEmpty()
            && consequence.places().stream()
                .flatMap(place -> job.findOwner(place).stream())
                .filter(part -> !part.fresh())
                .allMatch(part -> isDomed(job, part));
    return domed
        ? Optional.of(new CheckAnswered(consequence.key(), Look.PASS, "looked at or measured"))
        : Optional.empty();
  }

  private static boolean isDomed(EngineJob job, Part part) {
    Look looked = job.getPart(part.item()).looks().getOrDefault(CHECK, Look.NOT_LOOKED);
    Look measured =
        job.measures()
            .findResult(Subject.ofPart(part.item()), PLAN)
            .map(MeasuredResult::worst)
            .orElse(Look.NOT_LOOKED);
    // A reading settles a suspect look; nothing settles a failed one.
    return measured == Look.PASS
        ? looked != Look.FAIL
        : measured == Look.NOT_LOOKED && looked == Look.PASS;
  }
}
