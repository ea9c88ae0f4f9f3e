package wherefrom.rules.consequence;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import wherefrom.parts.PartKind;

/**
 * One consequence of a rule, before it is applied to an engine.
 *
 * @param count how what has no place of its own is spread over the engine
 * @param thing what has no place of its own: bought, done, or perhaps needed where a check fails
 * @param sort the sort that what is bought must be of; empty for any
 * @param source where it was read; empty where the rule's own source covers it
 */
record ConsequenceTemplate(
    String name,
    Severity severity,
    Effect effect,
    Set<PartKind> kinds,
    PlaceScope cover,
    Count count,
    Optional<Goods> thing,
    Optional<Goods> sort,
    String sentence,
    Renewal renewal,
    String source,
    Predicate<Setting> only) {

  ConsequenceTemplate {
    kinds = Set.copyOf(kinds);
  }

  /** One that speaks of parts. */
  static ConsequenceTemplate ofParts(
      String name,
      Severity severity,
      Effect effect,
      PlaceScope cover,
      Set<PartKind> kinds,
      String sentence) {
    return new ConsequenceTemplate(
        name,
        severity,
        effect,
        kinds,
        cover,
        Count.ONE,
        Optional.empty(),
        Optional.empty(),
        sentence,
        Renewal.WEAR,
        "",
        setting -> true);
  }

  /** One that speaks of a thing that carries no tag, or of work. */
  static ConsequenceTemplate ofThing(
      String name, Effect effect, PlaceScope cover, Count count, Goods thing, String sentence) {
    return ofParts(name, Severity.WARN, effect, cover, Set.of(), sentence).perhaps(count, thing);
  }

  ConsequenceTemplate only(Predicate<Setting> condition) {
    return with(count, thing, sort, renewal, source, only.and(condition));
  }

  ConsequenceTemplate ofSort(Goods other) {
    return with(
        count, thing, Optional.of(other), kinds.isEmpty() ? renewal : Renewal.SORT, source, only);
  }

  ConsequenceTemplate because(Renewal why) {
    return with(count, thing, sort, why, source, only);
  }

  ConsequenceTemplate from(String book) {
    return with(count, thing, sort, renewal, book, only);
  }

  ConsequenceTemplate perhaps(Count many, Goods what) {
    return with(many, Optional.of(what), sort, renewal, source, only);
  }

  private ConsequenceTemplate with(
      Count many,
      Optional<Goods> what,
      Optional<Goods> other,
      Renewal why,
      String book,
      Predicate<Setting> condition) {
    return new ConsequenceTemplate(
        name, severity, effect, kinds, cover, many, what, other, sentence, why, book, condition);
  }

  /** Whether there is anything in this engine that it speaks of. */
  boolean speaksOf(Setting setting, Change change) {
    return only.test(setting)
        && (kinds.isEmpty() || setting.hasAny(kinds, cover, change))
        && (thing.isEmpty() || !count.at(cover, change, setting).isEmpty());
  }

  Consequence apply(Rule rule, List<Change> chain, Setting setting) {
    Change cause = chain.get(chain.size() - 1);
    return new Consequence(
        rule.number(),
        name,
        severity,
        effect,
        kinds,
        new LinkedHashSet<>(setting.listPlaces(kinds, cover, cause)),
        wanted(setting, cause),
        effect.isCheck() ? Optional.empty() : sort.or(() -> thing),
        sentence,
        renewal,
        source.isEmpty() ? rule.source() : source,
        chain);
  }

  private Optional<Article> article() {
    return sort.map(Article.Known::new);
  }

  /** What must be bought or done; of a check, what must be where it fails. */
  private List<Wanted> wanted(Setting setting, Change cause) {
    if (effect == Effect.KNOW) {
      return List.of();
    }
    Stream<Wanted> things =
        thing.stream()
            .flatMap(
                goods ->
                    count.at(cover, cause, setting).stream()
                        .map(at -> new Wanted(goods, article(), at)));
    Stream<Wanted> parts =
        effect.isCheck() && thing.isPresent()
            ? Stream.empty()
            : setting.listAll(kinds, cover, cause).stream()
                .map(place -> Wanted.of(place, article()));
    return Stream.concat(things, parts).distinct().toList();
  }
}
