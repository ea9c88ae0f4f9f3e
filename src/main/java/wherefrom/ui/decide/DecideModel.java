package wherefrom.ui.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.drawing.PlaceWords;
import wherefrom.inspection.Decision;
import wherefrom.job.EngineJob;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.decide.Deciding;
import wherefrom.job.decide.Proposal;
import wherefrom.job.handling.Handling;
import wherefrom.job.handling.HandlingOutcome;
import wherefrom.job.handling.NewPart;
import wherefrom.job.money.Replacement;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;
import wherefrom.text.UsualWords;

/** What is decided and what is not, kind by kind, and the list of what must be bought. */
final class DecideModel {

  /**
   * The used parts of one kind, with how many of them nobody has decided about.
   *
   * @param waiting how many of those are held up for want of a decision
   */
  record Group(PartKind kind, int parts, int undecided, int waiting) {

    /** How it stands, in the words of {@link DecideModel#open}: the kinds add up to the whole. */
    String words() {
      return open(waiting, undecided);
    }
  }

  /**
   * A line of a set: a part, what is proposed for it, and what is decided.
   *
   * @param held whether it is not cleared before someone decides
   */
  record Line(Part part, String proposed, Optional<Decision> decided, boolean held) {}

  private final OpenJob job;
  private final Deciding deciding;

  DecideModel(OpenJob job) {
    this.job = job;
    this.deciding = new Deciding(job);
  }

  private EngineJob state() {
    return job.state();
  }

  /** How many parts are held up for want of a decision. */
  int waiting() {
    return deciding.listUndecided().size();
  }

  /**
   * What is to be decided, in words that never say less than the rows do: {@code 27 to decide}, or
   * what may wait where nothing is held up.
   */
  String open() {
    return open(waiting(), groups().stream().mapToInt(Group::undecided).sum());
  }

  private static String open(int waiting, int undecided) {
    if (waiting > 0) {
      return waiting + " to decide";
    }
    return undecided == 0 ? "all decided" : undecided + " may wait";
  }

  /** {@code 3 EX pushrod}. */
  String title(Part part) {
    return PlaceWords.named(state().layout(), part);
  }

  /** The part to decide about next: one that is held up, else any that is undecided. */
  Optional<Part> next() {
    return next(0);
  }

  /** The same, behind a part where there is one. */
  Optional<Part> next(int after) {
    List<Part> waiting = deciding.listUndecided();
    List<Part> open = waiting.isEmpty() ? deciding.listWithoutDecision() : waiting;
    return open.stream()
        .filter(part -> part.item() > after)
        .findFirst()
        .or(() -> open.stream().filter(part -> part.item() != after).findFirst());
  }

  /** Whether the job asks for a decision on every used part before it is fitted. */
  boolean isAskedOfAll() {
    return state().inspection().asksForAll();
  }

  /** Asks for a decision on every used part, or only where something speaks against one. */
  void turnAsking() {
    deciding.askEveryPart(!isAskedOfAll());
  }

  List<Group> groups() {
    List<Part> waiting = deciding.listUndecided();
    List<Group> groups = new ArrayList<>();
    for (PartKind kind : state().kinds().stream().sorted().toList()) {
      int many = used(kind).size();
      if (many > 0) {
        int held = (int) waiting.stream().filter(part -> part.kind() == kind).count();
        groups.add(new Group(kind, many, undecided(kind), held));
      }
    }
    return groups;
  }

  /** How many of a kind are undecided. */
  int undecided(PartKind kind) {
    return (int) used(kind).stream().filter(part -> part.decision().isEmpty()).count();
  }

  /** For how many of a kind reuse is proposed: {@code proposed for 12 of 16}. */
  String proposed(PartKind kind) {
    return "proposed for "
        + used(kind).stream().filter(this::isProposed).count()
        + " of "
        + used(kind).size();
  }

  /** The used parts of a kind that are not replaced yet. */
  private List<PartRecord> used(PartKind kind) {
    return state().parts().stream()
        .filter(part -> part.part().kind() == kind && !part.part().fresh())
        .filter(part -> part.where() != Whereabouts.RETIRED)
        .toList();
  }

  /** The set's parts, the undecided first. */
  List<Line> lines(PartKind kind) {
    List<Line> lines = new ArrayList<>();
    List<Line> decided = new ArrayList<>();
    List<Part> held = deciding.listUndecided();
    for (PartRecord part : used(kind)) {
      Proposal proposal = deciding.propose(part.part().item());
      String proposed = proposed(proposal.decision());
      Line line = new Line(part.part(), proposed, part.decision(), held.contains(part.part()));
      (part.decision().isEmpty() ? lines : decided).add(line);
    }
    lines.addAll(decided);
    return lines;
  }

  static String proposed(Optional<Decision> decision) {
    return decision.map(what -> "Proposed: " + what.word()).orElse("Nothing can be proposed yet");
  }

  Optional<Deciding.SetProposal> proposeSet(PartKind kind) {
    return deciding.proposeSet(kind);
  }

  /**
   * Decides about a whole kind. Reuse takes only the parts for which it is proposed and nothing is
   * decided: the others are left to be looked at one by one.
   *
   * @return what came of it, in a sentence
   */
  String decideSet(PartKind kind, Decision decision, String reason) {
    List<Integer> items =
        used(kind).stream()
            .filter(part -> decision != Decision.REUSE || isProposed(part))
            .map(part -> part.part().item())
            .toList();
    if (items.isEmpty()) {
      return "Nothing is decided. Reuse is proposed for none of the open "
          + kind.plural()
          + ". Inspect them first, or decide one by one.";
    }
    Deciding.Answer answer = deciding.decide(items, decision, reason);
    if (answer instanceof Deciding.Answer.Refused refused) {
      return refused.sentence();
    }
    int left = (int) used(kind).stream().filter(part -> part.decision().isEmpty()).count();
    return items.size()
        + " "
        + (items.size() == 1 ? kind.word() : kind.plural())
        + ": "
        + decision.word()
        + "."
        + (left == 0 ? "" : " " + left + " are left to decide one by one.");
  }

  /** The usual reasons for a set; one that speaks of readings only where each part has one. */
  UsualWords reasons(PartKind kind, Decision decision) {
    boolean measured =
        used(kind).stream()
            .filter(part -> decision != Decision.REUSE || isProposed(part))
            .allMatch(part -> deciding.isMeasured(part.part().item()));
    return UsualWords.orOther(
        DecideReason.of(decision).stream()
            .filter(reason -> measured || !reason.claimsReading())
            .map(DecideReason::words)
            .toList());
  }

  private boolean isProposed(PartRecord part) {
    return part.decision().isEmpty()
        && deciding.propose(part.part().item()).decision().equals(Optional.of(Decision.REUSE));
  }

  List<Replacement> replacements() {
    return deciding.replacements();
  }

  /**
   * What was bought is here: each old part is retired, and a new one has its place.
   *
   * @return what to do now, in a sentence
   * @throws IllegalArgumentException with a sentence where one cannot be taken on; then none is
   */
  String takeOn(Replacement line) {
    Handling handling = new Handling(job);
    List<PartRecord> old = replaced(line);
    Optional<String> refused =
        job.asOne(
            () ->
                old.stream()
                    .map(PartRecord::part)
                    .map(part -> handling.replace(part.item(), line.reason(), fresh(part)))
                    .filter(HandlingOutcome.Refused.class::isInstance)
                    .map(done -> ((HandlingOutcome.Refused) done).sentence())
                    .findFirst(),
            Optional::isEmpty);
    if (refused.isPresent()) {
      throw new IllegalArgumentException(refused.get());
    }
    return old.size() == 1
        ? "1 new part. Print its tag."
        : "New parts: " + old.size() + ". Print their tags.";
  }

  /** The used parts that give way to what a line buys: those at its places and no others. */
  private List<PartRecord> replaced(Replacement line) {
    return used(line.kind()).stream()
        .filter(part -> line.places().contains(part.part().home()))
        .toList();
  }

  /** {@code the old one at 3 EX is retired, no other}: what {@link #takeOn} does to the old. */
  String retires(Replacement line) {
    List<PartRecord> old = replaced(line);
    if (old.size() == used(line.kind()).size()) {
      return old.size() == 1 ? "the old one is retired" : "all " + old.size() + " old are retired";
    }
    return old.size() == 1
        ? "the old one at " + old.get(0).part().home().brief() + " is retired, no other"
        : old.size() + " old are retired, no others";
  }

  private NewPart fresh(Part old) {
    return NewPart.asListed(state(), old);
  }

  /** For which places a line buys: all that the kind has, or those that are named. */
  String places(Replacement line) {
    int all = used(line.kind()).size();
    return all > 2 && replaced(line).size() == all
        ? "All " + all + " places of this engine"
        : places(line.places());
  }

  /**
   * {@code 3 EX, 5 EX, 7 IN} or {@code rod 1, upper; rod 1, lower}; from eight on, the first of
   * them and how many more.
   */
  static String places(List<Place> places) {
    List<String> figures = places.stream().map(Place::brief).toList();
    String between = figures.stream().anyMatch(one -> one.contains(",")) ? "; " : ", ";
    return figures.size() <= 8
        ? String.join(between, figures)
        : String.join(between, figures.subList(0, 6)) + " and " + (figures.size() - 6) + " more";
  }
}
