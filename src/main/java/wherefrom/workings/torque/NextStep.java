package wherefrom.workings.torque;

import java.util.function.Function;

/** What a torque card asks for next. */
public sealed interface NextStep {

  /** What the function for its kind makes of it. */
  default <R> R match(
      Function<Tighten, R> tighten, Function<SecondCheck, R> secondCheck, Function<Done, R> done) {
    if (this instanceof Tighten one) {
      return tighten.apply(one);
    }
    if (this instanceof SecondCheck one) {
      return secondCheck.apply(one);
    }
    return done.apply((Done) this);
  }

  /** The step in a sentence. */
  String sentence();

  /** Tighten one bolt; stages count from 1. */
  record Tighten(int stageNumber, Stage stage, Bolt bolt) implements NextStep {
    @Override
    public String sentence() {
      return "Stage " + stageNumber + ": " + stage.words(bolt) + ".";
    }

    /** What comes before the first bolt of the stage; may be empty. */
    public String before() {
      return stage.match(
          torque -> "", angle -> "First a paint mark on every bolt.", loosened -> "");
    }
  }

  /** Every bolt is done; a second person goes over them. */
  record SecondCheck(Bolt bolt, Stage last) implements NextStep {
    @Override
    public String sentence() {
      return "A second person checks bolt " + bolt.number() + ". " + how();
    }

    /** The same in few words. */
    public String brief() {
      return last.match(
          torque -> how(), angle -> "By its paint mark, no wrench.", loosened -> how());
    }

    /** How it is checked: a wrench would turn on a bolt that was tightened by its angle. */
    public String how() {
      return last.match(
          torque -> "Wrench at " + torque.amount().text() + ": it clicks, nothing turns.",
          angle -> "Turned as far as all others, by its paint mark? Put no wrench on it.",
          loosened -> "It is loose: tighten it first.");
    }
  }

  /** Nothing is left to do. */
  record Done() implements NextStep {
    @Override
    public String sentence() {
      return "All bolts are tightened and checked.";
    }
  }
}
