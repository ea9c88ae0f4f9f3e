package wherefrom.job.torque;

import java.time.Instant;
import java.util.List;
import wherefrom.workings.torque.NextStep;
import wherefrom.workings.torque.TorqueCard;

/**
 * A torque card as the job keeps it.
 *
 * @param marks when and by which entry each of the card's ticks was made, in their order
 * @param dropped why it no longer holds; empty while it does
 */
public record KeptCard(
    int number, Instant begun, TorqueCard card, List<Mark> marks, String dropped) {

  /** The entry of a tick. */
  public record Mark(long sequence, Instant time) {}

  public KeptCard {
    marks = List.copyOf(marks);
  }

  public boolean holds() {
    return dropped.isEmpty();
  }

  /** Whether every bolt is tightened and checked by a second person. */
  public boolean isDone() {
    return card.next() instanceof NextStep.Done;
  }

  /** Whether every bolt is tightened, checked or not. */
  public boolean isTightened() {
    return !(card.next() instanceof NextStep.Tighten);
  }

  /** {@code torque card 1, head bolts, left bank}. */
  public String words() {
    return "torque card " + number + ", " + card.spec().fastener();
  }

  /** How far it is, in a few words. */
  public String state() {
    return holds()
        ? card.next().match(this::stage, check -> unchecked(), done -> "tightened and checked")
        : "dropped: " + dropped;
  }

  /** The same in a word or two. */
  public String brief() {
    return holds()
        ? card.next().match(this::round, check -> "NOT CHECKED", done -> "checked")
        : "dropped";
  }

  private String round(NextStep.Tighten next) {
    return "stage " + next.stageNumber() + " of " + card.spec().stages().size();
  }

  private String stage(NextStep.Tighten next) {
    return round(next) + ", bolt " + next.bolt().number() + " of " + card.bolts();
  }

  private String unchecked() {
    return "tightened, NOT CHECKED by a second person: "
        + card.boltsDone(card.checkStage())
        + " of "
        + card.bolts()
        + " bolts";
  }
}
