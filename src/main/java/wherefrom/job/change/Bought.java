package wherefrom.job.change;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wherefrom.engine.LifterType;
import wherefrom.job.EngineJob;
import wherefrom.job.EntryFold;
import wherefrom.job.LoggedEntry;
import wherefrom.job.StandingRule;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartReplaced;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;
import wherefrom.quantity.Amount;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Consequence;
import wherefrom.rules.consequence.Effect;
import wherefrom.rules.consequence.Goods;
import wherefrom.rules.consequence.Wanted;

/** The new parts that were taken on, and whether they serve what is asked for after them. */
public final class Bought {
  private static final EntryFold<Bought> READS =
      EntryFold.<Bought>none()
          .at(PartReplaced.class, Bought::take)
          .on(PartFitted.class, (bought, fit) -> bought.run.add(fit.item()));

  private final EngineJob job;

  /** A new part as it was taken on, and by which entry. */
  private record Taken(PartReplaced entry, long sequence) {}

  private final Map<Integer, Taken> taken = new HashMap<>();
  private final Set<Integer> run = new HashSet<>();

  private Bought(EngineJob job) {
    this.job = job;
  }

  public static Bought of(EngineJob job) {
    return job.remember(Bought.class, state -> READS.all(new Bought(state), state.standing()));
  }

  private void take(PartReplaced replaced, LoggedEntry logged) {
    taken.put(replaced.newItem(), new Taken(replaced, logged.sequence()));
  }

  /** The sort of a new part, such as roller lifters; empty for the usual one. */
  public Optional<Article> findSort(Part part) {
    return findTaken(part).flatMap(one -> findSort(part, one));
  }

  private Optional<Taken> findTaken(Part part) {
    return Optional.ofNullable(taken.get(part.item()));
  }

  private Optional<Article> findSort(Part part, Taken one) {
    if (!one.entry().sort().isSame()) {
      return Optional.of(one.entry().sort().article(part.kind()));
    }
    return job.rules().all().stream()
        .filter(rule -> rule.sequence() < one.sequence())
        .filter(rule -> rule.consequence().isOtherSort())
        .filter(rule -> rule.consequence().places().contains(part.home()))
        .max(Comparator.comparingLong(StandingRule::sequence))
        .flatMap(rule -> rule.consequence().findSort())
        .map(Article.Known::new);
  }

  /** Whether a lifter is flat or a roller: as the engine came in, or as it was bought. */
  public LifterType lifterType(Part lifter) {
    Optional<Article> sort = lifter.fresh() ? findSort(lifter) : Optional.empty();
    return sort.flatMap(Article::findGoods)
        .flatMap(Goods::findLifters)
        .orElse(job.layout().lifters());
  }

  /** Whether the new part that is in use at a place does for what a coming change asks there. */
  public boolean serves(Place place, Consequence asked) {
    return job.findOwner(place)
        .filter(part -> part.fresh() && job.whereabouts(part.item()) != Whereabouts.RETIRED)
        .filter(part -> serves(part, asked))
        .isPresent();
  }

  private boolean serves(Part part, Consequence asked) {
    if (asked.effect() == Effect.BUY) {
      return true;
    }
    return switch (asked.renewal()) {
      case WEAR -> !run.contains(part.item());
      case SIZE ->
          findTaken(part)
              .filter(one -> isOfSize(one.entry(), asked.firstCause().size()))
              .isPresent();
      case SORT -> asked.findSort().filter(sort -> isOf(part, sort)).isPresent();
    };
  }

  private boolean isOf(Part part, Goods sort) {
    return findSort(part).flatMap(Article::findGoods).filter(sort::equals).isPresent();
  }

  private static boolean isOfSize(PartReplaced bought, Optional<Amount> asked) {
    return asked.flatMap(wanted -> bought.size().map(has -> isSame(wanted, has))).orElse(false);
  }

  private static boolean isSame(Amount one, Amount other) {
    return one.inBase().compareTo(other.inBase()) == 0;
  }

  /** The key under which a part at this place is bought. */
  public static String at(Place place) {
    return Wanted.of(place, Optional.empty()).at();
  }
}
