package wherefrom.job.decide;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import wherefrom.inspection.Check;
import wherefrom.inspection.Checks;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.inspection.Sources;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.Judgement;
import wherefrom.job.BearingClearance;
import wherefrom.job.EngineJob;
import wherefrom.job.MeasuredResult;
import wherefrom.job.OilClearances;
import wherefrom.job.PairClearance;
import wherefrom.job.PairClearances;
import wherefrom.job.decide.Proposal.Reason;
import wherefrom.job.inspect.Inspecting;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.rules.Ban;
import wherefrom.rules.consequence.Consequence;
import wherefrom.text.Words;

/**
 * Reuse, machine or replace, from what the rules, the looks and the readings say, in this order: a
 * rule forbids it; it failed; it is suspect or undecided; it was not looked at; it is good (common
 * practice, no source).
 */
final class Proposals {
  /** What a machine shop can bring back into its limits. */
  private static final Set<PartKind> MACHINABLE =
      EnumSet.of(PartKind.VALVE, PartKind.ROD, PartKind.ROD_CAP, PartKind.MAIN_CAP);

  private final EngineJob job;

  Proposals(EngineJob job) {
    this.job = job;
  }

  Proposal of(Part part) {
    return job.remember(Known.class, Known::new).of(part);
  }

  /** Those that were asked for. */
  private record Known(EngineJob job, Map<Integer, Proposal> all) {
    Known(EngineJob job) {
      this(job, new ConcurrentHashMap<>());
    }

    Proposal of(Part part) {
      return all.computeIfAbsent(part.item(), item -> new Proposals(job).workOut(part));
    }
  }

  private Proposal workOut(Part part) {
    Optional<Ban> ban = job.rules().findBan(job.getPart(part.item()));
    if (ban.isPresent()) {
      boolean work = !ban.get().check().isEmpty() && MACHINABLE.contains(part.kind());
      return proposal(
          part,
          work ? Decision.MACHINE : Decision.REPLACE,
          new Reason(
              Consequence.ruleWords(ban.get().rule()) + ": " + ban.get().reason(),
              ban.get().source()));
    }
    if (part.fresh()) {
      return proposal(part, Decision.REUSE, new Reason("It is new.", Sources.PRACTICE));
    }
    List<Reason> failed = reasons(part, Look.FAIL);
    if (!failed.isEmpty()) {
      boolean machine = MACHINABLE.contains(part.kind());
      return new Proposal(part, Optional.of(machine ? Decision.MACHINE : Decision.REPLACE), failed);
    }
    List<Reason> doubtful = reasons(part, Look.SUSPECT);
    if (!doubtful.isEmpty()) {
      return new Proposal(part, Optional.empty(), doubtful);
    }
    return notLooked(part)
        .map(reason -> new Proposal(part, Optional.empty(), List.of(reason)))
        .orElseGet(
            () ->
                proposal(
                    part,
                    Decision.REUSE,
                    new Reason(
                        "Its place is known. Every test is a pass. No reading is outside its"
                            + " limit.",
                        Sources.PRACTICE)));
  }

  private static Proposal proposal(Part part, Decision decision, Reason reason) {
    return new Proposal(part, Optional.of(decision), List.of(reason));
  }

  /** What was answered so by a test, or judged so by a reading. */
  private List<Reason> reasons(Part part, Look wanted) {
    List<Reason> reasons = new ArrayList<>();
    job.getPart(part.item())
        .looks()
        .forEach(
            (key, look) -> {
              if (look == wanted) {
                reasons.add(reason(part, key, look));
              }
            });
    for (MeasuredResult result : job.measures().listResults(Subject.ofPart(part.item()))) {
      for (Judgement judgement : result.judgements()) {
        if (judgement.look() == wanted) {
          reasons.add(new Reason(judgement.sentence(), judgement.limit().source()));
        }
      }
    }
    new OilClearances(job)
        .findFor(part)
        .flatMap(BearingClearance::judgement)
        .filter(judgement -> judgement.look() == wanted)
        .ifPresent(
            judgement -> reasons.add(new Reason(judgement.sentence(), judgement.limit().source())));
    for (PairClearance pair : new PairClearances(job).find(Subject.ofPart(part.item()))) {
      if (pair.look() == wanted) {
        String source = pair.judgement().map(one -> one.limit().source()).orElse(Sources.PRACTICE);
        reasons.add(new Reason(pair.sentence(), source));
      }
    }
    return reasons;
  }

  private Reason reason(Part part, String key, Look look) {
    Optional<Check> check = Checks.find(key);
    String answer = Check.answered(check.map(Check::title).orElse(key), look);
    String next = look == Look.SUSPECT ? Settlement.advice(job, part, key) : "";
    return new Reason(
        Words.capital(part.kind().word()) + ": " + answer + "." + next,
        check.map(Check::source).orElse(Sources.PRACTICE));
  }

  /** A suspect look that a later reading settled counts as looked at. */
  private Optional<Reason> notLooked(Part part) {
    List<String> open =
        Inspecting.checksOf(job, part).stream()
            .filter(
                check ->
                    job.getPart(part.item()).looks().getOrDefault(check.key(), Look.NOT_LOOKED)
                        == Look.NOT_LOOKED)
            .map(Check::title)
            .toList();
    return open.isEmpty()
        ? Optional.empty()
        : Optional.of(new Reason("Not inspected yet: " + String.join("; ", open), Sources.FAA_32));
  }
}
