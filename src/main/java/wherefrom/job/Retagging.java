package wherefrom.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.inspection.Subject;
import wherefrom.inspection.match.Fingerprint;
import wherefrom.inspection.match.Match;
import wherefrom.inspection.match.Reidentification;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.inspection.measure.Tool;
import wherefrom.job.entry.BackFromShop;
import wherefrom.job.entry.BackFromWashing;
import wherefrom.job.entry.Reidentified;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Whereabouts;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.workings.ResultValue;

/** Parts that came back without their tags: told by what was measured on them before. */
public final class Retagging {

  /** What became of a request. */
  public sealed interface Answer {
    /** Proposals for the person to accept one by one; nothing is recorded. */
    record Proposed(List<Match> matches) implements Answer {
      public Proposed {
        matches = List.copyOf(matches);
      }
    }

    /** The person agreed, and it is recorded. */
    record Accepted(Part part) implements Answer {}

    /** Nothing can be said, or nothing was recorded; the sentence says why and what to do. */
    record Refused(String sentence) implements Answer {}
  }

  private final OpenJob job;

  public Retagging(OpenJob job) {
    this.job = job;
  }

  /** The parts of a kind that may be among them: away or on the bench, and measured by the plan. */
  public List<Part> candidates(PartKind kind, String plan) {
    return job.state().parts().stream()
        .filter(part -> part.part().kind() == kind)
        .filter(
            part ->
                part.where() == Whereabouts.WASHING
                    || part.where() == Whereabouts.AT_SHOP
                    || part.where() == Whereabouts.LOST
                    || part.where() == Whereabouts.OUT)
        .map(PartRecord::part)
        .filter(part -> record(part, plan).isPresent())
        .toList();
  }

  /**
   * Matches a group of untagged parts.
   *
   * @param candidates the items that may be among them
   * @param plan the plan by which all were measured before
   * @param tool the tool that they are measured with now
   * @param readings one size for each untagged part, by the mark chalked on it
   */
  public Answer propose(
      List<Integer> candidates, String plan, String tool, Map<String, String> readings) {
    Optional<ReadingPlan> known = ReadingPlans.find(plan);
    Optional<Tool> now = job.state().measures().findTool(tool);
    if (known.isEmpty() || now.isEmpty()) {
      return new Answer.Refused("Choose the readings and the tool first.");
    }
    List<Fingerprint> recorded = new ArrayList<>();
    boolean otherTool = false;
    for (int item : candidates) {
      Optional<MeasuredResult> before =
          job.state().findPart(item).flatMap(part -> record(part.part(), plan));
      if (before.isEmpty()) {
        return new Answer.Refused("Part number " + item + " was never measured so.");
      }
      ResultValue size = before.get().findSize().orElseThrow();
      double value = size.amount().in(Unit.MILLIMETRE);
      double u = Amount.of(size.standardUncertainty(), size.unit()).in(Unit.MILLIMETRE);
      recorded.add(Fingerprint.of(Integer.toString(item), value, Math.max(u, LEAST_U)));
      otherTool |= !before.get().tool().name().equals(tool);
    }
    Map<String, Amount> sizes = new LinkedHashMap<>();
    for (Map.Entry<String, String> one : readings.entrySet()) {
      Optional<String> fault =
          Typed.read(
              one.getValue(),
              job.state().units(),
              known.get().stations().get(0).dimension(),
              size -> {
                sizes.put(one.getKey(), size);
                return Optional.<String>empty();
              },
              Optional::of);
      if (fault.isPresent()) {
        return new Answer.Refused(fault.get());
      }
    }
    return propose(prints(sizes, now.get()), recorded, otherTool);
  }

  /** Keeps the mathematics sound where a tool's card says that it is never off. */
  private static final double LEAST_U = 1e-5;

  private static Answer propose(
      List<Fingerprint> found, List<Fingerprint> recorded, boolean otherTool) {
    return Reidentification.findFault(found, recorded)
        .<Answer>map(Answer.Refused::new)
        .orElseGet(() -> new Answer.Proposed(Reidentification.of(found, recorded, otherTool)));
  }

  private static List<Fingerprint> prints(Map<String, Amount> sizes, Tool tool) {
    List<Fingerprint> found = new ArrayList<>();
    sizes.forEach(
        (mark, size) -> {
          double value = size.in(Unit.MILLIMETRE);
          double u = tool.uncertainty(value, Unit.MILLIMETRE, 1, 0);
          found.add(Fingerprint.of(mark, value, Math.max(u, LEAST_U)));
        });
    return found;
  }

  /** The person says yes: this untagged part is that one. It is back, and its tag goes on again. */
  public Answer accept(Match match, int item) {
    Optional<PartRecord> part = job.state().findPart(item);
    if (part.isEmpty() || part.get().where() == Whereabouts.RETIRED) {
      return new Answer.Refused("There is no such part to come back.");
    }
    job.record(new Reidentified(item, match.found(), match.sentence()));
    if (part.get().where() == Whereabouts.WASHING) {
      job.record(new BackFromWashing(item));
    } else if (part.get().where() == Whereabouts.AT_SHOP) {
      int visit = new MachineShop(job).visitOf(item);
      job.record(new BackFromShop(visit, List.of(item), "told by its readings"));
    }
    return new Answer.Accepted(job.state().getPart(item).part());
  }

  private Optional<MeasuredResult> record(Part part, String plan) {
    return job.state()
        .measures()
        .findResult(Subject.ofPart(part.item()), plan)
        .filter(result -> result.findSize().isPresent());
  }
}
