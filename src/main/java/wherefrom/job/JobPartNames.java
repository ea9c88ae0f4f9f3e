package wherefrom.job;

import java.util.Optional;
import wherefrom.parts.Part;
import wherefrom.rules.PartNames;

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
        .map(doubt -> new Found(doubt.look().word(), doubt.words()));
  }

  @Override
  public String job() {
    return job.name();
  }
}
