package wherefrom.ui.measure;

import java.util.List;
import java.util.Optional;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.Tool;
import wherefrom.job.MeasuredResult;
import wherefrom.job.OpenJob;

/** Which of the listed tools reads a plan. */
final class PlanTool {
  private final OpenJob job;
  private final ReadingPlan plan;
  private Optional<String> chosen = Optional.empty();

  PlanTool(OpenJob job, ReadingPlan plan) {
    this.job = job;
    this.plan = plan;
  }

  /** Those that read what the plan reads. */
  List<Tool> tools() {
    return job.state().measures().tools().stream()
        .filter(each -> each.dimension() == plan.stations().get(0).dimension())
        .toList();
  }

  void choose(Tool tool) {
    chosen = Optional.of(tool.name());
  }

  /** Goes on with what was chosen for another one of the same readings. */
  void goOn(PlanTool other) {
    chosen = other.chosen;
  }

  /**
   * The tool chosen, else that of this plan's latest readings, else the only one listed. One that
   * has read something else is never taken unasked: a micrometer reads no crown.
   *
   * @param result what was read so far
   */
  Optional<Tool> find(Optional<MeasuredResult> result) {
    return chosen
        .flatMap(name -> job.state().measures().findTool(name))
        .or(() -> result.map(MeasuredResult::tool))
        .or(this::latest)
        .or(this::fresh);
  }

  private Optional<Tool> latest() {
    return job.state().measures().listResults(plan.key()).stream()
        .max((one, two) -> Long.compare(one.sequence(), two.sequence()))
        .map(MeasuredResult::tool);
  }

  private Optional<Tool> fresh() {
    return tools().size() == 1
        ? tools().stream()
            .filter(
                only ->
                    job.state().measures().all().stream()
                        .noneMatch(result -> result.tool().name().equals(only.name())))
            .findFirst()
        : Optional.empty();
  }
}
