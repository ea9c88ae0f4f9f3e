package wherefrom.job.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.inspection.Look;
import wherefrom.job.MadeChange;
import wherefrom.job.MadeChanges;
import wherefrom.job.OpenJob;
import wherefrom.job.StandingRule;
import wherefrom.job.entry.ChangeMade;
import wherefrom.job.entry.ChangePlanned;
import wherefrom.job.entry.CheckAnswered;
import wherefrom.job.entry.PlanDropped;
import wherefrom.job.entry.SlotUnknown;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.consequence.Consequence;
import wherefrom.rules.consequence.ConsequenceRules;
import wherefrom.rules.consequence.OneCam;
import wherefrom.rules.consequence.Setting;
import wherefrom.rules.size.CutSurface;

/** Plans and changes: what each would mean, shown before money is spent, and what it does mean. */
public final class Planning {

  /** What became of a request. */
  public sealed interface Answer {
    /** Planned; nothing binds. */
    record Planned(PlannedChange plan) implements Answer {}

    /** Recorded; what follows from it binds from now on. */
    record Made(Change change, List<Consequence> consequences) implements Answer {
      public Made {
        consequences = List.copyOf(consequences);
      }
    }

    /** The plan is gone. */
    record Dropped(int plan) implements Answer {}

    /** The check's answer stands. */
    record Answered(CheckAnswered answer) implements Answer {}

    /** Nothing was recorded; the sentence says why and what to do. */
    record Refused(String sentence) implements Answer {}
  }

  private final OpenJob job;

  public Planning(OpenJob job) {
    this.job = job;
  }

  /** What a change would mean; nothing is recorded. */
  public List<Consequence> preview(Change change) {
    return ConsequenceRules.of(change, setting());
  }

  /** What several changes would mean, made one after the other; nothing is recorded. */
  public List<Consequence> preview(List<Change> changes) {
    List<Consequence> all = new ArrayList<>();
    Setting setting = setting();
    for (Change change : changes) {
      all.addAll(ConsequenceRules.of(change, setting));
      setting = setting.after(change);
    }
    return all;
  }

  /** The engine as the changes that were made have left it. */
  public Setting setting() {
    return MadeChanges.setting(job.state());
  }

  /** What is wrong with a change for this engine as it is now, in a sentence. */
  public Optional<String> findWrong(Change change) {
    return change.findFault(setting());
  }

  /** Plans a change. */
  public Answer plan(Change change) {
    return job.asOne(() -> planOnce(change));
  }

  private Answer planOnce(Change change) {
    Optional<Answer> fault = findFault(change);
    if (fault.isPresent()) {
      return fault.get();
    }
    int number = nextPlan();
    job.record(new ChangePlanned(number, change));
    return new Answer.Planned(new PlannedChange(number, change, preview(change)));
  }

  /** Drops a plan again. */
  public Answer drop(int plan, String reason) {
    return job.asOne(() -> dropOnce(plan, reason));
  }

  private Answer dropOnce(int plan, String reason) {
    if (findPlan(plan).isEmpty()) {
      return noSuchPlan(plan);
    }
    job.record(new PlanDropped(plan, reason.strip()));
    return new Answer.Dropped(plan);
  }

  /** The plan was carried out. */
  public Answer carryOut(int plan) {
    return job.asOne(() -> carryOutOnce(plan));
  }

  private Answer carryOutOnce(int plan) {
    return findPlan(plan)
        .map(planned -> record(plan, planned.change()))
        .orElseGet(() -> noSuchPlan(plan));
  }

  /**
   * A change was made, or something was found. That nobody knows any more where a part came from is
   * kept of that very part, wherever it goes.
   */
  public Answer make(Change change) {
    return job.asOne(() -> makeOnce(change));
  }

  private Answer makeOnce(Change change) {
    return findFault(change)
        .or(() -> findStray(change).map(part -> slotUnknown(part, change)))
        .orElseGet(() -> record(0, change));
  }

  private Optional<Part> findStray(Change change) {
    return change.kind() == ChangeKind.SLOT_UNKNOWN
        ? Place.find(change.where()).flatMap(job.state()::findOwner)
        : Optional.empty();
  }

  private Answer slotUnknown(Part part, Change change) {
    job.record(new SlotUnknown(part.item(), change.detail()));
    return new Answer.Made(change, preview(change));
  }

  /** Answers a check by its {@link Consequence#key()}. */
  public Answer answer(String check, Look look, String words) {
    return job.asOne(() -> answerOnce(check, look, words));
  }

  private Answer answerOnce(String check, Look look, String words) {
    boolean known =
        job.state().rules().all().stream().anyMatch(rule -> rule.consequence().key().equals(check));
    if (!known) {
      return new Answer.Refused("No rule asks for a check named \"" + check + "\".");
    }
    CheckAnswered answered = new CheckAnswered(check, look, words.strip());
    job.record(answered);
    return new Answer.Answered(answered);
  }

  /** The plans that are neither dropped nor carried out. */
  public List<PlannedChange> plans() {
    return OpenPlans.of(job.state(), this::preview);
  }

  /** The changes that were recorded, and those that came back from the machine shop, in order. */
  public List<Change> made() {
    return job.state().told().work().stream().map(MadeChange::change).toList();
  }

  /** The changes that came back from the machine shop. */
  public List<Change> fromShop() {
    return job.state().told().workOfShop();
  }

  /** What speaks against a change among the open plans, in a sentence. */
  public Optional<String> findContradiction(Change change) {
    return plans().stream()
        .filter(plan -> OneCam.forbids(plan.change().kind(), change.kind()))
        .findFirst()
        .map(
            plan ->
                "Plan "
                    + plan.number()
                    + " ("
                    + plan.change().words()
                    + ") speaks against it: the engine takes one cam. Drop one of the two.");
  }

  public Optional<PlannedChange> findPlan(int number) {
    return plans().stream().filter(plan -> plan.number() == number).findFirst();
  }

  /** Everything that follows from what was made or found. */
  public List<StandingRule> standing() {
    return job.state().rules().all();
  }

  /** The checks that nobody has passed yet. */
  public List<StandingRule> openChecks() {
    return job.state().rules().openChecks();
  }

  private Answer record(int plan, Change change) {
    job.record(new ChangeMade(plan, change));
    return new Answer.Made(change, preview(change));
  }

  private Optional<Answer> findFault(Change change) {
    return findWrong(change).or(() -> findSizeFault(change)).map(Answer.Refused::new);
  }

  /** A size that nobody can read would be forgotten where the parts for it are bought. */
  private Optional<String> findSizeFault(Change change) {
    boolean readable =
        change.detail().isBlank()
            || CutSurface.find(change.kind()).isEmpty()
            || change.size().isPresent();
    return readable
        ? Optional.empty()
        : Optional.of(
            "\""
                + change.detail()
                + "\" is not a size. Type the step from standard, such as 0.010 in, or the"
                + " diameter.");
  }

  private static Answer noSuchPlan(int plan) {
    return new Answer.Refused("There is no open plan number " + plan + ".");
  }

  /** Numbers are never used twice, not even those of steps taken back. */
  private int nextPlan() {
    return 1
        + job.history().stream()
            .filter(logged -> logged.entry() instanceof ChangePlanned)
            .mapToInt(logged -> ((ChangePlanned) logged.entry()).plan())
            .max()
            .orElse(0);
  }
}
