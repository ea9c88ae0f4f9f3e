package wherefrom.job.torque;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import wherefrom.job.EngineJob;
import wherefrom.job.EntryFold;
import wherefrom.job.LogbookException;
import wherefrom.job.LoggedEntry;
import wherefrom.job.entry.BoltChecked;
import wherefrom.job.entry.BoltTightened;
import wherefrom.job.entry.TorqueCardBegun;
import wherefrom.job.entry.TorqueCardDropped;
import wherefrom.workings.torque.Tick;
import wherefrom.workings.torque.TorqueCard;

/** The torque cards that the standing entries give. */
public final class TorqueCards {
  private static final EntryFold<TorqueCards> READS =
      EntryFold.<TorqueCards>none()
          .at(TorqueCardBegun.class, TorqueCards::begin)
          .at(BoltTightened.class, TorqueCards::tick)
          .at(BoltChecked.class, TorqueCards::tick)
          .on(TorqueCardDropped.class, TorqueCards::drop);

  private final Map<Integer, KeptCard> cards = new TreeMap<>();

  private TorqueCards() {}

  /** Every card by its number, those given up included. */
  public static List<KeptCard> of(EngineJob job) {
    TorqueCards fold = new TorqueCards();
    job.standing().forEach(logged -> READS.take(fold, logged));
    return List.copyOf(fold.cards.values());
  }

  /** Every card that holds. */
  public static List<KeptCard> holding(EngineJob job) {
    return of(job).stream().filter(KeptCard::holds).toList();
  }

  private void begin(TorqueCardBegun begun, LoggedEntry logged) {
    cards.put(begun.card(), fresh(logged, begun));
  }

  private void tick(BoltTightened done, LoggedEntry logged) {
    Tick tick = new Tick(done.stage(), done.bolt(), done.person(), done.outOfTurn());
    cards.computeIfPresent(done.card(), (number, kept) -> ticked(kept, logged, tick));
  }

  private void tick(BoltChecked done, LoggedEntry logged) {
    cards.computeIfPresent(
        done.card(),
        (number, kept) -> {
          int stage = kept.card().checkStage();
          return ticked(
              kept, logged, new Tick(stage, done.bolt(), done.person(), done.outOfTurn()));
        });
  }

  private void drop(TorqueCardDropped dropped) {
    cards.computeIfPresent(
        dropped.card(),
        (number, kept) ->
            new KeptCard(number, kept.begun(), kept.card(), kept.marks(), dropped.reason()));
  }

  private static KeptCard fresh(LoggedEntry logged, TorqueCardBegun begun) {
    if (SpecReading.of(begun) instanceof SpecReading.Good good) {
      return new KeptCard(begun.card(), logged.time(), TorqueCard.of(good.spec()), List.of(), "");
    }
    throw new LogbookException(
        "Torque card "
            + begun.card()
            + " cannot be read: a newer version wrote it. The rest of the job is whole.");
  }

  private static KeptCard ticked(KeptCard kept, LoggedEntry logged, Tick tick) {
    List<KeptCard.Mark> marks = new ArrayList<>(kept.marks());
    marks.add(new KeptCard.Mark(logged.sequence(), logged.time()));
    return new KeptCard(kept.number(), kept.begun(), kept.card().with(tick), marks, kept.dropped());
  }
}
