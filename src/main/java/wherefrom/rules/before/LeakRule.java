package wherefrom.rules.before;

import java.util.List;
import wherefrom.inspection.Look;
import wherefrom.rules.before.TestsBefore.Cylinder;
import wherefrom.workings.catalogue.accept.Acceptance.Ruling;

/** A cylinder that leaks more than it may, and nobody has said where. */
final class LeakRule implements SignRule {
  @Override
  public List<Symptom> signs(TestsBefore tests) {
    return tests.cylinders().stream()
        .filter(one -> one.leak().isPresent() && ruling(tests, one) != Ruling.ACCEPT)
        .filter(one -> one.heard().values().stream().noneMatch(HeardRule::isLeak))
        .map(one -> sign(tests, one))
        .toList();
  }

  private static Ruling ruling(TestsBefore tests, Cylinder one) {
    return one.leak().map(tests.bounds().leak()::atMost).orElse(Ruling.ACCEPT);
  }

  private static Symptom sign(TestsBefore tests, Cylinder one) {
    String leaks =
        "Cylinder "
            + one.number()
            + " leaks "
            + one.leak().map(TestsBefore::whole).orElse("")
            + ".";
    boolean listened = one.heard().containsValue(Look.PASS);
    String next =
        ruling(tests, one) == Ruling.UNDECIDED
            ? "Too near the limit to say. Read it again, engine warm."
            : listened
                ? "Nothing heard so far. Listen at every place again."
                : "Listen where the air comes out, and note it.";
    return Symptom.of("leak", List.of(one.number()), leaks)
        .readAgain(next)
        .from(tests.bounds().leak().source());
  }
}
