package wherefrom.job.shop;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wherefrom.engine.RodSpot;
import wherefrom.job.EngineJob;
import wherefrom.job.entry.SentToShop;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.rules.consequence.ShopWork;

/**
 * A big end is measured and resized with its cap bolted on, so that rod and cap go to the shop
 * together; a cap by itself is of use there for no work but a look for cracks (common practice, no
 * source).
 */
public final class RodsTogether {
  private static final Set<ShopWork> BOTH = EnumSet.of(ShopWork.RESIZE, ShopWork.OTHER);

  private final EngineJob job;

  /** What was sent with the visit, and for what. */
  private final Map<Part, ShopWork> sent = new LinkedHashMap<>();

  /**
   * @param visit whose parts are looked at
   */
  public RodsTogether(EngineJob job, int visit) {
    this.job = job;
    job.standing().stream()
        .flatMap(
            logged -> logged.entry() instanceof SentToShop went ? Stream.of(went) : Stream.empty())
        .filter(went -> went.visit() == visit && BOTH.contains(went.work()))
        .forEach(went -> went.items().forEach(it -> sent.put(job.getPart(it).part(), went.work())));
  }

  /** What has to go besides, in sentences; empty where nothing is apart. */
  public String sentence() {
    return sent.keySet().stream()
        .sorted(Comparator.comparingInt(Part::item))
        .flatMap(part -> missing(part).stream())
        .distinct()
        .collect(Collectors.joining(" "));
  }

  /** What must go with a part that was sent; empty where it went, or nothing need go with it. */
  public Optional<String> missing(Part part) {
    boolean cap = part.kind() == PartKind.ROD_CAP;
    if (sent.get(part) != ShopWork.RESIZE && !(cap && sent.containsKey(part))) {
      return Optional.empty();
    }
    PartKind other = cap ? PartKind.ROD : PartKind.ROD_CAP;
    boolean went =
        sent.keySet().stream().anyMatch(one -> one.kind() == other && rod(one) == rod(part));
    String name = cap ? "Rod " + rod(part) : "The cap of rod " + rod(part);
    String tagged = job.kinds().contains(other) ? "" : " It has no tag: send it along.";
    return went
        ? Optional.empty()
        : Optional.of(name + " must go too, with both bolted together." + tagged);
  }

  private static int rod(Part part) {
    return part.home().spot() instanceof RodSpot spot ? spot.cylinder() : 0;
  }
}
