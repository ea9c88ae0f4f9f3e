package wherefrom.job.shop;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wherefrom.inspection.match.Fingerprint;
import wherefrom.inspection.match.PartMatch;
import wherefrom.inspection.match.Reidentification;
import wherefrom.inspection.measure.Derivation;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.job.EntryItems;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.entry.BackFromShop;
import wherefrom.job.entry.BackFromWashing;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.OffForWashing;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartFound;
import wherefrom.job.entry.PartLost;
import wherefrom.job.entry.Reidentified;
import wherefrom.job.entry.SentToShop;
import wherefrom.job.handling.Handling;
import wherefrom.job.handling.HandlingOutcome;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Whereabouts;

/** Parts that came back without their tags: told by what was measured on them before. */
public final class Retagging {

  /** What became of a request. */
  public sealed interface Answer {
    /** Proposals for the person to accept one by one; nothing is recorded. */
    record Proposed(List<PartMatch> matches) implements Answer {
      public Proposed {
        matches = List.copyOf(matches);
      }
    }

    /** The person agreed, and it is recorded. */
    record Accepted(Part part) implements Answer {}

    /** Nothing can be said, or nothing was recorded; the sentence says why and what to do. */
    record Refused(String sentence) implements Answer {}
  }

  private static final Set<Whereabouts> LOOSE =
      EnumSet.of(Whereabouts.WASHING, Whereabouts.AT_SHOP, Whereabouts.LOST, Whereabouts.OUT);

  /** One reading is one size: of others, several would have to be taken. */
  private static final Set<Derivation> SHAPES = EnumSet.of(Derivation.VALUE, Derivation.SPREAD);

  /** After these a tag may have been lost once more, and who is who may be asked anew. */
  private static final Set<Class<? extends JobEntry>> OUT_OF_HAND =
      Set.of(OffForWashing.class, SentToShop.class, PartLost.class, PartFitted.class);

  private final OpenJob job;

  public Retagging(OpenJob job) {
    this.job = job;
  }

  private Fingerprints prints() {
    return new Fingerprints(job.state());
  }

  /** The parts of a kind that may be among them: away or on the bench, and measured by the plan. */
  public List<Part> candidates(PartKind kind, String plan) {
    return candidates(kind, List.of(plan));
  }

  /**
   * The parts of a kind that may be among them: away or on the bench, and measured by all plans.
   */
  public List<Part> candidates(PartKind kind, Collection<String> plans) {
    return loose(kind).stream()
        .filter(part -> plans.stream().allMatch(plan -> prints().record(part, plan).isPresent()))
        .toList();
  }

  /** The parts of a kind that are neither in the engine nor retired, measured or not. */
  public List<Part> loose(PartKind kind) {
    return job.state().parts().stream()
        .filter(part -> part.part().kind() == kind && LOOSE.contains(part.where()))
        .map(PartRecord::part)
        .toList();
  }

  /** The plans by which at least one loose part of a kind was measured. */
  public List<ReadingPlan> plans(PartKind kind) {
    return ReadingPlans.of(kind).stream()
        .filter(plan -> SHAPES.contains(plan.shape()))
        .filter(plan -> !candidates(kind, plan.key()).isEmpty())
        .toList();
  }

  /**
   * Matches a group of untagged parts by one reading of each.
   *
   * @param candidates the items that may be among them
   * @param plan the plan by which all were measured before
   * @param tool the tool that they are measured with now
   * @param readings one size for each untagged part, by the mark chalked on it
   */
  public Answer propose(
      List<Integer> candidates, String plan, String tool, Map<String, String> readings) {
    Map<String, Map<String, String>> byMark = new LinkedHashMap<>();
    readings.forEach((mark, text) -> byMark.put(mark, Map.of(plan, text)));
    return propose(candidates, Map.of(plan, tool), byMark);
  }

  /**
   * Matches a group of untagged parts by several readings of each together, such as length and
   * diameter.
   *
   * @param candidates the items that may be among them
   * @param tools by plan, the tool that it is measured with now; all were measured by these plans
   *     before
   * @param readings by the mark chalked on each untagged part, one size for each plan
   */
  public Answer propose(
      List<Integer> candidates,
      Map<String, String> tools,
      Map<String, Map<String, String>> readings) {
    List<ReadingPlan> plans = new ArrayList<>();
    for (String key : tools.keySet()) {
      ReadingPlans.find(key).filter(plan -> SHAPES.contains(plan.shape())).ifPresent(plans::add);
    }
    boolean known =
        tools.values().stream().allMatch(tool -> job.state().measures().findTool(tool).isPresent());
    if (plans.isEmpty() || plans.size() < tools.size() || !known) {
      return new Answer.Refused("Choose the readings and the tool first.");
    }
    List<Fingerprint> recorded = new ArrayList<>();
    for (int item : candidates) {
      Optional<Fingerprint> print = prints().recorded(item, plans);
      if (print.isEmpty()) {
        return new Answer.Refused("Part number " + item + " was never measured so.");
      }
      recorded.add(print.get());
    }
    List<Double> uneven = plans.stream().map(plan -> prints().uneven(candidates, plan)).toList();
    List<Fingerprint> found = new ArrayList<>();
    for (Map.Entry<String, Map<String, String>> one : readings.entrySet()) {
      Optional<String> fault =
          prints().read(one.getKey(), one.getValue(), plans, tools, uneven, found);
      if (fault.isPresent()) {
        return new Answer.Refused(fault.get());
      }
    }
    List<Boolean> otherTool = new ArrayList<>();
    for (ReadingPlan plan : plans) {
      String tool = tools.getOrDefault(plan.key(), "");
      otherTool.add(
          candidates.stream().anyMatch(item -> !tool.equals(prints().toolOf(item, plan))));
    }
    return Reidentification.findFault(found, recorded)
        .<Answer>map(Answer.Refused::new)
        .orElseGet(() -> new Answer.Proposed(Reidentification.of(found, recorded, otherTool)));
  }

  /**
   * The person says yes: this untagged part is that one. It is back, and gets a new issue of its
   * tag; all of it is one act.
   */
  public Answer accept(PartMatch match, int item) {
    return job.asOne(() -> acceptOnce(match, item));
  }

  private Answer acceptOnce(PartMatch match, int item) {
    Optional<PartRecord> part = job.state().findPart(item);
    if (part.isEmpty() || part.get().where() == Whereabouts.RETIRED) {
      return new Answer.Refused("There is no such part to come back.");
    }
    Optional<Reidentified> before = told(item);
    if (before.isPresent()) {
      return new Answer.Refused(
          "It was accepted as number " + before.get().mark() + " already. Undo that first.");
    }
    return job.asOne(
        () -> {
          job.record(new Reidentified(item, match.found(), match.sentence()));
          back(item, part.get().where());
          return new Handling(job).reissue(item, "tag lost")
                  instanceof HandlingOutcome.Refused refused
              ? new Answer.Refused(refused.sentence())
              : new Answer.Accepted(job.state().getPart(item).part());
        },
        answer -> answer instanceof Answer.Accepted);
  }

  /**
   * Whom it was told to be, and still is: a look or a photograph since changes nothing, only that
   * it was out of hand again, so that its tag may have been lost once more.
   */
  private Optional<Reidentified> told(int item) {
    Optional<Reidentified> told = Optional.empty();
    for (LoggedEntry logged : job.state().standing()) {
      if (!EntryItems.of(logged.entry()).contains(item)) {
        continue;
      }
      if (logged.entry() instanceof Reidentified here) {
        told = Optional.of(here);
      } else if (OUT_OF_HAND.contains(logged.entry().getClass())) {
        told = Optional.empty();
      }
    }
    return told;
  }

  private void back(int item, Whereabouts where) {
    if (where == Whereabouts.WASHING) {
      job.record(new BackFromWashing(item));
    } else if (where == Whereabouts.LOST) {
      job.record(new PartFound(item));
    } else if (where == Whereabouts.AT_SHOP) {
      int visit = new MachineShop(job).visitOf(item);
      job.record(new BackFromShop(visit, List.of(item), "told by its readings"));
    }
  }
}
