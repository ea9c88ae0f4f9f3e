package wherefrom.engine;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import wherefrom.text.Words;

/** Says everything that is wrong with a layout, each with the field it stands in. */
public final class LayoutCheck {
  private static final int MOST_CYLINDERS = 16;
  private static final int MOST_BEARINGS = 17;
  private static final int MOST_VEE = 180;
  private static final int MOST_TITLE = 80;
  private static final int MOST_BANK_NAME = 20;

  private final Layout layout;
  private final List<LayoutFault> faults = new ArrayList<>();

  private LayoutCheck(Layout layout) {
    this.layout = layout;
  }

  /** The faults, in the order of the fields; empty when the layout is sound. */
  public static List<LayoutFault> faults(Layout layout) {
    LayoutCheck check = new LayoutCheck(layout);
    check.name();
    check.banks();
    check.vee();
    check.cylinderNumbers();
    layout.banks().forEach(check::valves);
    check.leadingBank();
    check.firingOrder();
    check.bearings();
    return List.copyOf(check.faults);
  }

  private void fault(String field, String sentence, Object... words) {
    faults.add(new LayoutFault(field, field + ": " + String.format(Locale.ROOT, sentence, words)));
  }

  private void name() {
    if (!layout.name().matches("[a-z0-9][a-z0-9-]{0,39}")) {
      fault("name", "use small letters, digits and hyphens, at most 40, such as my-v8.");
    }
    if (layout.title().isBlank()) {
      fault("title", "give the layout a title that a person can recognize.");
    }
    if (layout.title().length() > MOST_TITLE) {
      fault("title", "shorten it to %d letters.", MOST_TITLE);
    }
  }

  private void banks() {
    int wanted = layout.arrangement() == Arrangement.INLINE ? 1 : 2;
    if (layout.banks().size() != wanted) {
      fault(
          "banks",
          "%s engines have %s, this layout has %d.",
          layout.arrangement().word(),
          Words.count(wanted, "bank"),
          layout.banks().size());
    }
    Set<String> names = new HashSet<>();
    for (Bank bank : layout.banks()) {
      if (bank.name().length() > MOST_BANK_NAME) {
        fault("banks", "shorten the name of a bank to %d letters.", MOST_BANK_NAME);
        continue;
      }
      if (bank.name().isBlank() || !names.add(bank.name())) {
        fault("banks", "every bank needs its own name; \"%s\" is taken or empty.", bank.name());
      }
      if (bank.cylinders().isEmpty()) {
        fault("banks", "bank %s holds no cylinder; list its numbers front to rear.", bank.name());
      }
    }
  }

  private void vee() {
    int vee = layout.vee();
    if (vee < 0 || vee > MOST_VEE) {
      fault("vee", "%d degrees; 0 to %d can be.", vee, MOST_VEE);
    } else if (layout.arrangement() != Arrangement.V && vee != usualVee()) {
      fault(
          "vee",
          "%s engines have %d degrees between the banks, not %d.",
          layout.arrangement().word(),
          usualVee(),
          vee);
    }
  }

  private int usualVee() {
    return Layout.usualVee(layout.arrangement(), layout.cylinders().size(), layout.rodJournals());
  }

  private void cylinderNumbers() {
    Set<Integer> seen = new HashSet<>();
    for (Bank bank : layout.banks()) {
      for (int cylinder : bank.cylinders()) {
        if (!seen.add(cylinder)) {
          fault("cylinders", "cylinder %d is there twice; each has only one place.", cylinder);
        }
      }
    }
    if (seen.size() > MOST_CYLINDERS) {
      fault("cylinders", "%d cylinders; at most %d can be drawn.", seen.size(), MOST_CYLINDERS);
    }
    Set<Integer> missing = new TreeSet<>();
    for (int number = 1; number <= seen.size(); number++) {
      if (!seen.contains(number)) {
        missing.add(number);
      }
    }
    if (!missing.isEmpty()) {
      fault("cylinders", "the numbers must run from 1 to %d; missing: %s.", seen.size(), missing);
    }
  }

  private void valves(Bank bank) {
    String valves = bank.valves();
    int wanted = 2 * bank.cylinders().size();
    if (valves.length() != wanted) {
      fault(
          "valves",
          "bank %s has %d cylinders and needs %d letters, \"%s\" has %d.",
          bank.name(),
          bank.cylinders().size(),
          wanted,
          valves,
          valves.length());
      return;
    }
    for (int at = 0; at < wanted; at += 2) {
      String pair = valves.substring(at, at + 2);
      if (!pair.equals("EI") && !pair.equals("IE")) {
        fault(
            "valves",
            "cylinder %d in bank %s needs one E and one I, not \"%s\".",
            bank.cylinders().get(at / 2),
            bank.name(),
            pair);
      }
    }
  }

  private void leadingBank() {
    if (layout.banks().stream().noneMatch(bank -> bank.name().equals(layout.leadingBank()))) {
      fault("leadingBank", "there is no bank named \"%s\".", layout.leadingBank());
    }
  }

  private void firingOrder() {
    List<Integer> cylinders = layout.cylinders();
    for (int cylinder : new TreeSet<>(cylinders)) {
      long times = layout.firingOrder().stream().filter(fired -> fired == cylinder).count();
      if (times == 0) {
        fault("firingOrder", "cylinder %d never fires; add it.", cylinder);
      } else if (times > 1) {
        fault("firingOrder", "cylinder %d fires %d times; once is right.", cylinder, times);
      }
    }
    for (int fired : layout.firingOrder()) {
      if (!cylinders.contains(fired)) {
        fault("firingOrder", "there is no cylinder %d.", fired);
      }
    }
  }

  private void bearings() {
    if (layout.mains() < 1 || layout.mains() > MOST_BEARINGS) {
      fault("mains", "%d main bearings; 1 to %d can be.", layout.mains(), MOST_BEARINGS);
    }
    if (layout.thrustMain() < 1 || layout.thrustMain() > layout.mains()) {
      fault(
          "thrustMain",
          "main %d takes the thrust, but the mains run from 1 to %d.",
          layout.thrustMain(),
          layout.mains());
    }
    int cylinders = layout.cylinders().size();
    if (layout.rodJournals() < 1 || layout.rodJournals() > cylinders) {
      fault(
          "rodJournals",
          "%d crank pins for %d cylinders; 1 to %d can be.",
          layout.rodJournals(),
          cylinders,
          cylinders);
    }
    if (layout.camBearings() < 0 || layout.camBearings() > MOST_BEARINGS) {
      fault("camBearings", "%d cam bearings; 0 to %d can be.", layout.camBearings(), MOST_BEARINGS);
    }
  }
}
