package wherefrom.job;

import java.util.Optional;
import wherefrom.parts.Part;
import wherefrom.rules.Hold;
import wherefrom.rules.Objection;
import wherefrom.rules.Objections;
import wherefrom.rules.PartNames;
import wherefrom.rules.Verdict;
import wherefrom.rules.VerdictName;

/** What a job says of its parts where a verdict speaks of them. */
public final class JobPartNames implements PartNames {
  private final EngineJob job;

  public JobPartNames(EngineJob job) {
    this.job = job;
  }

  @Override
  public String code(Part part) {
    return part.code(job.engine()).typed();
  }

  @Override
  public String whereabouts(Part part) {
    return job.findPart(part.item())
        .map(
            found ->
                found.where().words().replaceFirst("^out, ", "")
                    + found.awayTo().map(to -> ", " + to).orElse(""))
        .orElse("");
  }

  @Override
  public Optional<Found> findFound(Part part) {
    return job.findPart(part.item())
        .flatMap(known -> job.workedOut().findings().findDoubt(part.item()))
        .map(doubt -> new Found(doubt.word(), doubt.words()));
  }

  @Override
  public Optional<String> findAgainst(Part part) {
    return Objections.of(job.bench(), part, part.home()).stream()
        .map(Objection::verdict)
        .filter(it -> it.name() != VerdictName.WRONG_PLACE)
        .findFirst()
        .flatMap(JobPartNames::unlessAway);
  }

  /** That it is away is said by where it is. */
  private static Optional<String> unlessAway(Verdict against) {
    return against instanceof Verdict.NotCleared held
        ? Optional.of(held.hold()).filter(hold -> !hold.isAway()).map(Hold::words)
        : Optional.of(against.word());
  }

  @Override
  public String job() {
    return job.name();
  }
}
