package wherefrom.rules.consequence;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import wherefrom.parts.PartKind;

/**
 * One rule: when such a change is made, this follows.
 *
 * @param number its short name, {@code R1} to {@code R41}
 * @param title what it is about
 * @param when the changes that it acts on
 * @param source where it was read, but for the consequences that name another book, or none
 * @param leadsTo changes that follow from it and have rules of their own
 */
public record Rule(
    String number,
    String title,
    Set<ChangeKind> when,
    Predicate<Setting> only,
    List<ConsequenceTemplate> thens,
    List<ChangeKind> leadsTo,
    String source) {

  public Rule {
    when = Set.copyOf(when);
    thens = List.copyOf(thens);
    leadsTo = List.copyOf(leadsTo);
  }

  static Rule of(String number, String title, ChangeKind first, ChangeKind... more) {
    return new Rule(
        number,
        title,
        EnumSet.of(first, more),
        setting -> true,
        List.of(),
        List.of(),
        wherefrom.inspection.Sources.PRACTICE);
  }

  /** The book that covers every consequence of the rule but those that name their own. */
  Rule source(String text) {
    return new Rule(number, title, when, only, thens, leadsTo, text);
  }

  Rule only(Predicate<Setting> condition) {
    return new Rule(number, title, when, condition, thens, leadsTo, source);
  }

  Rule leadsTo(ChangeKind change) {
    List<ChangeKind> more = new ArrayList<>(leadsTo);
    more.add(change);
    return new Rule(number, title, when, only, thens, more, source);
  }

  Rule then(ConsequenceTemplate then) {
    List<ConsequenceTemplate> more = new ArrayList<>(thens);
    more.add(then);
    return new Rule(number, title, when, only, more, leadsTo, source);
  }

  /** Bans used parts; {@code severity} says how hard. */
  Rule mustBeNew(Severity severity, PlaceScope cover, Set<PartKind> kinds, String sentence) {
    return mustBeNew("new", severity, cover, kinds, sentence);
  }

  /** Bans used parts, under a name that no other rule of this number has. */
  Rule mustBeNew(
      String name, Severity severity, PlaceScope cover, Set<PartKind> kinds, String sentence) {
    return then(
        ConsequenceTemplate.ofParts(name, severity, Effect.MUST_BE_NEW, cover, kinds, sentence));
  }

  /** Bans used parts unless the check of this name is passed. */
  Rule forbid(String unless, PlaceScope cover, Set<PartKind> kinds, String sentence) {
    return then(
        ConsequenceTemplate.ofParts(
            unless, Severity.BLOCK, Effect.FORBIDDEN, cover, kinds, sentence));
  }

  /** A thing that carries no tag, wherever the change is made. */
  Rule buy(String name, Count count, Goods what) {
    return buy(name, PlaceScope.HERE, count, what);
  }

  Rule buy(String name, PlaceScope cover, Count count, Goods what) {
    return then(
        ConsequenceTemplate.ofThing(
            name, Effect.BUY, cover, count, what, "Buy new: " + what.words() + "."));
  }

  /** The parts that the change itself brings in. */
  Rule brings(PartKind kind, PlaceScope cover) {
    String sentence = "Buy new: " + kind.plural() + ".";
    return then(
        ConsequenceTemplate.ofParts(
            "part", Severity.WARN, Effect.BUY, cover, Set.of(kind), sentence));
  }

  /** Work that is paid for, wherever the change is made. */
  Rule work(String name, Count count, Goods what) {
    return work(name, PlaceScope.HERE, count, what);
  }

  Rule work(String name, PlaceScope cover, Count count, Goods what) {
    return then(
        ConsequenceTemplate.ofThing(
            name, Effect.WORK, cover, count, what, "Work to pay for: " + what.words() + "."));
  }

  /** A check that parts of these kinds wait for. */
  Rule first(String name, PlaceScope cover, Set<PartKind> kinds, String sentence) {
    return then(
        ConsequenceTemplate.ofParts(
            name, Severity.CHECK, Effect.CHECK_FIRST, cover, kinds, sentence));
  }

  /** A check of these parts that none of them waits for. */
  Rule later(String name, PlaceScope cover, Set<PartKind> kinds, String sentence) {
    return then(
        ConsequenceTemplate.ofParts(
            name, Severity.CHECK, Effect.CHECK_AFTER, cover, kinds, sentence));
  }

  /** A check that no part waits for. */
  Rule after(String name, String sentence) {
    return then(
        ConsequenceTemplate.ofParts(
            name, Severity.CHECK, Effect.CHECK_AFTER, PlaceScope.HERE, Set.of(), sentence));
  }

  Rule know(
      String name, Severity severity, PlaceScope cover, Set<PartKind> kinds, String sentence) {
    return then(ConsequenceTemplate.ofParts(name, severity, Effect.KNOW, cover, kinds, sentence));
  }

  /** What the last consequence buys is of another sort than the old. */
  Rule ofSort(Goods sort) {
    return last(then -> then.ofSort(sort));
  }

  /** The last consequence bans new parts of before, too: they are of the wrong size or sort. */
  Rule because(Renewal why) {
    return last(then -> then.because(why));
  }

  /** Where the last consequence was read, alone of all. */
  Rule from(String book) {
    return last(then -> then.from(book));
  }

  /** What has no tag and is needed where the last check fails. */
  Rule perhaps(Count count, Goods what) {
    return last(then -> then.perhaps(count, what));
  }

  /** The last consequence holds only for such engines. */
  Rule onlyFor(Predicate<Setting> condition) {
    return last(then -> then.only(condition));
  }

  private Rule last(UnaryOperator<ConsequenceTemplate> changed) {
    List<ConsequenceTemplate> more = new ArrayList<>(thens);
    more.set(more.size() - 1, changed.apply(more.get(more.size() - 1)));
    return new Rule(number, title, when, only, more, leadsTo, source);
  }
}
