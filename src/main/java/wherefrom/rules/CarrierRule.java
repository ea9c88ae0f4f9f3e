package wherefrom.rules;

import java.util.Optional;
import wherefrom.parts.BigPartAt;
import wherefrom.parts.BigPartKind;
import wherefrom.parts.Carrier;
import wherefrom.parts.Part;
import wherefrom.parts.Place;

/**
 * Nothing can be in its place while the head or rocker shaft is away that carries it, nor a pushrod
 * or a rocker while its head is off. A job that keeps no such big part says nothing.
 */
public final class CarrierRule implements VerdictRule {
  @Override
  public Optional<Verdict> judge(JobFacts bench, Attempt attempt) {
    Part part = attempt.part();
    return find(bench, part, new Place(part.kind(), attempt.spot()));
  }

  /** What is said of a part that is to go into a place; empty where what carries it is there. */
  public static Optional<Verdict> find(JobFacts bench, Part part, Place place) {
    return findLacking(bench, place)
        .map(one -> new Verdict.NotCleared(part, place, hold(one), why(one), ""));
  }

  /** The big part that a place's part cannot be in without, and that is not there. */
  public static Optional<BigPartAt> findLacking(JobFacts bench, Place place) {
    return Carrier.of(place.kind(), bench.layout().rockers())
        .flatMap(
            carrier ->
                bench
                    .findBigPart(carrier.kind(), place.spot())
                    .filter(one -> carrier.mustBeOn() ? !one.isOn() : one.isAway()));
  }

  private static Hold hold(BigPartAt lacking) {
    if (lacking.part().name().kind() == BigPartKind.ROCKER_SHAFT) {
      return Hold.SHAFT_AWAY;
    }
    return lacking.isAway() ? Hold.HEAD_AWAY : Hold.HEAD_OFF;
  }

  private static String why(BigPartAt lacking) {
    String where =
        switch (lacking.where()) {
          case WASHING -> "off for washing";
          case AT_SHOP -> "at the machine shop";
          case LOST -> "lost";
          default -> "off";
        };
    return "its " + lacking.part().name().kind().word() + " is " + where;
  }
}
