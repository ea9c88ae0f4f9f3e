package wherefrom.referee;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wherefrom.engine.Arrangement;
import wherefrom.engine.Bank;
import wherefrom.engine.Layout;
import wherefrom.engine.LifterType;
import wherefrom.engine.RockerMount;

/** The engines that are judged, as the referee and as the program have them. */
record Engines(Motor motor, Layout layout) {

  /** Two cylinders in line, three mains, the last takes the thrust. */
  static Engines twoCylinders(boolean roller) {
    Bank bank = new Bank("single", List.of(1, 2), "EIIE");
    return of(Arrangement.INLINE, List.of(bank), List.of(1, 2), 3, 3, true, 2, roller);
  }

  /** Eight cylinders in a V, odd numbers left. */
  static Engines v8(boolean roller) {
    Bank left = new Bank("left", List.of(1, 3, 5, 7), "EIIEEIIE");
    Bank right = new Bank("right", List.of(2, 4, 6, 8), "EIIEEIIE");
    List<Integer> firing = List.of(1, 5, 7, 2, 6, 8, 4, 3);
    return of(Arrangement.V, List.of(left, right), firing, 5, 5, true, 5, roller);
  }

  /** Four opposed cylinders in a split case: main shells without caps. */
  static Engines opposed() {
    Bank left = new Bank("left", List.of(3, 4), "EIIE");
    Bank right = new Bank("right", List.of(1, 2), "EIIE");
    List<Integer> firing = List.of(1, 4, 3, 2);
    return of(Arrangement.OPPOSED, List.of(left, right), firing, 3, 1, false, 3, false);
  }

  private static Engines of(
      Arrangement arrangement,
      List<Bank> banks,
      List<Integer> firing,
      int mains,
      int thrust,
      boolean caps,
      int cams,
      boolean roller) {
    Map<String, List<Integer>> cylinders = new LinkedHashMap<>();
    banks.forEach(bank -> cylinders.put(bank.name(), bank.cylinders()));
    return new Engines(
        new Motor(cylinders, mains, thrust, caps, cams, roller),
        new Layout(
            "judged",
            "Judged",
            arrangement,
            0,
            banks,
            banks.get(0).name(),
            firing,
            mains,
            thrust,
            caps,
            firing.size(),
            cams,
            roller ? LifterType.ROLLER : LifterType.FLAT,
            RockerMount.INDIVIDUAL));
  }

  /** Nothing is taken out yet. */
  Bout bout() {
    return new Bout(motor, new Program(motor, layout));
  }

  /** Everything lies on the bench. */
  Bout apart() {
    return apart(bout());
  }

  /** Everything lies on the bench of this program. */
  Bout apart(Program program) {
    return apart(new Bout(motor, program));
  }

  private Bout apart(Bout bout) {
    motor.slots.forEach(slot -> bout.perform(Act.of(Act.Verb.OUT, slot.at())));
    return bout;
  }

  /** Everything came out and is back where it came from. */
  Bout together() {
    Bout bout = apart();
    motor.slots.forEach(slot -> bout.perform(Act.at(Act.Verb.FIT, slot.at(), slot.at())));
    return bout;
  }
}
