package wherefrom.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import wherefrom.engine.Arrangement;
import wherefrom.engine.Bank;
import wherefrom.engine.Layout;
import wherefrom.engine.LifterType;
import wherefrom.engine.ReadyLayouts;
import wherefrom.engine.RockerMount;

/** Layouts to draw: the ready ones, and any sound one that a person could edit. */
final class SampleLayouts {
  private SampleLayouts() {}

  static Layout ready(String name) {
    return ReadyLayouts.find(name).orElseThrow();
  }

  static Layout with(Layout from, LifterType lifters, RockerMount rockers) {
    return new Layout(
        from.name(),
        from.title(),
        from.arrangement(),
        from.vee(),
        from.banks(),
        from.leadingBank(),
        from.firingOrder(),
        from.mains(),
        from.thrustMain(),
        from.mainCaps(),
        from.rodJournals(),
        from.camBearings(),
        lifters,
        rockers);
  }

  /** A sound layout of 1 to 16 cylinders; the same seed gives the same one. */
  static Layout drawn(long seed) {
    Random random = new Random(seed);
    Arrangement arrangement = one(random, Arrangement.values());
    boolean inline = arrangement == Arrangement.INLINE;
    int cylinders = (inline ? 1 : 2) + random.nextInt(inline ? 16 : 15);
    List<Integer> numbers = shuffled(cylinders, random);
    List<Bank> banks = inline ? List.of(bank("single", numbers, random)) : two(numbers, random);
    int mains = 1 + random.nextInt(random.nextInt(4) == 0 ? 17 : cylinders + 1);
    int vee = arrangement == Arrangement.V ? 1 + random.nextInt(180) : 0;
    return new Layout(
        "drawn",
        "Drawn",
        arrangement,
        vee,
        banks,
        banks.get(random.nextInt(banks.size())).name(),
        shuffled(cylinders, random),
        mains,
        1 + random.nextInt(mains),
        random.nextBoolean(),
        1 + random.nextInt(cylinders),
        random.nextInt(18),
        one(random, LifterType.values()),
        one(random, RockerMount.values()));
  }

  private static List<Bank> two(List<Integer> numbers, Random random) {
    int left = 1 + random.nextInt(numbers.size() - 1);
    int half = random.nextInt(3) == 0 ? left : (numbers.size() + 1) / 2;
    return List.of(
        bank("left", numbers.subList(0, half), random),
        bank("right", numbers.subList(half, numbers.size()), random));
  }

  private static Bank bank(String name, List<Integer> numbers, Random random) {
    StringBuilder valves = new StringBuilder();
    numbers.forEach(number -> valves.append(random.nextBoolean() ? "EI" : "IE"));
    return new Bank(name, numbers, valves.toString());
  }

  private static List<Integer> shuffled(int count, Random random) {
    List<Integer> numbers = new ArrayList<>(IntStream.rangeClosed(1, count).boxed().toList());
    Collections.shuffle(numbers, random);
    return numbers;
  }

  private static <T> T one(Random random, T[] choices) {
    return choices[random.nextInt(choices.length)];
  }
}
