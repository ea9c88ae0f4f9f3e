package wherefrom.ui.inspect;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import wherefrom.drawing.PartState;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.OpenJob;
import wherefrom.job.inspect.CheckCard;
import wherefrom.job.inspect.Inspecting;
import wherefrom.ui.drawn.PartStates;
import wherefrom.ui.subject.Group;

/** What there is to look at, and how far it is. */
final class InspectModel {
  private final OpenJob job;
  private final Inspecting inspecting;

  InspectModel(OpenJob job) {
    this.job = job;
    this.inspecting = new Inspecting(job);
  }

  List<Group> groups() {
    return Group.of(job.state()).stream()
        .filter(group -> !Group.isBeforeTeardown(group.key()))
        .toList();
  }

  private long whole(Group group) {
    return group.subjects().stream()
        .filter(
            subject ->
                inspecting.cards(subject).stream()
                    .noneMatch(card -> card.look() == Look.NOT_LOOKED))
        .count();
  }

  /** {@code 5 of 16}. */
  String count(Group group) {
    return whole(group) + " of " + group.subjects().size();
  }

  /** How much of a group is looked at, from 0 to 1. */
  double done(Group group) {
    return (double) whole(group) / Math.max(1, group.subjects().size());
  }

  /** What is to be looked at now: before it is washed, else all that was not looked at. */
  List<Inspecting.Unlooked> due() {
    List<Inspecting.Unlooked> dirty = beforeWashing();
    return dirty.isEmpty() ? unlooked() : dirty;
  }

  /** {@code 207 to look at}: parts and places together. */
  String left() {
    long all = unlooked().stream().map(Inspecting.Unlooked::subject).distinct().count();
    return all == 0 ? "all looked at" : all + " to look at";
  }

  /** The worst answer so far, and how many tests are open. */
  String state(Subject subject) {
    List<CheckCard> cards = inspecting.cards(subject);
    long open = cards.stream().filter(card -> card.look() == Look.NOT_LOOKED).count();
    if (open == cards.size()) {
      return "not looked at";
    }
    Look worst = cards.stream().map(CheckCard::look).max(Look::compareTo).orElseThrow();
    return worst.word() + (open == 0 ? "" : ", " + open + " to do");
  }

  /** The same for the drawn engine. */
  PartState standing(Subject subject) {
    List<CheckCard> cards = inspecting.cards(subject);
    Look worst = cards.stream().map(CheckCard::look).max(Look::compareTo).orElse(Look.NOT_LOOKED);
    boolean whole = cards.stream().noneMatch(card -> card.look() == Look.NOT_LOOKED);
    return PartStates.standing(worst, whole, state(subject));
  }

  List<Inspecting.Unlooked> unlooked() {
    return inspecting.listUnlooked();
  }

  List<Inspecting.Unlooked> beforeWashing() {
    return inspecting.listBeforeWashing();
  }

  /** Everything with a suspect or failed answer. */
  List<Subject> doubtful() {
    return groups().stream()
        .flatMap(group -> group.subjects().stream())
        .filter(
            subject ->
                inspecting.cards(subject).stream()
                    .anyMatch(card -> card.look().compareTo(Look.PASS) > 0))
        .toList();
  }

  /** What of each kind or feature is not looked at yet, where something is left. */
  List<Group> grouped(List<Inspecting.Unlooked> list) {
    Set<Subject> open = list.stream().map(Inspecting.Unlooked::subject).collect(Collectors.toSet());
    return groups().stream()
        .map(group -> group.only(open::contains))
        .filter(group -> !group.subjects().isEmpty())
        .toList();
  }
}
