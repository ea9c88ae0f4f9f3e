package wherefrom.ui.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.drawing.PlaceWords;
import wherefrom.inspection.Check;
import wherefrom.inspection.Checks;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.job.LastDecision;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.StandingRule;
import wherefrom.job.decide.Deciding;
import wherefrom.job.decide.Machining;
import wherefrom.job.decide.Proposal;
import wherefrom.job.decide.Settlement;
import wherefrom.job.entry.DecisionEntry;
import wherefrom.parts.Whereabouts;
import wherefrom.text.Words;

/** One part: what the rules propose, why, and what the person has decided. */
final class DecidePartModel {

  /** A line to read: a heading, what is said below it, and its source where it has one. */
  record Line(String heading, String words, String source) {
    Line(String heading, String words) {
      this(heading, words, "");
    }

    /** The first that is said, without the rule or the kind in front: {@code Is it straight?}. */
    String brief() {
      return Words.capital(
          Words.firstSentence(words).replaceFirst("^(Rule \\d+|[A-Z][a-z]+): ", ""));
    }
  }

  /**
   * A reason on a key.
   *
   * @param claimsReading whether it says that something was measured
   */
  record Reason(String words, boolean claimsReading) {
    private static Reason of(DecideReason usual) {
      return new Reason(usual.words(), usual.claimsReading());
    }
  }

  /** The heading of what nobody has passed yet. */
  static final String OPEN_CHECK = "Check still open";

  private final OpenJob job;
  private final Deciding deciding;
  private final int item;

  DecidePartModel(OpenJob job, int item) {
    this.job = job;
    this.deciding = new Deciding(job);
    this.item = item;
  }

  private PartRecord record() {
    return job.state().getPart(item);
  }

  String title() {
    return Words.capital(PlaceWords.named(job.state().layout(), record().part()));
  }

  /** What the rules propose; empty where nothing can be proposed yet. */
  Optional<Decision> proposed() {
    return deciding.propose(item).decision();
  }

  /** What would settle it, where nothing can be proposed yet. */
  Settlement settling() {
    return deciding.settling(item);
  }

  /** {@code undecided}, {@code replace}, {@code new}. */
  String standing() {
    return record().where() == Whereabouts.RETIRED
        ? "replaced already"
        : decision().map(Decision::word).orElse(record().part().fresh() ? "new" : "undecided");
  }

  /** What the rules propose with every reason, then what is decided, then what stands for it. */
  List<Line> lines() {
    List<Line> lines = new ArrayList<>();
    lines.add(decided());
    Proposal proposal = deciding.propose(item);
    String heading = DecideModel.proposed(proposal.decision());
    for (Proposal.Reason reason : proposal.reasons()) {
      lines.add(new Line(heading, Words.capital(reason.sentence()), reason.source() + "."));
      heading = "And because";
    }
    record().remarks().stream()
        .filter(remark -> remark.photo().isEmpty())
        .map(remark -> new Line("Note", remark.text()))
        .forEach(lines::add);
    for (StandingRule rule : job.state().rules().listFor(record().part())) {
      if (rule.isOpenCheck()) {
        lines.add(
            new Line(
                OPEN_CHECK,
                rule.consequence().sentence(),
                Words.capital(rule.consequence().ruleWords())
                    + ", "
                    + rule.consequence().source()
                    + "."));
      }
    }
    return lines;
  }

  private Line decided() {
    if (record().where() == Whereabouts.RETIRED) {
      return new Line("Replaced already", "A new part has its place.");
    }
    Optional<DecisionEntry> last = LastDecision.find(job.state(), item);
    if (last.isPresent()) {
      String reason = last.get().reason();
      return new Line(
          "Decided: " + last.get().decision().word(),
          reason.isEmpty() ? "" : "Because: " + reason + ".");
    }
    if (record().part().fresh()) {
      return new Line("It is new", "A new part needs no decision.");
    }
    return deciding.isWanted(item)
        ? new Line("Not cleared to fit", "")
        : new Line("Not decided", "Nothing speaks against it: it needs no decision.");
  }

  Optional<Decision> decision() {
    return record().decision();
  }

  /** The usual reasons; what the rules say comes first where they propose the same. */
  List<Reason> reasons(Decision decision) {
    Proposal proposal = deciding.propose(item);
    List<Reason> reasons = new ArrayList<>();
    if (proposal.decision().equals(Optional.of(decision))) {
      String sentence = proposal.reasons().get(0).sentence();
      reasons.add(new Reason(Words.withoutStop(sentence), false));
    }
    DecideReason.of(decision).stream()
        .filter(reason -> isBorneOut(reason, proposal))
        .map(Reason::of)
        .forEach(reasons::add);
    return reasons;
  }

  /** No key puts a reason into the record that the record itself contradicts. */
  private boolean isBorneOut(DecideReason reason, Proposal proposal) {
    return switch (reason) {
      case EVERY_TEST_PASSED -> proposal.decision().equals(Optional.of(Decision.REUSE));
      case A_TEST_FAILED -> record().looks().containsValue(Look.FAIL);
      case A_RULE_FORBIDS_IT -> job.state().findBan(item).isPresent();
      default -> true;
    };
  }

  /**
   * What to ask before a reason that speaks of readings is kept for a part without one; empty where
   * there is nothing to ask.
   */
  Optional<String> question(Reason reason) {
    return reason.claimsReading() && !deciding.isMeasured(item)
        ? Optional.of("Nothing was measured: " + title() + doubts() + ".")
        : Optional.empty();
  }

  private String doubts() {
    List<String> doubtful = new ArrayList<>();
    record()
        .looks()
        .forEach(
            (check, look) -> {
              if (look == Look.SUSPECT || look == Look.FAIL) {
                String what = Checks.find(check).map(Check::title).orElse(check);
                doubtful.add(" is " + look.word() + " at " + Words.withoutStop(what));
              }
            });
    return doubtful.isEmpty() ? "" : doubtful.get(0);
  }

  /** Why this decision is none for its kind; empty where it is one. */
  Optional<String> objection(Decision decision) {
    return Machining.objection(decision, record().part().kind());
  }

  /** Decides; what came of it, in a sentence. */
  String decide(Decision decision, String reason) {
    Deciding.Answer answer = deciding.decide(item, decision, reason);
    if (answer instanceof Deciding.Answer.Refused refused) {
      return refused.sentence();
    }
    return switch (decision) {
      case REUSE -> title() + ": reuse.";
      case MACHINE -> title() + ": machine. It goes on the machine shop's list.";
      case REPLACE -> title() + ": replace. On its page, a new part gets a tag of its own.";
    };
  }
}
