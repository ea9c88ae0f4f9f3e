package wherefrom.job;

import java.util.List;
import java.util.Optional;
import wherefrom.engine.Bank;
import wherefrom.engine.Layout;
import wherefrom.engine.Spot;
import wherefrom.inspection.Decision;
import wherefrom.parts.BigPartAt;
import wherefrom.parts.BigPartKind;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;
import wherefrom.rules.Ban;
import wherefrom.rules.Evidence;
import wherefrom.rules.JobFacts;
import wherefrom.rules.Objection;
import wherefrom.rules.OpenCheck;

/** What the rules ask of a job, answered from its fold as it stands. */
final class JobBench implements JobFacts {
  private final EngineJob job;
  private final PartsLedger parts;
  private final Assembly assembly;
  private final Pairs pairs;
  private final BigPartPlaces bigParts;

  JobBench(EngineJob job, JobFolds folds) {
    this.job = job;
    this.parts = folds.parts();
    this.assembly = folds.assembly();
    this.pairs = folds.pairs();
    this.bigParts = folds.bigParts();
  }

  @Override
  public Layout layout() {
    return job.layout();
  }

  @Override
  public Whereabouts whereabouts(int item) {
    return job.whereabouts(item);
  }

  @Override
  public long movedAt(int item) {
    return parts.get(item).dates().movedAt();
  }

  @Override
  public Optional<String> findAwayTo(int item) {
    return parts.get(item).awayTo();
  }

  @Override
  public Optional<Part> findFitted(Place place) {
    return job.findFitted(place);
  }

  @Override
  public Optional<Place> findFittedAt(int item) {
    return assembly.findFittedAt(item);
  }

  @Override
  public Optional<Part> findSeated(Place place) {
    return job.findSeated(place);
  }

  @Override
  public Optional<Place> findSeat(int item) {
    return job.findSeat(item);
  }

  @Override
  public Optional<Part> findRightful(Place place) {
    return pairs.findRightful(place);
  }

  @Override
  public Optional<Part> findLeader(int item) {
    return pairs.findLeader(item);
  }

  @Override
  public boolean isUnrun(int item) {
    return parts.get(item).isUnrun();
  }

  @Override
  public boolean awaitsNew(Place place) {
    return parts.awaitsNew(place);
  }

  @Override
  public Optional<Part> findReplacement(int item) {
    return parts.findReplacement(item);
  }

  @Override
  public Evidence worst(int item) {
    return job.workedOut().findings().worst(item);
  }

  @Override
  public Evidence worstSinceDecision(int item) {
    return job.workedOut().findings().sinceDecision(item);
  }

  @Override
  public Optional<Decision> findDecision(int item) {
    return parts.get(item).decision();
  }

  @Override
  public long decidedAt(int item) {
    return parts.get(item).dates().decidedAt();
  }

  @Override
  public Optional<Long> decisionsAskedSince() {
    return job.inspection().askedSince();
  }

  @Override
  public long reasonGiven(int item) {
    return assembly.findKept(item).map(Assembly.Kept::since).orElse(0L);
  }

  @Override
  public long turnedAt(int item) {
    return assembly.turnedAt(item);
  }

  @Override
  public List<Ban> listBans(int item, Place place) {
    return job.rules().listBans(parts.boundTo(place, item), place);
  }

  @Override
  public List<OpenCheck> listOpenChecks(int item, Place place) {
    return job.rules().listOpenChecks(parts.boundTo(place, item).part(), place);
  }

  @Override
  public Optional<BigPartAt> findBigPart(BigPartKind kind, Spot spot) {
    Optional<Bank> bank = spot.findCylinder().flatMap(layout()::findBank);
    return bigParts.find(
        name -> name.kind() == kind && bank.filter(one -> !name.isOver(one)).isEmpty());
  }

  @Override
  public List<Objection> listAgainst(Place place) {
    return job.listAgainst(place);
  }
}
