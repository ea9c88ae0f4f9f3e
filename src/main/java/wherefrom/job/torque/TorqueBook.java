package wherefrom.job.torque;

import java.util.List;
import java.util.Optional;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.BoltChecked;
import wherefrom.job.entry.BoltTightened;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.TakenBack;
import wherefrom.job.entry.TorqueCardBegun;
import wherefrom.job.entry.TorqueCardDropped;
import wherefrom.workings.torque.Tick;

/** Torque cards: written, ticked, given up. */
public final class TorqueBook {
  private final OpenJob job;

  public TorqueBook(OpenJob job) {
    this.job = job;
  }

  /** Every card, those given up included. */
  public List<KeptCard> cards() {
    return TorqueCards.of(job.state());
  }

  public Optional<KeptCard> find(int number) {
    return cards().stream().filter(card -> card.number() == number).findFirst();
  }

  /** Writes a card; it is given the next number, which was never used before. */
  public TorqueStep begin(CardTyped typed) {
    return job.asOne(() -> beginOnce(typed));
  }

  private TorqueStep beginOnce(CardTyped typed) {
    SpecReading read = typed.read();
    if (read instanceof SpecReading.Faulty faulty) {
      return new TorqueStep.Refused(faulty.sentence());
    }
    int number = nextNumber();
    job.record(typed.entry(number, (SpecReading.Good) read));
    return done(number, "Torque card " + number + " is written. ");
  }

  private int nextNumber() {
    return 1
        + job.history().stream()
            .map(LoggedEntry::entry)
            .filter(TorqueCardBegun.class::isInstance)
            .mapToInt(entry -> ((TorqueCardBegun) entry).card())
            .max()
            .orElse(0);
  }

  /**
   * The named person tightened or checked a bolt.
   *
   * @param outOfTurn whether a bolt that is not due counts, with a mark
   */
  public TorqueStep tick(int number, int bolt, String person, boolean outOfTurn) {
    return job.asOne(() -> tickOnce(number, bolt, person, outOfTurn));
  }

  private TorqueStep tickOnce(int number, int bolt, String person, boolean outOfTurn) {
    Optional<KeptCard> kept = find(number).filter(KeptCard::holds);
    if (kept.isEmpty()) {
      return missing(number);
    }
    return kept.get()
        .card()
        .tick(bolt, person, outOfTurn)
        .match(
            ticked -> ticked(kept.get(), ticked.tick()),
            question -> new TorqueStep.Questioned(kept.get(), question),
            refused -> new TorqueStep.Refused(refused.sentence()));
  }

  private TorqueStep ticked(KeptCard kept, Tick tick) {
    job.record(entry(kept, tick));
    return done(kept.number(), "");
  }

  private static JobEntry entry(KeptCard kept, Tick tick) {
    return tick.stage() == kept.card().checkStage()
        ? new BoltChecked(kept.number(), tick.bolt(), tick.person(), tick.outOfTurn())
        : new BoltTightened(
            kept.number(), tick.stage(), tick.bolt(), tick.person(), tick.outOfTurn());
  }

  /** Takes the card's last tick back, whatever was done elsewhere since. */
  public TorqueStep takeBack(int number) {
    return job.asOne(() -> takeBackOnce(number));
  }

  private TorqueStep takeBackOnce(int number) {
    Optional<KeptCard> kept = find(number).filter(KeptCard::holds);
    if (kept.isEmpty()) {
      return missing(number);
    }
    List<KeptCard.Mark> marks = kept.get().marks();
    if (marks.isEmpty()) {
      return new TorqueStep.Refused(
          "No bolt is ticked on this card. Drop a wrong card and write it again.");
    }
    KeptCard.Mark last = marks.get(marks.size() - 1);
    Tick tick = kept.get().card().ticks().get(marks.size() - 1);
    job.record(new TakenBack(last.sequence()));
    return done(number, "Undone: bolt " + tick.bolt() + ". ");
  }

  /** The card no longer holds; it stays in the record with the reason. */
  public TorqueStep drop(int number, String reason) {
    return job.asOne(() -> dropOnce(number, reason));
  }

  private TorqueStep dropOnce(int number, String reason) {
    if (find(number).filter(KeptCard::holds).isEmpty()) {
      return missing(number);
    }
    if (reason.isBlank()) {
      return new TorqueStep.Refused("Say why the card is dropped. It stays in the record.");
    }
    job.record(new TorqueCardDropped(number, reason.strip()));
    KeptCard dropped = find(number).orElseThrow();
    return new TorqueStep.Done(dropped, "Torque card " + number + " is dropped.");
  }

  private TorqueStep done(int number, String lead) {
    KeptCard kept = find(number).orElseThrow();
    return new TorqueStep.Done(kept, lead + kept.card().next().sentence());
  }

  private static TorqueStep missing(int number) {
    return new TorqueStep.Refused("There is no torque card " + number + " in use.");
  }
}
