package wherefrom.workings.torque;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A torque card at work: bolts are ticked one by one in the order of the pattern, stage by stage;
 * then a second person ticks each bolt again. Immutable; every tick gives a new card.
 *
 * @param ticks who tightened, one entry per bolt and stage in order
 * @param checks who checked, one entry per bolt in order
 */
public record TorqueCard(TorqueSpec spec, List<String> ticks, List<String> checks) {
  public TorqueCard {
    ticks = List.copyOf(ticks);
    checks = List.copyOf(checks);
  }

  /**
   * A fresh card.
   *
   * @throws IllegalArgumentException where the specification has a fault
   */
  public static TorqueCard of(TorqueSpec spec) {
    Optional<String> fault = spec.findFault();
    if (fault.isPresent()) {
      throw new IllegalArgumentException(fault.get());
    }
    return new TorqueCard(spec, List.of(), List.of());
  }

  public NextStep next() {
    List<Bolt> order = spec.pattern().order();
    if (ticks.size() < order.size() * spec.stages().size()) {
      int stage = ticks.size() / order.size();
      Bolt bolt = order.get(ticks.size() % order.size());
      return new NextStep.Tighten(stage + 1, spec.stages().get(stage), bolt);
    }
    return checks.size() < order.size()
        ? new NextStep.SecondCheck(order.get(checks.size()))
        : new NextStep.Done();
  }

  /** The named person did what {@link #next()} asks for, on that bolt. */
  public TorqueAnswer tick(int boltNumber, String person) {
    if (person.isBlank()) {
      return new TorqueAnswer.Refused("Say who is working: a tick needs a name.");
    }
    NextStep next = next();
    if (next instanceof NextStep.Tighten tighten) {
      return tighten.bolt().number() == boltNumber
          ? new TorqueAnswer.Ticked(new TorqueCard(spec, with(ticks, person), checks))
          : outOfTurn(boltNumber, next);
    }
    return next instanceof NextStep.SecondCheck check
        ? check(boltNumber, person.strip(), check)
        : new TorqueAnswer.Refused(next.sentence());
  }

  private TorqueAnswer check(int boltNumber, String person, NextStep.SecondCheck check) {
    if (ticks.contains(person)) {
      return new TorqueAnswer.Refused(
          person + " tightened some of these bolts: another person must check them.");
    }
    return check.bolt().number() == boltNumber
        ? new TorqueAnswer.Ticked(new TorqueCard(spec, ticks, with(checks, person)))
        : outOfTurn(boltNumber, check);
  }

  /** The card without its last tick; a fresh card stays as it is. */
  public TorqueCard takenBack() {
    if (!checks.isEmpty()) {
      return new TorqueCard(spec, ticks, checks.subList(0, checks.size() - 1));
    }
    return ticks.isEmpty()
        ? this
        : new TorqueCard(spec, ticks.subList(0, ticks.size() - 1), checks);
  }

  /** How many stages the bolt has behind it. */
  public int stagesDone(Bolt bolt) {
    List<Bolt> order = spec.pattern().order();
    int place = order.indexOf(bolt);
    int whole = ticks.size() / order.size();
    return place < ticks.size() % order.size() ? whole + 1 : whole;
  }

  public boolean isChecked(Bolt bolt) {
    return spec.pattern().order().indexOf(bolt) < checks.size();
  }

  private static TorqueAnswer outOfTurn(int boltNumber, NextStep next) {
    return new TorqueAnswer.Refused(
        "Bolt " + boltNumber + " is not the next one. " + next.sentence());
  }

  private static List<String> with(List<String> names, String person) {
    List<String> more = new ArrayList<>(names);
    more.add(person.strip());
    return more;
  }
}
