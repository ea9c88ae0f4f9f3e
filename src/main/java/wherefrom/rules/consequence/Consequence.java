package wherefrom.rules.consequence;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/**
 * What follows from a change.
 *
 * @param rule the rule's short name, such as {@code R1}
 * @param name the consequence's own name within the rule
 * @param kinds the kinds of part concerned; empty where none is tracked by tags
 * @param places the tracked places concerned, in the order of taking apart
 * @param wanted each piece to buy and each piece of work to pay for; of a check, what must be
 *     bought where it fails
 * @param goods what to buy or to have done; with kinds, the sort that the new parts are of, where
 *     it is another than the old ones'
 * @param sentence for a person
 * @param renewal why banned parts must be renewed; wear where nothing is banned
 * @param source where the rule comes from
 * @param chain the changes that led here, the first cause first
 */
public record Consequence(
    String rule,
    String name,
    Severity severity,
    Effect effect,
    Set<PartKind> kinds,
    Set<Place> places,
    List<Wanted> wanted,
    Optional<Goods> goods,
    String sentence,
    Renewal renewal,
    String source,
    List<Change> chain) {
  private static final int MOST_NAMED = 8;

  public Consequence {
    kinds = Set.copyOf(kinds);
    places = Collections.unmodifiableSet(new LinkedHashSet<>(places));
    wanted = List.copyOf(wanted);
    chain = List.copyOf(chain);
  }

  /** The same, concerning these places. */
  public Consequence at(Set<Place> concerned) {
    return new Consequence(
        rule, name, severity, effect, kinds, concerned, wanted, goods, sentence, renewal, source,
        chain);
  }

  /** The change that it follows from directly. */
  public Change cause() {
    return chain.get(chain.size() - 1);
  }

  /** The change that a person made, planned or found. */
  public Change firstCause() {
    return chain.get(0);
  }

  /** The name by which a check is answered: {@code R11:pushrod-length@left}. Never changes. */
  public String key() {
    return checkKey().text();
  }

  /** See {@link #key()}. */
  public CheckKey checkKey() {
    return new CheckKey(rule, name, cause().where());
  }

  /** The chain of reasons in words, the first cause first. */
  public List<String> reasons() {
    return chain.stream().map(Change::words).toList();
  }

  /** How many pieces it asks for, whatever comes of any check. */
  public int pieces() {
    return effect.isCheck() ? 0 : wanted.size();
  }

  /** Whether the new parts are of another sort than the old ones, and so of another price. */
  public boolean isOtherSort() {
    return effect.bans() && !kinds.isEmpty() && goods.isPresent();
  }

  /** The sort that its new parts must be of; empty where any will do. */
  public Optional<Goods> findSort() {
    return isOtherSort() ? goods : Optional.empty();
  }

  /** {@code rod shells, main shells}; what is bought, where it has words of its own. */
  public String subject() {
    if (kinds.isEmpty() || isOtherSort()) {
      return goods.map(Goods::words).orElse("");
    }
    return String.join(", ", new TreeSet<>(kinds).stream().map(PartKind::plural).toList());
  }

  /** {@code must be new: 16 lifters}, {@code buy new: cam}, {@code check before closing}. */
  public String headline() {
    String whole = subject();
    if (whole.isEmpty()) {
      return effect.words();
    }
    return effect.words() + ": " + (pieces() > 1 ? pieces() + " " : "") + whole;
  }

  /**
   * The places concerned: {@code at 3 EX, 5 EX}; the first of them where they are many. Where its
   * kinds are not tracked, that nothing holds them up but the person.
   */
  public String whereWords() {
    if (kinds.isEmpty()) {
      return "";
    }
    if (places.isEmpty()) {
      return "not tracked here: no tag will stop them, check it yourself";
    }
    List<String> figures = places.stream().map(Place::figures).distinct().toList();
    if (figures.size() <= MOST_NAMED) {
      return "at " + String.join(", ", figures);
    }
    return "at "
        + String.join(", ", figures.subList(0, MOST_NAMED - 2))
        + " and "
        + (figures.size() - MOST_NAMED + 2)
        + " more places";
  }

  /** What a rule is called where people read it: {@code rule 11}; R11 would be a rod. */
  public static String ruleWords(String rule) {
    return "rule " + rule.substring(1);
  }

  public String ruleWords() {
    return ruleWords(rule);
  }
}
