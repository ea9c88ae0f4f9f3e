package wherefrom.rules.consequence;

import java.util.Optional;
import java.util.function.Predicate;
import wherefrom.engine.Bank;
import wherefrom.engine.Layout;
import wherefrom.engine.MainSpot;
import wherefrom.engine.RodSpot;
import wherefrom.engine.Site;
import wherefrom.engine.Spot;
import wherefrom.engine.ValveSide;
import wherefrom.engine.ValveSpot;
import wherefrom.parts.Mates;
import wherefrom.parts.Place;

/** Which places a consequence concerns, seen from the change. */
enum PlaceScope {
  /** All over the engine. */
  ALL {
    @Override
    Predicate<Place> of(Change change, Layout layout) {
      return place -> true;
    }
  },
  /** The same valve, cylinder, rod or main; all, where the change names none. */
  HERE {
    @Override
    Predicate<Place> of(Change change, Layout layout) {
      Site site = change.site();
      return place -> isIn(site, place.spot(), layout);
    }
  },
  /** The same bank; all, where the change names none. */
  BANK {
    @Override
    Predicate<Place> of(Change change, Layout layout) {
      if (change.where().isEmpty()) {
        return place -> true;
      }
      Optional<Bank> bank = bankOf(change, layout);
      return place ->
          bank.isPresent() && bank.equals(place.spot().findCylinder().flatMap(layout::findBank));
    }
  },
  /** The valves of the bank that the change is about: of one side, where it names one. */
  SIDE {
    @Override
    Predicate<Place> of(Change change, Layout layout) {
      Predicate<Place> bank = BANK.of(change, layout);
      return switch (change.kind()) {
        case LARGER_INTAKE_VALVES -> bank.and(place -> isAt(place, ValveSide.INTAKE));
        case LARGER_EXHAUST_VALVES -> bank.and(place -> isAt(place, ValveSide.EXHAUST));
        default -> bank;
      };
    }
  },
  /** The very place that is named; where only a spot is, all there. */
  SELF {
    @Override
    Predicate<Place> of(Change change, Layout layout) {
      return Place.find(change.where())
          .<Predicate<Place>>map(named -> named::equals)
          .orElseGet(() -> HERE.of(change, layout));
    }
  },
  /** The place itself and its mates. */
  MATES {
    @Override
    Predicate<Place> of(Change change, Layout layout) {
      return Place.find(change.where())
          .<Predicate<Place>>map(
              named -> place -> named.equals(place) || Mates.areMates(named, place))
          .orElse(place -> false);
    }
  };

  /** Whether a place is covered. */
  abstract Predicate<Place> of(Change change, Layout layout);

  private static boolean isAt(Place place, ValveSide side) {
    return place.spot() instanceof ValveSpot valve && valve.side() == side;
  }

  private static boolean isSame(Spot at, Spot other) {
    return at.match(
        other::equals,
        bore -> other.findCylinder().equals(Optional.of(bore.cylinder())),
        rod -> other instanceof RodSpot second && second.cylinder() == rod.cylinder(),
        main -> other instanceof MainSpot second && second.number() == main.number(),
        other::equals);
  }

  private static boolean isIn(Site site, Spot spot, Layout layout) {
    return site.match(
        whole -> true,
        at -> isSame(at.spot(), spot),
        end -> end.equals(Site.around(spot)),
        main -> main.equals(Site.around(spot)),
        named -> isOfBank(spot, named.bank(), layout));
  }

  private static boolean isOfBank(Spot spot, String name, Layout layout) {
    return spot.findCylinder()
        .flatMap(layout::findBank)
        .filter(bank -> bank.name().equals(name))
        .isPresent();
  }

  private static Optional<Bank> bankOf(Change change, Layout layout) {
    return layout.banks().stream()
        .filter(bank -> bank.name().equals(change.where()))
        .findFirst()
        .or(() -> change.findSpot().flatMap(Spot::findCylinder).flatMap(layout::findBank));
  }
}
