package wherefrom.rules.consequence;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import wherefrom.parts.PartKind;

/**
 * One rule: when such a change is made, this follows.
 *
 * @param number its short name, {@code R1} to {@code R32}
 * @param title what it is about
 * @param when the changes that it acts on
 * @param leadsTo changes that follow from it and have rules of their own
 */
public record Rule(
    String number,
    String title,
    Set<ChangeKind> when,
    Predicate<Setting> only,
    List<Then> thens,
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

  Rule then(Then then) {
    List<Then> more = new ArrayList<>(thens);
    more.add(then);
    return new Rule(number, title, when, only, more, leadsTo, source);
  }

  /** Bans used parts; {@code severity} says how hard. */
  Rule mustBeNew(Severity severity, Cover cover, Set<PartKind> kinds, String sentence) {
    return mustBeNew("new", severity, cover, kinds, sentence);
  }

  /** Bans used parts, under a name that no other rule of this number has. */
  Rule mustBeNew(
      String name, Severity severity, Cover cover, Set<PartKind> kinds, String sentence) {
    return then(
        new Then(
            name,
            severity,
            Effect.MUST_BE_NEW,
            kinds,
            cover,
            Count.ONE,
            "",
            sentence,
            Renewal.WEAR,
            s -> true));
  }

  /** Bans used parts unless the check of this name is passed. */
  Rule forbid(String unless, Cover cover, Set<PartKind> kinds, String sentence) {
    return then(
        new Then(
            unless,
            Severity.BLOCK,
            Effect.FORBIDDEN,
            kinds,
            cover,
            Count.ONE,
            "",
            sentence,
            Renewal.WEAR,
            s -> true));
  }

  Rule buy(String name, Count count, String what) {
    return then(
        new Then(
            name,
            Severity.WARN,
            Effect.BUY,
            Set.of(),
            Cover.ALL,
            count,
            what,
            "Buy new: " + what + ".",
            Renewal.WEAR,
            s -> true));
  }

  /** A check that parts of these kinds wait for. */
  Rule first(String name, Cover cover, Set<PartKind> kinds, String sentence) {
    return check(name, Effect.CHECK_FIRST, cover, kinds, sentence);
  }

  /** A check of these parts that none of them waits for. */
  Rule later(String name, Cover cover, Set<PartKind> kinds, String sentence) {
    return check(name, Effect.CHECK_AFTER, cover, kinds, sentence);
  }

  /** A check that no part waits for. */
  Rule after(String name, String sentence) {
    return check(name, Effect.CHECK_AFTER, Cover.ALL, Set.of(), sentence);
  }

  private Rule check(
      String name, Effect effect, Cover cover, Set<PartKind> kinds, String sentence) {
    return then(
        new Then(
            name,
            Severity.CHECK,
            effect,
            kinds,
            cover,
            Count.ONE,
            "",
            sentence,
            Renewal.WEAR,
            s -> true));
  }

  Rule know(String name, Severity severity, Cover cover, Set<PartKind> kinds, String sentence) {
    return then(
        new Then(
            name,
            severity,
            Effect.KNOW,
            kinds,
            cover,
            Count.ONE,
            "",
            sentence,
            Renewal.WEAR,
            s -> true));
  }

  /** The new parts of the last consequence are of another sort than the old ones. */
  Rule ofSort(String words) {
    List<Then> more = new ArrayList<>(thens);
    more.set(more.size() - 1, more.get(more.size() - 1).ofSort(words));
    return new Rule(number, title, when, only, more, leadsTo, source);
  }

  /** The last consequence bans new parts of before, too: they are of the wrong size or sort. */
  Rule because(Renewal why) {
    List<Then> more = new ArrayList<>(thens);
    more.set(more.size() - 1, more.get(more.size() - 1).because(why));
    return new Rule(number, title, when, only, more, leadsTo, source);
  }

  /** The last consequence holds only for such engines. */
  Rule onlyFor(Predicate<Setting> condition) {
    List<Then> more = new ArrayList<>(thens);
    more.set(more.size() - 1, more.get(more.size() - 1).only(condition));
    return new Rule(number, title, when, only, more, leadsTo, source);
  }
}
