package wherefrom.job.bags;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wherefrom.engine.Bank;
import wherefrom.engine.Layout;
import wherefrom.engine.Spot;
import wherefrom.job.EngineJob;
import wherefrom.parts.BigPartAt;
import wherefrom.parts.BigPartKind;

/** The heads and rocker shafts of a job, and where they are: what every drawing of it follows. */
public record CarriersAt(List<BigPartAt> all) {
  private static final Set<BigPartKind> CARRIERS =
      EnumSet.of(BigPartKind.HEAD, BigPartKind.ROCKER_SHAFT);

  public CarriersAt {
    all = List.copyOf(all);
  }

  /** Those of a job; none where it keeps no big parts. */
  public static CarriersAt of(EngineJob job) {
    return new CarriersAt(
        BagBook.of(job).bigParts().stream()
            .filter(big -> CARRIERS.contains(big.part().name().kind()))
            .map(big -> new BigPartAt(big.part(), big.where()))
            .toList());
  }

  /** The head or rocker shaft that belongs to a spot; empty where the job keeps none. */
  public Optional<BigPartAt> find(Layout layout, BigPartKind kind, Spot spot) {
    Optional<Bank> bank = spot.findCylinder().flatMap(layout::findBank);
    return all.stream()
        .filter(one -> one.part().name().kind() == kind)
        .filter(one -> bank.filter(of -> !one.part().name().isOver(of)).isEmpty())
        .findFirst();
  }
}
