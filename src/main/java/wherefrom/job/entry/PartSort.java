package wherefrom.job.entry;

import java.util.Locale;
import java.util.Optional;
import wherefrom.engine.LifterType;
import wherefrom.parts.PartKind;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Goods;

/**
 * Of which other sort a new part is than the old one.
 *
 * @param lifters flat or roller; empty of all but lifters
 * @param name what a person called the sort of any other part; empty where nobody did
 */
public record PartSort(Optional<LifterType> lifters, String name) {
  /** The same as the old one. */
  public static final PartSort SAME = new PartSort(Optional.empty(), "");

  /** What a person writes of a part, or a logbook holds. */
  public static PartSort of(String text) {
    String name = text.strip().toLowerCase(Locale.ROOT);
    Optional<LifterType> lifters = LifterType.find(name).or(() -> findPlural(name));
    return new PartSort(lifters, lifters.isPresent() ? "" : name);
  }

  /** Early logbooks may hold the name of all such lifters, as the buying list has it. */
  private static Optional<LifterType> findPlural(String name) {
    return Goods.find(name).flatMap(Goods::findLifters);
  }

  public boolean isSame() {
    return equals(SAME);
  }

  /** As it stands in logbooks and is shown. */
  public String text() {
    return lifters.map(LifterType::id).orElse(name);
  }

  /** What a part of this sort is bought as. */
  public Article article(PartKind kind) {
    Optional<Article> known =
        lifters.filter(type -> kind == PartKind.LIFTER).map(Goods::of).map(Article.Known::new);
    return known.orElseGet(() -> Article.ofId(named(Goods.of(kind).id())));
  }

  private String named(String all) {
    return text().endsWith(all) ? text() : text() + " " + all;
  }
}
