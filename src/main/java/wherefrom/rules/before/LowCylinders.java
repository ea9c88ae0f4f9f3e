package wherefrom.rules.before;

import java.util.ArrayList;
import java.util.List;
import wherefrom.engine.Bank;
import wherefrom.inspection.Look;
import wherefrom.rules.before.TestsBefore.Cylinder;
import wherefrom.workings.catalogue.accept.Acceptance.Ruling;

/** Which cylinders are low, alone or beside each other. */
final class LowCylinders {
  private final TestsBefore tests;

  LowCylinders(TestsBefore tests) {
    this.tests = tests;
  }

  /**
   * Whether all that were read are below the person's own limit: then no one of them stands out.
   */
  boolean all() {
    List<Cylinder> read = tests.cylinders().stream().filter(one -> one.dry().isPresent()).toList();
    return read.size() > 1 && read.stream().allMatch(one -> one.limit() == Look.FAIL);
  }

  private Ruling ruling(Cylinder one) {
    return one.share().map(tests.bounds().share()::atLeast).orElse(Ruling.ACCEPT);
  }

  boolean isLow(Cylinder one) {
    return ruling(one) == Ruling.REJECT || (one.limit() == Look.FAIL && !all());
  }

  boolean isUndecided(Cylinder one) {
    return !isLow(one)
        && (ruling(one) == Ruling.UNDECIDED || (one.limit() == Look.SUSPECT && !all()));
  }

  /** Whether oil brings pressure back: accepted, rejected, or too near to say. */
  Ruling rises(Cylinder one) {
    return one.rise().map(tests.bounds().rise()::atLeast).orElse(Ruling.UNDECIDED);
  }

  /** Low neighbors in one bank that oil does not help, from the front. */
  List<List<Cylinder>> pairs() {
    List<List<Cylinder>> pairs = new ArrayList<>();
    for (Bank bank : tests.layout().banks()) {
      List<Integer> row = bank.cylinders();
      for (int at = 1; at < row.size(); at++) {
        List<Cylinder> both =
            List.of(row.get(at - 1), row.get(at)).stream()
                .flatMap(number -> tests.find(number).stream())
                .filter(this::isLowForGasket)
                .toList();
        if (both.size() == 2) {
          pairs.add(both);
        }
      }
    }
    return pairs;
  }

  private boolean isLowForGasket(Cylinder one) {
    return isLow(one) && rises(one) != Ruling.ACCEPT;
  }

  /** The low ones that stand alone. */
  List<Cylinder> alone() {
    List<Cylinder> paired = pairs().stream().flatMap(List::stream).toList();
    return tests.cylinders().stream()
        .filter(this::isLow)
        .filter(one -> !paired.contains(one))
        .toList();
  }
}
