package wherefrom.job.shop;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wherefrom.engine.RodSpot;
import wherefrom.job.EngineJob;
import wherefrom.job.entry.SentToShop;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.rules.consequence.ShopWork;

/**
 * A big end is resized with its cap bolted on, so that rod and cap go to the shop together (common
 * practice, no source).
 */
public final class RodsTogether {
  private final EngineJob job;
  private final List<Part> sent;

  /**
   * @param visit whose parts are looked at
   */
  public RodsTogether(EngineJob job, int visit) {
    this.job = job;
    Set<Integer> items =
        job.standing().stream()
            .filter(logged -> logged.entry() instanceof SentToShop)
            .map(logged -> (SentToShop) logged.entry())
            .filter(went -> went.visit() == visit && went.work() == ShopWork.RESIZE)
            .flatMap(went -> went.items().stream())
            .collect(Collectors.toSet());
    this.sent = items.stream().sorted().map(item -> job.getPart(item).part()).toList();
  }

  /** What has to go besides, in sentences; empty where nothing is apart. */
  public String sentence() {
    return sent.stream()
        .flatMap(part -> missing(part).stream())
        .distinct()
        .collect(Collectors.joining(" "));
  }

  /** What must go with a part that was sent to be resized; empty where it went. */
  public Optional<String> missing(Part part) {
    if (!sent.contains(part)) {
      return Optional.empty();
    }
    boolean cap = part.kind() == PartKind.ROD_CAP;
    PartKind other = cap ? PartKind.ROD : PartKind.ROD_CAP;
    boolean went = sent.stream().anyMatch(one -> one.kind() == other && rod(one) == rod(part));
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
