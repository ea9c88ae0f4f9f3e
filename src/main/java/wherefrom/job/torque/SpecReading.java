package wherefrom.job.torque;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.job.entry.TorqueCardBegun;
import wherefrom.quantity.Amount;
import wherefrom.workings.Source;
import wherefrom.workings.torque.BoltPattern;
import wherefrom.workings.torque.Stage;
import wherefrom.workings.torque.StageReading;
import wherefrom.workings.torque.TorqueSpec;

/** The outcome of reading what was typed for a torque card. */
public sealed interface SpecReading {
  /** A card that can be worked with. */
  record Good(TorqueSpec spec) implements SpecReading {}

  /** It cannot; the sentence says what is missing or wrong. */
  record Faulty(String sentence) implements SpecReading {}

  /** Reads a card. */
  static SpecReading of(TorqueCardBegun typed) {
    Optional<BoltPattern> pattern = findPattern(typed);
    if (pattern.isEmpty()) {
      return new Faulty(
          "Name each bolt once, in tightening order. The grid has 1 to "
              + BoltPattern.MOST_ROWS
              + " rows and 1 to "
              + BoltPattern.MOST_COLUMNS
              + " columns.");
    }
    List<Stage> stages = new ArrayList<>();
    for (Amount amount : typed.stages()) {
      StageReading reading = StageReading.of(amount);
      if (reading instanceof StageReading.NotUnderstood not) {
        return new Faulty(not.sentence());
      }
      stages.add(again(((StageReading.Understood) reading).stage(), stages));
    }
    TorqueSpec spec =
        new TorqueSpec(
            typed.fastener(),
            pattern.get(),
            typed.threads(),
            stages,
            Source.published(typed.source()));
    return spec.findFault().<SpecReading>map(Faulty::new).orElseGet(() -> new Good(spec));
  }

  /** A second round to the same torque says so. */
  private static Stage again(Stage stage, List<Stage> before) {
    if (stage instanceof Stage.ToTorque torque
        && !before.isEmpty()
        && before.get(before.size() - 1) instanceof Stage.ToTorque last) {
      boolean same = torque.amount().inBase().compareTo(last.amount().inBase()) == 0;
      return new Stage.ToTorque(torque.amount(), same);
    }
    return stage;
  }

  private static Optional<BoltPattern> findPattern(TorqueCardBegun typed) {
    Source from =
        typed.orderFrom().isBlank() ? Source.commonPractice() : Source.published(typed.orderFrom());
    return BoltPattern.findOwn(typed.rows(), typed.columns(), typed.order(), from);
  }
}
