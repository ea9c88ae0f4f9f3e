package wherefrom.job.torque;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import wherefrom.job.EngineJob;
import wherefrom.job.LogbookException;
import wherefrom.job.LoggedEntry;
import wherefrom.job.entry.BoltChecked;
import wherefrom.job.entry.BoltTightened;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.TorqueCardBegun;
import wherefrom.job.entry.TorqueCardDropped;
import wherefrom.workings.torque.Tick;
import wherefrom.workings.torque.TorqueCard;

/** The torque cards that the standing entries give. */
public final class TorqueCards {
  private final Map<Integer, KeptCard> cards = new TreeMap<>();

  private TorqueCards() {}

  /** Every card by its number, those given up included. */
  public static List<KeptCard> of(EngineJob job) {
    TorqueCards fold = new TorqueCards();
    job.standing().forEach(fold::apply);
    return List.copyOf(fold.cards.values());
  }

  /** Every card that holds. */
  public static List<KeptCard> holding(EngineJob job) {
    return of(job).stream().filter(KeptCard::holds).toList();
  }

  private void apply(LoggedEntry logged) {
    JobEntry entry = logged.entry();
    if (entry instanceof TorqueCardBegun begun) {
      cards.put(begun.card(), fresh(logged, begun));
    } else if (entry instanceof BoltTightened done) {
      Tick tick = new Tick(done.stage(), done.bolt(), done.person(), done.outOfTurn());
      cards.computeIfPresent(done.card(), (number, kept) -> ticked(kept, logged, tick));
    } else if (entry instanceof BoltChecked done) {
      cards.computeIfPresent(
          done.card(),
          (number, kept) ->
              ticked(
                  kept,
                  logged,
                  new Tick(
                      kept.card().checkStage(), done.bolt(), done.person(), done.outOfTurn())));
    } else if (entry instanceof TorqueCardDropped dropped) {
      cards.computeIfPresent(
          dropped.card(),
          (number, kept) ->
              new KeptCard(number, kept.begun(), kept.card(), kept.marks(), dropped.reason()));
    }
  }

  private static KeptCard fresh(LoggedEntry logged, TorqueCardBegun begun) {
    if (SpecReading.of(begun) instanceof SpecReading.Good good) {
      return new KeptCard(begun.card(), logged.time(), TorqueCard.of(good.spec()), List.of(), "");
    }
    throw new LogbookException(
        "Torque card "
            + begun.card()
            + " cannot be read by this version: a newer one wrote it. The rest of the job is"
            + " whole.");
  }

  private static KeptCard ticked(KeptCard kept, LoggedEntry logged, Tick tick) {
    List<KeptCard.Mark> marks = new ArrayList<>(kept.marks());
    marks.add(new KeptCard.Mark(logged.sequence(), logged.time()));
    return new KeptCard(kept.number(), kept.begun(), kept.card().with(tick), marks, kept.dropped());
  }
}
