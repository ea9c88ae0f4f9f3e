package wherefrom.ui.changes;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wherefrom.inspection.Look;
import wherefrom.job.EngineJob;
import wherefrom.job.OpenJob;
import wherefrom.job.StandingRule;
import wherefrom.job.change.PlannedChange;
import wherefrom.job.change.Planning;
import wherefrom.job.money.MoneyBook;
import wherefrom.job.money.PlanCost;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.consequence.Consequence;
import wherefrom.rules.consequence.Setting;

/** Plans, changes and findings, what follows from each, and the checks that are open. */
final class ChangesModel {

  /** The groups in which changes are offered. */
  enum Group {
    WORK("Plan work", "Which work?"),
    NEW_PART("Plan a new part", "A new part of which kind?"),
    FINDING("Record a finding", "What was found?");

    private final String key;
    private final String question;

    Group(String key, String question) {
      this.key = key;
      this.question = question;
    }

    String key() {
      return key;
    }

    String question() {
      return question;
    }
  }

  /** Nobody plans these: they follow from scans and from other changes. */
  private static final Set<ChangeKind> NEW_PARTS =
      EnumSet.of(
          ChangeKind.LIFTER_REPLACED,
          ChangeKind.PUSHROD_REPLACED,
          ChangeKind.ROCKER_REPLACED,
          ChangeKind.VALVE_REPLACED,
          ChangeKind.ROD_REPLACED);

  private static final Set<ChangeKind> NEW_CAMS =
      EnumSet.of(ChangeKind.NEW_FLAT_CAM, ChangeKind.CAM_REGROUND, ChangeKind.NEW_ROLLER_CAM);

  private final OpenJob job;
  private final Planning planning;

  ChangesModel(OpenJob job) {
    this.job = job;
    this.planning = new Planning(job);
  }

  EngineJob state() {
    return job.state();
  }

  /** What is offered for this engine as it is now. */
  List<ChangeKind> kinds(Group group) {
    Setting setting = planning.setting();
    return Arrays.stream(ChangeKind.values())
        .filter(kind -> isIn(kind, group) && kind.isOffered(setting))
        .toList();
  }

  /** A cam is work and a new part: it is looked for under both. */
  private static boolean isIn(ChangeKind kind, Group group) {
    return group(kind) == group || (group == Group.NEW_PART && NEW_CAMS.contains(kind));
  }

  private static Group group(ChangeKind kind) {
    return kind.origin() == ChangeKind.Origin.WORK
        ? Group.WORK
        : NEW_PARTS.contains(kind) ? Group.NEW_PART : Group.FINDING;
  }

  /** Whether a change is found rather than done. */
  static boolean isFinding(Change change) {
    return group(change.kind()) == Group.FINDING;
  }

  List<PlannedChange> plans() {
    return planning.plans();
  }

  /** The changes and findings that were recorded here, the latest first. */
  List<Change> made() {
    List<Change> made = new ArrayList<>(planning.made());
    Collections.reverse(made);
    return made;
  }

  /** What follows from a change, the hardest first. */
  List<Consequence> preview(Change change) {
    List<Consequence> sorted = new ArrayList<>(planning.preview(change));
    sorted.sort(Comparator.comparing(Consequence::effect));
    return sorted;
  }

  /** What it would cost at the prices typed; empty where nothing must be bought. */
  Optional<String> cost(Change change) {
    PlanCost cost = new MoneyBook(job).effect(change);
    return cost.lines().isEmpty() ? Optional.empty() : Optional.of(cost.sentence());
  }

  List<StandingRule> standing() {
    return sorted(planning.standing());
  }

  List<StandingRule> openChecks() {
    return sorted(planning.openChecks());
  }

  /** What stands for one part. */
  List<StandingRule> standingFor(int item) {
    return sorted(state().rules().listFor(state().getPart(item).part()));
  }

  private static List<StandingRule> sorted(List<StandingRule> rules) {
    List<StandingRule> sorted = new ArrayList<>(rules);
    sorted.sort(
        Comparator.comparing((StandingRule rule) -> !rule.isOpenCheck())
            .thenComparing(rule -> rule.consequence().effect()));
    return sorted;
  }

  /** The standing rule with this check's name; empty once nothing asks for it any more. */
  Optional<StandingRule> find(String key) {
    return planning.standing().stream()
        .filter(rule -> rule.consequence().effect().isCheck())
        .filter(rule -> rule.consequence().key().equals(key))
        .findFirst();
  }

  /** What speaks against it among the other open plans. */
  Optional<String> findContradiction(Change change) {
    return planning.findContradiction(change);
  }

  /** How an open plan stands, in a few words. */
  static String standing(Optional<String> contradiction) {
    return contradiction.isPresent()
        ? "Another plan contradicts it: press to see."
        : "Only a plan: nothing is stopped yet.";
  }

  String plan(Change change) {
    Planning.Answer answer = planning.plan(change);
    return answer instanceof Planning.Answer.Planned planned
        ? "Plan "
            + planned.plan().number()
            + ": "
            + change.words()
            + ". Only a plan: nothing is stopped yet."
            + findContradiction(change).map(words -> " " + words).orElse("")
        : refusal(answer);
  }

  String make(Change change) {
    return made(planning.make(change));
  }

  String carryOut(int plan) {
    return made(planning.carryOut(plan));
  }

  private static String made(Planning.Answer answer) {
    if (answer instanceof Planning.Answer.Made made) {
      long bans = made.consequences().stream().filter(one -> one.effect().bans()).count();
      String stops = bans == 0 ? "" : " Used parts that it forbids are stopped from now on.";
      return "Recorded: " + made.change().words() + "." + stops;
    }
    return refusal(answer);
  }

  String drop(int plan) {
    Planning.Answer answer = planning.drop(plan, "");
    return answer instanceof Planning.Answer.Dropped
        ? "Plan " + plan + " is dropped."
        : refusal(answer);
  }

  String answer(String check, Look look, String words) {
    Planning.Answer answer = planning.answer(check, look, words);
    if (answer instanceof Planning.Answer.Answered) {
      return look == Look.PASS
          ? "Check: pass."
          : "Check: fail. It stays open. What waits for it stays stopped.";
    }
    return refusal(answer);
  }

  private static String refusal(Planning.Answer answer) {
    return answer instanceof Planning.Answer.Refused refused ? refused.sentence() : "";
  }
}
