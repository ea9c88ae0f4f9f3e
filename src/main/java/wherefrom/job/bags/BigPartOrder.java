package wherefrom.job.bags;

import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import wherefrom.engine.Arrangement;
import wherefrom.engine.ShellHalf;
import wherefrom.engine.Spot;
import wherefrom.job.EngineJob;
import wherefrom.parts.BigPartKind;
import wherefrom.parts.BigPartName;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;

/**
 * In which order big parts come off and go on, and what tagged parts lie under them (common
 * practice, no source). It advises; an engine may be built otherwise.
 */
public final class BigPartOrder {
  private static final Set<PartKind> VALVETRAIN =
      EnumSet.of(PartKind.ROCKER, PartKind.PIVOT, PartKind.PUSHROD);
  private static final Set<PartKind> IN_THE_HEAD =
      EnumSet.of(PartKind.KEEPERS, PartKind.RETAINER, PartKind.SPRING, PartKind.VALVE);
  private static final Set<PartKind> BOTTOM_END =
      EnumSet.of(
          PartKind.ROD_CAP,
          PartKind.ROD_SHELL,
          PartKind.ROD,
          PartKind.PISTON,
          PartKind.MAIN_CAP,
          PartKind.MAIN_SHELL);

  private final EngineJob job;
  private final Collection<BigPartRecord> all;

  public BigPartOrder(EngineJob job, BagBook book) {
    this.job = job;
    this.all = book.bigParts();
  }

  /** The big parts that are on the engine and in the way of one that is to come off. */
  public List<BigPartRecord> over(BigPartName name) {
    return all.stream()
        .filter(BigPartRecord::isOn)
        .filter(other -> isOver(other.part().name(), name))
        .toList();
  }

  /** The tagged parts that hold a big part on the engine, still inside, in their usual order. */
  public List<Part> holding(BigPartName name) {
    Set<PartKind> kinds = holding(name.kind());
    if (kinds.isEmpty()) {
      return List.of();
    }
    return job.places().stream()
        .filter(place -> kinds.contains(place.kind()) && isUnder(name, place))
        .flatMap(place -> job.findOwner(place).stream())
        .filter(part -> job.whereabouts(part.item()) == Whereabouts.IN_ENGINE)
        .toList();
  }

  /** The big parts that are off and go on before this one. */
  public List<BigPartRecord> under(BigPartName name) {
    return all.stream()
        .filter(other -> !other.isOn())
        .filter(other -> isOver(name, other.part().name()))
        .toList();
  }

  /** The places under a big part that are still to fit, which it would cover. */
  public List<Place> covered(BigPartName name) {
    Set<PartKind> kinds = covered(name.kind());
    return job.places().stream()
        .filter(place -> kinds.contains(place.kind()) && isUnder(name, place))
        .filter(place -> isReached(name.kind(), place.spot()))
        .filter(place -> !job.isFilled(place))
        .toList();
  }

  /** The big parts on the engine that cover a place whose part is to come out. */
  public List<BigPartRecord> over(Place place) {
    return all.stream()
        .filter(BigPartRecord::isOn)
        .filter(part -> isCovered(part.part().name(), place))
        .toList();
  }

  /** The big part that usually comes off next; empty when none is left, or parts come first. */
  public Optional<BigPartRecord> findNextOff() {
    return all.stream()
        .filter(part -> part.where() == Whereabouts.IN_ENGINE)
        .filter(part -> over(part.part().name()).isEmpty())
        .filter(part -> holding(part.part().name()).isEmpty())
        .min(BigPartOrder::compare);
  }

  /** The big part that usually goes on next; empty when none is left, or parts come first. */
  public Optional<BigPartRecord> findNextOn() {
    return all.stream()
        .filter(part -> !part.isOn())
        .filter(part -> under(part.part().name()).isEmpty())
        .filter(part -> covered(part.part().name()).isEmpty())
        .max(BigPartOrder::compare);
  }

  /**
   * The big part to take off now: before the next tagged part, or once all of those are out.
   *
   * @param next the place of the tagged part that comes out next; empty when all are out
   * @param passed numbers that the person leaves for later; they are in nobody's way
   */
  public Optional<BigPartRecord> findLead(Optional<Place> next, Set<Integer> passed) {
    return all.stream()
        .filter(part -> part.where() == Whereabouts.IN_ENGINE && !passed.contains(part.number()))
        .filter(part -> next.isEmpty() || isBefore(part.part().name(), next.get()))
        .filter(part -> over(part.part().name()).stream().allMatch(it -> isIn(passed, it)))
        .filter(part -> holding(part.part().name()).isEmpty())
        .min(BigPartOrder::compare);
  }

  private static boolean isIn(Set<Integer> passed, BigPartRecord part) {
    return passed.contains(part.number());
  }

  private static boolean isBefore(BigPartName name, Place place) {
    return name.kind() != BigPartKind.OWN && name.kind().compareTo(lastBefore(place.kind())) <= 0;
  }

  /** The last big part that usually is off before a kind of part comes out. */
  private static BigPartKind lastBefore(PartKind kind) {
    return switch (kind) {
      case ROCKER, PIVOT, PUSHROD -> BigPartKind.ROCKER_SHAFT;
      case LIFTER -> BigPartKind.LIFTER_COVER;
      case KEEPERS, RETAINER, SPRING, VALVE -> BigPartKind.HEAD;
      case ROD_CAP, ROD_SHELL, ROD, PISTON -> BigPartKind.OIL_PUMP;
      case MAIN_CAP -> BigPartKind.REAR_SEAL;
      case MAIN_SHELL, CAM_BEARING -> BigPartKind.CRANKSHAFT;
    };
  }

  /**
   * Whether a place lies under a big part that tagged parts still hold on the engine: an upper main
   * shell under the crank waits for the other caps.
   */
  public Predicate<Place> underHeld() {
    List<BigPartName> held =
        all.stream()
            .filter(BigPartRecord::isOn)
            .map(part -> part.part().name())
            .filter(name -> !holding(name).isEmpty())
            .toList();
    return place -> held.stream().anyMatch(name -> isCovered(name, place));
  }

  private boolean isCovered(BigPartName name, Place place) {
    return covered(name.kind()).contains(place.kind())
        && isUnder(name, place)
        && isReached(name.kind(), place.spot());
  }

  /** The big parts that are off and that a place's part is fitted onto: the head to a pushrod. */
  public List<BigPartRecord> firstOn(Place place) {
    return all.stream()
        .filter(part -> !part.isOn())
        .filter(part -> holding(part.part().name().kind()).contains(place.kind()))
        .filter(part -> isUnder(part.part().name(), place))
        .toList();
  }

  private static int compare(BigPartRecord one, BigPartRecord other) {
    int kinds = one.part().name().kind().compareTo(other.part().name().kind());
    return kinds != 0 ? kinds : Integer.compare(one.number(), other.number());
  }

  private static boolean isOver(BigPartName over, BigPartName under) {
    return over(under.kind()).contains(over.kind()) && over.isBeside(under);
  }

  private static Set<BigPartKind> over(BigPartKind kind) {
    return switch (kind) {
      case INTAKE -> EnumSet.of(BigPartKind.CARBURETOR);
      case ROCKER_SHAFT -> EnumSet.of(BigPartKind.VALVE_COVER);
      case HEAD ->
          EnumSet.of(
              BigPartKind.VALVE_COVER,
              BigPartKind.ROCKER_SHAFT,
              BigPartKind.INTAKE,
              BigPartKind.EXHAUST);
      case FRONT_COVER -> EnumSet.of(BigPartKind.WATER_PUMP, BigPartKind.DAMPER);
      case TIMING_SET -> EnumSet.of(BigPartKind.FRONT_COVER);
      case CAMSHAFT ->
          EnumSet.of(BigPartKind.TIMING_SET, BigPartKind.DISTRIBUTOR, BigPartKind.FUEL_PUMP);
      case OIL_PUMP -> EnumSet.of(BigPartKind.PAN);
      case REAR_SEAL -> EnumSet.of(BigPartKind.FLYWHEEL);
      case CRANKSHAFT ->
          EnumSet.of(
              BigPartKind.TIMING_SET,
              BigPartKind.PAN,
              BigPartKind.OIL_PUMP,
              BigPartKind.FLYWHEEL,
              BigPartKind.REAR_SEAL);
      default -> EnumSet.noneOf(BigPartKind.class);
    };
  }

  /** What must be out before a big part can come off. */
  private static Set<PartKind> holding(BigPartKind kind) {
    return switch (kind) {
      case HEAD -> EnumSet.of(PartKind.ROCKER, PartKind.PUSHROD);
      case CAMSHAFT -> EnumSet.of(PartKind.LIFTER);
      case CRANKSHAFT -> EnumSet.of(PartKind.ROD_CAP, PartKind.MAIN_CAP);
      default -> EnumSet.noneOf(PartKind.class);
    };
  }

  /** What a big part covers. */
  private Set<PartKind> covered(BigPartKind kind) {
    return switch (kind) {
      case VALVE_COVER -> VALVETRAIN;
      case INTAKE ->
          job.layout().arrangement() == Arrangement.V
              ? EnumSet.of(PartKind.LIFTER)
              : EnumSet.noneOf(PartKind.class);
      case LIFTER_COVER -> EnumSet.of(PartKind.LIFTER);
      case HEAD -> union(IN_THE_HEAD, PartKind.PISTON);
      case PAN -> BOTTOM_END;
      case CAMSHAFT -> EnumSet.of(PartKind.CAM_BEARING);
      case CRANKSHAFT -> EnumSet.of(PartKind.MAIN_SHELL);
      default -> EnumSet.noneOf(PartKind.class);
    };
  }

  private static Set<PartKind> union(Set<PartKind> kinds, PartKind more) {
    Set<PartKind> all = EnumSet.copyOf(kinds);
    all.add(more);
    return all;
  }

  /** The crank covers the upper shells; the lower ones come with their caps after it. */
  private static boolean isReached(BigPartKind kind, Spot spot) {
    return kind != BigPartKind.CRANKSHAFT || spot.findHalf().equals(Optional.of(ShellHalf.UPPER));
  }

  /** What belongs to no cylinder lies under every bank. */
  private boolean isUnder(BigPartName name, Place place) {
    return place
        .spot()
        .findCylinder()
        .flatMap(job.layout()::findBank)
        .map(name::isOver)
        .orElse(true);
  }
}
