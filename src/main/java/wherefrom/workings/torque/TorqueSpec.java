package wherefrom.workings.torque;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.workings.Source;

/**
 * What a set of bolts is to be tightened to.
 *
 * @param fastener such as "head bolts, left bank"
 * @param threads how the threads are prepared, such as "oiled": a torque holds for that alone
 * @param stages the rounds in their order
 * @param source where the figures come from
 */
public record TorqueSpec(
    String fastener, BoltPattern pattern, String threads, List<Stage> stages, Source source) {
  public TorqueSpec {
    stages = List.copyOf(stages);
  }

  /** What is wrong with the card, as a sentence; empty where nothing is. */
  public Optional<String> findFault() {
    if (fastener.isBlank()) {
      return Optional.of("Say which bolts these are.");
    }
    if (threads.isBlank()) {
      return Optional.of("Say how the threads are prepared: dry, oiled or with sealer.");
    }
    if (source.text().isBlank()) {
      return Optional.of(
          "Say where the figures come from: your engine's service information, and page.");
    }
    if (stages.isEmpty() || !(stages.get(0) instanceof Stage.ToTorque)) {
      return Optional.of("Start with a torque stage.");
    }
    return findStageFault();
  }

  private Optional<String> findStageFault() {
    return IntStream.range(0, stages.size())
        .mapToObj(this::findStageFault)
        .flatMap(Optional::stream)
        .findFirst();
  }

  /** What is wrong with a stage, where nothing is with those before. */
  private Optional<String> findStageFault(int at) {
    return stages
        .get(at)
        .match(
            torque -> findFault(torque, at),
            angle -> findFault(angle, at),
            loosen -> findFaultOfLoosening(at));
  }

  private Optional<String> findFault(Stage.ByAngle angle, int at) {
    if (stages.get(at - 1) instanceof Stage.Loosen) {
      return Optional.of("After loosening, give a torque. An angle counts from there.");
    }
    return isPositive(angle.amount(), Dimension.ANGLE)
        ? Optional.empty()
        : Optional.of("An angle stage needs an angle of more than 0 deg.");
  }

  /** Bolts are loosened between two torques only. */
  private Optional<String> findFaultOfLoosening(int at) {
    boolean twice = stages.get(at - 1) instanceof Stage.Loosen;
    return twice || at == stages.size() - 1
        ? Optional.of("After loosening, give a torque. The bolts must end up tight.")
        : Optional.empty();
  }

  private Optional<String> findFault(Stage.ToTorque stage, int at) {
    Amount torque = stage.amount();
    if (!isPositive(torque, Dimension.TORQUE)) {
      return Optional.of("A torque stage needs more than 0 lb·ft or N·m.");
    }
    return at == 0 || isNoLess(torque, stages.get(at - 1))
        ? Optional.empty()
        : Optional.of(
            "A torque must be no less than the one before. None may follow an angle stage. "
                + torque.text()
                + " needs a loosening stage before it.");
  }

  private static boolean isNoLess(Amount torque, Stage before) {
    return before.match(
        less -> torque.inBase().compareTo(less.amount().inBase()) >= 0,
        angle -> false,
        loosen -> true);
  }

  private static boolean isPositive(Amount amount, Dimension dimension) {
    return amount.dimension() == dimension && amount.number().signum() > 0;
  }
}
