package wherefrom.job;

import java.util.Map;
import java.util.Optional;
import wherefrom.inspection.Look;
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
    return job.findPart(part.item()).flatMap(JobPartNames::worst);
  }

  private static Optional<Found> worst(PartRecord part) {
    return part.looks().entrySet().stream()
        .filter(one -> one.getValue().compareTo(Look.SUSPECT) >= 0)
        .max(Map.Entry.comparingByValue())
        .map(
            one -> new Found(one.getValue().word(), BenchWords.look(one.getKey(), one.getValue())));
  }

  @Override
  public String job() {
    return job.name();
  }
}
