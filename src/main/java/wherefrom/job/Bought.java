package wherefrom.job;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wherefrom.engine.LifterType;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartReplaced;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;
import wherefrom.rules.consequence.Consequence;
import wherefrom.rules.consequence.Effect;
import wherefrom.rules.consequence.Wanted;

/** The new parts that were taken on, and whether they serve what is asked for after them. */
final class Bought {
  private static final Pattern SIZE = Pattern.compile("\\s*([0-9]+[.,]?[0-9]*)\\s*(in|mm)\\b.*");

  private final EngineJob job;
  private final Map<Integer, PartReplaced> taken = new HashMap<>();
  private final Map<Integer, Long> since = new HashMap<>();
  private final Set<Integer> run = new HashSet<>();

  Bought(EngineJob job) {
    this.job = job;
    for (LoggedEntry logged : job.standing()) {
      if (logged.entry() instanceof PartReplaced replaced) {
        taken.put(replaced.newItem(), replaced);
        since.put(replaced.newItem(), logged.sequence());
      } else if (logged.entry() instanceof PartFitted fit) {
        run.add(fit.item());
      }
    }
  }

  /** The sort of a new part in words, such as {@code roller lifters}; empty for the usual one. */
  String sort(Part part) {
    String said = taken.get(part.item()).sort().strip();
    String plural = part.kind().plural();
    if (!said.isEmpty()) {
      return said.endsWith(plural) ? said : said + " " + plural;
    }
    return job.rules().all().stream()
        .filter(rule -> rule.sequence() < since.get(part.item()))
        .filter(rule -> rule.consequence().isOtherSort())
        .filter(rule -> rule.consequence().places().contains(part.home()))
        .max(Comparator.comparingLong(StandingRule::sequence))
        .map(rule -> rule.consequence().what())
        .orElse("");
  }

  /** Whether a lifter is flat or a roller: as the engine came in, or as it was bought. */
  LifterType lifterType(Part lifter) {
    String sort = lifter.fresh() ? sort(lifter) : "";
    return sort.startsWith("roller")
        ? LifterType.ROLLER
        : sort.startsWith("flat") ? LifterType.FLAT : job.layout().lifters();
  }

  /** Whether the new part that is in use at a place does for what a coming change asks there. */
  boolean serves(Place place, Consequence asked) {
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
      case SIZE -> isOfSize(taken.get(part.item()), asked.firstCause().detail());
      case SORT -> asked.isOtherSort() && sort(part).equals(asked.what());
    };
  }

  private static boolean isOfSize(PartReplaced bought, String detail) {
    Matcher wanted = SIZE.matcher(detail);
    Matcher has = SIZE.matcher(bought.size() + " " + bought.unit());
    return wanted.matches()
        && has.matches()
        && wanted.group(2).equals(has.group(2))
        && number(wanted).compareTo(number(has)) == 0;
  }

  private static BigDecimal number(Matcher size) {
    return new BigDecimal(size.group(1).replace(',', '.'));
  }

  /** The key under which a part at this place is bought. */
  static String at(Place place) {
    return Wanted.of(place, "").at();
  }
}
