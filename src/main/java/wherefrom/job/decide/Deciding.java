package wherefrom.job.decide;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Sources;
import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.job.OilClearances;
import wherefrom.job.OpenJob;
import wherefrom.job.PairClearances;
import wherefrom.job.PartRecord;
import wherefrom.job.entry.DecisionMade;
import wherefrom.job.entry.DecisionsAsked;
import wherefrom.job.entry.SetDecided;
import wherefrom.job.money.CostList;
import wherefrom.job.money.MoneyEntries;
import wherefrom.job.money.Purchase;
import wherefrom.job.money.PurchaseList;
import wherefrom.job.money.Replacement;
import wherefrom.job.money.ReplacementList;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;
import wherefrom.quantity.Money;
import wherefrom.rules.Ban;
import wherefrom.rules.Objection;
import wherefrom.rules.Objections;
import wherefrom.rules.consequence.Article;

/** Decisions: proposed by the rules with their reasons, made by the person. */
public final class Deciding {
  /** Bought and replaced as a set (common practice, no source). */
  private static final Set<PartKind> SETS =
      EnumSet.of(PartKind.LIFTER, PartKind.ROD_SHELL, PartKind.MAIN_SHELL);

  /** What became of a decision. */
  public sealed interface Answer {
    /** It stands, for so many parts. */
    record Decided(Decision decision, List<Integer> items) implements Answer {
      public Decided {
        items = List.copyOf(items);
      }
    }

    /** Nothing was decided; the sentence says why and what to do. */
    record Refused(String sentence) implements Answer {}
  }

  /** A proposal for a whole kind. */
  public record SetProposal(PartKind kind, Decision decision, List<Proposal.Reason> reasons) {
    public SetProposal {
      reasons = List.copyOf(reasons);
    }
  }

  private final OpenJob job;

  public Deciding(OpenJob job) {
    this.job = job;
  }

  public Proposal propose(int item) {
    return new Proposals(job.state()).of(job.state().getPart(item).part());
  }

  /** What would settle a part of which nothing can be proposed yet. */
  public Settlement settling(int item) {
    return Settlement.of(job.state(), job.state().getPart(item).part());
  }

  /** Replace the set, where one of it is to be replaced and the kind goes by sets. */
  public Optional<SetProposal> proposeSet(PartKind kind) {
    if (!SETS.contains(kind)) {
      return Optional.empty();
    }
    List<Proposal.Reason> reasons = new ArrayList<>();
    for (PartRecord part : current(kind)) {
      Proposal proposal = propose(part.part().item());
      if (proposal.decision().equals(Optional.of(Decision.REPLACE))) {
        reasons.add(
            new Proposal.Reason(
                part.part().words() + ": " + proposal.reasons().get(0).sentence(),
                proposal.reasons().get(0).source()));
      }
    }
    if (reasons.isEmpty()) {
      return Optional.empty();
    }
    reasons.add(new Proposal.Reason("Replace " + kind.plural() + " as a set.", Sources.PRACTICE));
    return Optional.of(new SetProposal(kind, Decision.REPLACE, reasons));
  }

  public Answer decide(int item, Decision decision, String reason) {
    return decide(List.of(item), decision, reason);
  }

  /** Decides about several at once, as a set: one act, which is taken back as one. */
  public Answer decide(Collection<Integer> items, Decision decision, String reason) {
    return job.asOne(() -> decideOnce(items, decision, reason));
  }

  private Answer decideOnce(Collection<Integer> items, Decision decision, String reason) {
    List<Integer> set = List.copyOf(items);
    if (set.isEmpty()) {
      return new Answer.Refused("Name the parts to decide about.");
    }
    for (int item : set) {
      Optional<PartRecord> part = job.state().findPart(item);
      if (part.isEmpty()) {
        return new Answer.Refused("There is no part number " + item + " in this job.");
      }
      if (part.get().where() == Whereabouts.RETIRED) {
        return new Answer.Refused(part.get().part().words() + " is replaced already.");
      }
      Optional<String> senseless = Machining.objection(decision, part.get().part().kind());
      if (senseless.isPresent()) {
        return new Answer.Refused(senseless.get());
      }
      Optional<Ban> ban = job.state().findBan(item);
      if (decision == Decision.REUSE && ban.isPresent()) {
        return new Answer.Refused(ban.get().words() + "." + onPurpose(part.get().part()));
      }
    }
    job.record(
        set.size() == 1
            ? new DecisionMade(set.get(0), decision, reason.strip())
            : new SetDecided(set, decision, reason.strip()));
    return new Answer.Decided(decision, set);
  }

  /** Where only work is wanted, a reason can do instead; what must be new has to be. */
  private String onPurpose(Part part) {
    Place place = job.state().findSeat(part.item()).orElse(part.home());
    return Objections.of(job.state().bench(), part, place).stream()
            .allMatch(Objection::canBeSettled)
        ? " It can still be fitted on purpose."
        : "";
  }

  /**
   * The parts that want a decision and have none: used ones that something speaks against, or every
   * used one where the job asks for it.
   */
  public List<Part> listUndecided() {
    return job.state().parts().stream().filter(this::isWanted).map(PartRecord::part).toList();
  }

  /** Every used part without a decision, whether it wants one or not. */
  public List<Part> listWithoutDecision() {
    return job.state().parts().stream()
        .filter(part -> part.decision().isEmpty() && part.where() != Whereabouts.RETIRED)
        .map(PartRecord::part)
        .filter(part -> !part.fresh())
        .toList();
  }

  /** Whether a part wants a decision and has none. */
  public boolean isWanted(int item) {
    return isWanted(job.state().getPart(item));
  }

  private boolean isWanted(PartRecord part) {
    EngineJob state = job.state();
    int item = part.part().item();
    if (part.decision().isPresent() || part.where() == Whereabouts.RETIRED) {
      return false;
    }
    return state.bench().worst(item).isDoubtful()
        || (!part.part().fresh()
            && ((state.inspection().asksForAll() && part.where() != Whereabouts.IN_ENGINE)
                || state.findBan(item).isPresent()));
  }

  /** Whether any reading says something of a part: its own, or that of a clearance it makes. */
  public boolean isMeasured(int item) {
    Subject subject = Subject.ofPart(item);
    return !job.state().measures().listResults(subject).isEmpty()
        || new OilClearances(job.state()).findFor(job.state().getPart(item).part()).isPresent()
        || !new PairClearances(job.state()).find(subject).isEmpty();
  }

  /** Asks for a decision on every used part before it is fitted, or no longer. */
  public void askEveryPart(boolean everyPart) {
    job.inOne(() -> askEveryPartOnce(everyPart));
  }

  private void askEveryPartOnce(boolean everyPart) {
    if (job.state().inspection().asksForAll() != everyPart) {
      job.record(new DecisionsAsked(everyPart));
    }
  }

  /** The shopping list, with sizes. */
  public List<Replacement> replacements() {
    return new ReplacementList(job.state()).lines();
  }

  /** What must be bought besides: things without a tag, such as the cam. */
  public List<Purchase> purchases() {
    return new PurchaseList(job.state()).lines();
  }

  /** What the parts of a line of the shopping list cost; empty where a price is missing. */
  public Optional<Money> findCost(Replacement line) {
    CostList list = CostList.standing(job.state());
    Map<Article, Money> prices = new MoneyEntries(job.state()).prices();
    return list.findCost(line.places(), prices);
  }

  /** What a thing to buy besides costs; empty where it has no price. */
  public Optional<Money> findCost(Purchase thing) {
    return Optional.ofNullable(new MoneyEntries(job.state()).prices().get(thing.what()))
        .map(price -> Money.ofCents(Math.multiplyExact(price.cents(), (long) thing.pieces())));
  }

  private List<PartRecord> current(PartKind kind) {
    return job.state().parts().stream()
        .filter(part -> part.part().kind() == kind && part.where() != Whereabouts.RETIRED)
        .toList();
  }
}
