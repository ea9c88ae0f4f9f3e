package wherefrom.workings.torque;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A torque card at work: bolts are ticked one by one in the order of the pattern, stage by stage;
 * then a second person ticks each bolt again. Immutable; every tick gives a new card.
 *
 * @param ticks what was done, in the order of doing
 */
public record TorqueCard(TorqueSpec spec, List<Tick> ticks) {
  public TorqueCard {
    ticks = List.copyOf(ticks);
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
    return new TorqueCard(spec, List.of());
  }

  /** The stage that is the second person's. */
  public int checkStage() {
    return spec.stages().size() + 1;
  }

  /** The first bolt without its tick, stage by stage. */
  public NextStep next() {
    for (int stage = 1; stage <= checkStage(); stage++) {
      for (Bolt bolt : order(stage)) {
        if (!isTicked(stage, bolt)) {
          return stage < checkStage()
              ? new NextStep.Tighten(stage, spec.stages().get(stage - 1), bolt)
              : new NextStep.SecondCheck(bolt, spec.stages().get(spec.stages().size() - 1));
        }
      }
    }
    return new NextStep.Done();
  }

  /** Loosened in the reverse order, all else in the order of tightening. */
  private List<Bolt> order(int stage) {
    boolean loosens = stage < checkStage() && spec.stages().get(stage - 1) instanceof Stage.Loosen;
    return loosens ? spec.pattern().loosening() : spec.pattern().order();
  }

  /** The bolt in turn and its stage; empty when nothing is left to do. */
  public Optional<Tick> findDue(String person) {
    return next()
        .match(
            next -> Optional.of(new Tick(next.stageNumber(), next.bolt().number(), person, false)),
            check -> Optional.of(new Tick(checkStage(), check.bolt().number(), person, false)),
            done -> Optional.empty());
  }

  /**
   * The named person did what {@link #next()} asks for, on that bolt.
   *
   * @param outOfTurn whether a bolt that is not due counts, with a mark
   */
  public TorqueAnswer tick(int boltNumber, String person, boolean outOfTurn) {
    String name = person.strip();
    Optional<Tick> due = findDue(name);
    Optional<Bolt> bolt = spec.pattern().find(boltNumber);
    if (due.isEmpty()) {
      return new TorqueAnswer.Refused(next().sentence());
    }
    int stage = due.get().stage();
    Optional<String> fault = findFault(stage, boltNumber, bolt, name);
    if (fault.isPresent()) {
      return new TorqueAnswer.Refused(fault.get());
    }
    boolean inTurn = due.get().bolt() == boltNumber;
    if (!inTurn && !outOfTurn) {
      return question(bolt.orElseThrow(), due.get().bolt());
    }
    return ticked(new Tick(stage, boltNumber, name, !inTurn));
  }

  private Optional<String> findFault(int stage, int number, Optional<Bolt> bolt, String name) {
    if (name.isEmpty()) {
      return Optional.of("Say who is working. A tick needs a name.");
    }
    if (bolt.isEmpty()) {
      return Optional.of(
          "There is no bolt " + number + ": they are numbered 1 to " + bolts() + ".");
    }
    if (isTicked(stage, bolt.get())) {
      return Optional.of("Bolt " + number + " has this stage done. " + next().sentence());
    }
    return stage == checkStage() && hasTightened(name)
        ? Optional.of(name + " tightened some of these bolts: another person must check them.")
        : Optional.empty();
  }

  private TorqueAnswer question(Bolt bolt, int due) {
    return new TorqueAnswer.OutOfTurn(
        bolt,
        spec.pattern().find(due).orElseThrow(),
        "Bolt " + bolt.number() + " is not the next one. " + next().sentence());
  }

  private TorqueAnswer ticked(Tick tick) {
    return new TorqueAnswer.Ticked(with(tick), tick);
  }

  /** With a tick that was judged before. */
  public TorqueCard with(Tick tick) {
    List<Tick> more = new ArrayList<>(ticks);
    more.add(tick);
    return new TorqueCard(spec, more);
  }

  public int bolts() {
    return spec.pattern().order().size();
  }

  /** Whether the bolt has its tick of this stage. */
  public boolean isTicked(int stage, Bolt bolt) {
    return ticks.stream().anyMatch(it -> it.stage() == stage && it.bolt() == bolt.number());
  }

  /** Whether this person, however the name is written, tightened a bolt. */
  public boolean hasTightened(String person) {
    return ticks.stream()
        .anyMatch(it -> it.stage() < checkStage() && it.person().equalsIgnoreCase(person.strip()));
  }

  /** How many bolts have this stage behind them. */
  public int boltsDone(int stage) {
    return (int) ticks.stream().filter(tick -> tick.stage() == stage).count();
  }

  public boolean isChecked(Bolt bolt) {
    return isTicked(checkStage(), bolt);
  }
}
