package wherefrom.ui.puttogether;

import java.util.Optional;
import wherefrom.rules.Hold;
import wherefrom.rules.Verdict;

/** The deed that leads out of a stop; after it the same scan is judged again. */
enum Cure {
  DECIDE("Decide about it", "Decide"),
  CHECK("Answer the check", "Check"),
  FOUND("I have it: it is found", "Found"),
  BACK("It is back from washing", "Is back"),
  BACK_FROM_SHOP("It is back from the shop", "Is back"),
  PAGE("Its page: a new part", "Its page");

  private final String words;
  private final String brief;

  Cure(String words, String brief) {
    this.words = words;
    this.brief = brief;
  }

  String words() {
    return words;
  }

  /** For where the person's text is large. */
  String brief() {
    return brief;
  }

  /** What leads out of this stop; empty where only another scan does. */
  static Optional<Cure> of(Verdict stop) {
    if (stop instanceof Verdict.FittedBut fitted) {
      return of(fitted.against());
    }
    if (stop instanceof Verdict.NotCleared held) {
      return Optional.of(of(held.hold()));
    }
    return stop instanceof Verdict.MustBeNew ? Optional.of(PAGE) : Optional.empty();
  }

  private static Cure of(Hold hold) {
    return switch (hold) {
      case WASHING -> BACK;
      case AT_SHOP -> BACK_FROM_SHOP;
      case LOST -> FOUND;
      case TO_REPLACE -> PAGE;
      case TO_MACHINE, FOUND_BAD, NOT_DECIDED -> DECIDE;
      case WORK_OPEN, CHECK_OPEN -> CHECK;
    };
  }

  /** The check that a stop waits for; empty where it waits for none. */
  static String check(Verdict stop) {
    if (stop instanceof Verdict.FittedBut fitted) {
      return check(fitted.against());
    }
    return stop instanceof Verdict.NotCleared held ? held.check() : "";
  }
}
