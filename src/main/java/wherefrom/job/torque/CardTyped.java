package wherefrom.job.torque;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.entry.TorqueCardBegun;
import wherefrom.quantity.Amount;
import wherefrom.workings.torque.Stage;
import wherefrom.workings.torque.StageReading;

/**
 * A torque card as it is typed, before it has a number; the fields are those of {@link
 * TorqueCardBegun}.
 *
 * @param stages a torque or an angle each: {@code 30 N·m}, {@code 90 deg}
 */
public record CardTyped(
    String fastener,
    int rows,
    int columns,
    List<Integer> order,
    String orderFrom,
    String threads,
    List<String> stages,
    String source) {
  public CardTyped {
    order = List.copyOf(order);
    stages = List.copyOf(stages);
  }

  /** What is read of it: a card that can be worked with, or what is wrong. */
  SpecReading read() {
    List<Amount> amounts = new ArrayList<>();
    for (String text : stages) {
      StageReading reading = StageReading.of(text);
      if (reading instanceof StageReading.NotUnderstood not) {
        return new SpecReading.Faulty(not.sentence());
      }
      amounts.add(((StageReading.Understood) reading).stage().amount());
    }
    return SpecReading.of(
        new TorqueCardBegun(
            0, fastener, rows, columns, order, orderFrom, threads, amounts, source));
  }

  /** The entry that begins the card, as it was read. */
  TorqueCardBegun entry(int number, SpecReading.Good read) {
    List<Amount> amounts = read.spec().stages().stream().map(Stage::amount).toList();
    return new TorqueCardBegun(
        number, fastener, rows, columns, order, orderFrom, threads, amounts, source);
  }
}
