package wherefrom.ui.shop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import wherefrom.drawing.PlaceWords;
import wherefrom.inspection.match.PartMatch;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.Tool;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.Reidentified;
import wherefrom.job.shop.Retagging;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.UnitSystem;

/** Parts that came back without tags: which kind, which readings, and who is who. */
final class RetagModel {

  /** An untagged part by the number chalked on it, with what was measured on it now. */
  record Found(String mark, String readings) {}

  private final OpenJob job;
  private final LostTags typed;
  private LostTags.Lost group = LostTags.Lost.none();
  private List<PartMatch> matches = List.of();
  private Optional<PartKind> kind;
  private String trouble = "";

  /**
   * @param typed what was typed before and is not agreed on yet
   */
  RetagModel(OpenJob job, LostTags typed) {
    this.job = job;
    this.typed = typed;
    this.kind =
        typed
            .kind()
            .filter(kinds()::contains)
            .or(() -> kinds().stream().filter(each -> !plans(each).isEmpty()).findFirst());
    kind.ifPresent(this::takeUp);
  }

  /** Goes on with a group, or with the next one where all of it was told apart. */
  private void takeUp(PartKind chosen) {
    choose(chosen);
    List<String> marks = group.marks();
    if (!marks.isEmpty() && marks.stream().allMatch(mark -> accepted(mark).isPresent())) {
      typed.done(chosen);
      choose(chosen);
    }
  }

  private Retagging retagging() {
    return new Retagging(job);
  }

  /** The tracked kinds of which at least one is out of the engine. */
  List<PartKind> kinds() {
    return job.state().kinds().stream()
        .filter(each -> !retagging().loose(each).isEmpty())
        .sorted()
        .toList();
  }

  /** {@code 16 out, 12 measured}. */
  String known(PartKind each) {
    long measured =
        retagging().loose(each).stream()
            .filter(part -> plans(each).stream().anyMatch(plan -> isKnown(each, part, plan)))
            .count();
    String known = measured == 0 ? "none" : Long.toString(measured);
    return retagging().loose(each).size() + " out, " + known + " measured";
  }

  private boolean isKnown(PartKind each, Part part, ReadingPlan plan) {
    return retagging().candidates(each, plan.key()).contains(part);
  }

  Optional<PartKind> kind() {
    return kind;
  }

  /** Takes up a kind; what was typed of another waits until that is taken up again. */
  void choose(PartKind chosen) {
    kind = Optional.of(chosen);
    group = typed.choose(chosen, job.sequence());
    matches = List.of();
    if (used().isEmpty() && group.marks().isEmpty()) {
      plans(chosen).stream().findFirst().ifPresent(plan -> use(plan.key()));
    }
  }

  private List<ReadingPlan> plans(PartKind of) {
    return retagging().plans(of);
  }

  /** The readings that loose parts of the kind have in the record. */
  List<ReadingPlan> plans() {
    return kind.map(this::plans).orElse(List.of());
  }

  /** Whether readings in the record can tell parts of the kind: without any it leads nowhere. */
  boolean canMeasure() {
    return !plans().isEmpty();
  }

  /** Whether a kind of reading is taken. */
  boolean uses(String plan) {
    return group.uses(plan);
  }

  /** Takes a kind of reading in or leaves it out; what it lacks of the group is asked for then. */
  void use(String plan) {
    group.use(plan);
    matches = List.of();
  }

  /** The tool that the records were measured with, or any. */
  private String toolBefore(String plan) {
    return job.state().measures().listResults(plan).stream()
        .map(result -> result.tool().name())
        .findFirst()
        .or(() -> job.state().measures().tools().stream().map(Tool::name).findFirst())
        .orElse("");
  }

  /** The readings that are taken, in order. */
  List<ReadingPlan> used() {
    return plans().stream().filter(plan -> uses(plan.key())).toList();
  }

  String tool(String plan) {
    return group.tool(plan).orElseGet(() -> toolBefore(plan));
  }

  void tool(String plan, String name) {
    group.tool(plan, name);
  }

  /** The number to measure next: one that lacks a reading, else the next to chalk on a part. */
  String nextMark() {
    List<String> marks = group.marks();
    Optional<String> half = marks.stream().filter(mark -> !lacks(mark).isEmpty()).findFirst();
    int next = 1;
    while (marks.contains(Integer.toString(next))) {
      next++;
    }
    return half.orElse(Integer.toString(next));
  }

  /** The readings that are still to be taken of a number. */
  List<ReadingPlan> lacks(String mark) {
    Map<String, String> sizes = group.sizes(mark);
    return used().stream().filter(plan -> sizes.getOrDefault(plan.key(), "").isEmpty()).toList();
  }

  /** Keeps one figure of a number. */
  void read(String mark, String plan, String size) {
    group.read(mark, plan, size);
    matches = List.of();
  }

  void forget(String mark) {
    group.forget(mark);
    matches = List.of();
  }

  List<Found> found() {
    return group.marks().stream().map(mark -> new Found(mark, readings(mark))).toList();
  }

  private String readings(String mark) {
    Map<String, String> sizes = group.sizes(mark);
    List<String> said = new ArrayList<>();
    for (ReadingPlan plan : used()) {
      String size = sizes.getOrDefault(plan.key(), "");
      said.add(size.isEmpty() ? plan.title() + ": not read" : size + " " + unit(plan));
    }
    return String.join(", ", said);
  }

  /** The unit of figures that carry none. */
  String unit(ReadingPlan plan) {
    boolean inch = job.state().units() == UnitSystem.INCH;
    return plan.stations().get(0).dimension() == Dimension.FORCE
        ? (inch ? "lb" : "N")
        : (inch ? "in" : "mm");
  }

  /** What stands against it, in a sentence; empty when the group was matched. */
  String trouble() {
    return trouble;
  }

  /** Matches the whole group; records nothing. */
  boolean match() {
    trouble = half();
    if (!trouble.isEmpty()) {
      return false;
    }
    Map<String, String> ordered = new LinkedHashMap<>();
    used().forEach(plan -> ordered.put(plan.key(), tool(plan.key())));
    List<Integer> candidates =
        kind.map(each -> retagging().candidates(each, ordered.keySet())).orElse(List.of()).stream()
            .map(Part::item)
            .toList();
    Map<String, Map<String, String>> readings = new LinkedHashMap<>();
    group.marks().forEach(mark -> readings.put(mark, group.sizes(mark)));
    Retagging.Answer came = retagging().propose(candidates, ordered, readings);
    if (came instanceof Retagging.Answer.Proposed proposed) {
      matches = proposed.matches();
      return true;
    }
    trouble = ((Retagging.Answer.Refused) came).sentence();
    return false;
  }

  /** Which number lacks a reading, in a sentence; empty where none does. */
  private String half() {
    return group.marks().stream()
        .filter(mark -> !lacks(mark).isEmpty())
        .findFirst()
        .map(mark -> "Number " + mark + " lacks: " + lacks(mark).get(0).title() + ".")
        .orElse("");
  }

  List<PartMatch> matches() {
    return matches;
  }

  Part part(String item) {
    return job.state().getPart(Integer.parseInt(item)).part();
  }

  /** Which part this one was agreed to be; what was taken back is agreed no more. */
  Optional<Part> accepted(String mark) {
    return agreed()
        .filter(one -> one.mark().equals(mark))
        .reduce((earlier, later) -> later)
        .map(one -> job.state().getPart(one.item()).part());
  }

  int acceptedCount() {
    return (int) agreed().count();
  }

  /** What the person agreed to in this group, and stands. */
  private Stream<Reidentified> agreed() {
    return job.state().standing().stream()
        .filter(logged -> logged.sequence() > group.begun())
        .map(LoggedEntry::entry)
        .filter(Reidentified.class::isInstance)
        .map(Reidentified.class::cast);
  }

  /** The person agrees: the part is back, and its tag is to be printed anew. */
  String accept(PartMatch match, String item) {
    Part part = part(item);
    Retagging.Answer came = retagging().accept(match, part.item());
    if (came instanceof Retagging.Answer.Refused refused) {
      return refused.sentence();
    }
    return "Number "
        + match.found()
        + " is "
        + PlaceWords.named(job.state().layout(), part.home())
        + ".";
  }
}
