package wherefrom.job.torque;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import wherefrom.job.Days;
import wherefrom.job.EngineJob;
import wherefrom.job.OpenJob;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.pages.RecordTable;
import wherefrom.workings.torque.Tick;
import wherefrom.workings.torque.TorqueCard;

/** The torque cards in the build record: each stage, who did it, when, and who checked. */
public final class TorqueRecord {
  private TorqueRecord() {}

  /** One row a stage, one for the second person's check. */
  public static RecordSection section(OpenJob job) {
    List<RecordSection.Row> rows = new ArrayList<>();
    TorqueCards.of(job.state()).forEach(kept -> card(kept, job.days(), rows));
    return new RecordSection(
        RecordTable.TORQUE_CARDS,
        List.of("card", "step", "bolts", "by", "when", "figures and order from"),
        rows,
        "No bolts were tightened with a card: NOT CHECKED here.");
  }

  private static void card(KeptCard kept, Days days, List<RecordSection.Row> rows) {
    if (!kept.holds()) {
      String name = kept.number() + " " + kept.card().spec().fastener();
      rows.add(
          new RecordSection.Row(
              List.of(name, "dropped: " + kept.dropped(), "", "", days.time(kept.begun()), ""),
              true));
      return;
    }
    for (int stage = 1; stage <= kept.card().checkStage(); stage++) {
      rows.add(stage(kept, stage, days));
    }
  }

  private static RecordSection.Row stage(KeptCard kept, int stage, Days days) {
    TorqueCard card = kept.card();
    List<Tick> ticks = card.ticks().stream().filter(tick -> tick.stage() == stage).toList();
    List<Tick> odd = ticks.stream().filter(Tick::outOfTurn).toList();
    String bolts = bolts(kept, stage, ticks.size());
    if (!odd.isEmpty()) {
      bolts +=
          "; out of turn: "
              + odd.stream().map(tick -> "" + tick.bolt()).collect(Collectors.joining(", "));
    }
    return new RecordSection.Row(
        List.of(
            kept.number() + " " + card.spec().fastener(),
            step(card, stage),
            bolts,
            ticks.stream().map(Tick::person).distinct().collect(Collectors.joining(", ")),
            when(kept, stage, days),
            card.spec().source().text() + "; order: " + card.spec().pattern().source().text()),
        ticks.size() < card.bolts() || !odd.isEmpty());
  }

  private static String step(TorqueCard card, int stage) {
    return stage == card.checkStage()
        ? "second person's check"
        : "stage "
            + stage
            + " "
            + card.spec().stages().get(stage - 1).words()
            + ", threads "
            + card.spec().threads();
  }

  private static String bolts(KeptCard kept, int stage, int done) {
    String open = stage == kept.card().checkStage() ? RecordSection.NOT_CHECKED : "NOT DONE";
    String count = done + " of " + kept.card().bolts();
    if (done == 0) {
      return open;
    }
    return done < kept.card().bolts() ? count + ", the rest " + open : count;
  }

  private static String when(KeptCard kept, int stage, Days days) {
    List<Instant> times = new ArrayList<>();
    for (int at = 0; at < kept.marks().size(); at++) {
      if (kept.card().ticks().get(at).stage() == stage) {
        times.add(kept.marks().get(at).time());
      }
    }
    if (times.isEmpty()) {
      return "";
    }
    Instant first = times.get(0);
    Instant last = times.get(times.size() - 1);
    String begun = days.time(first);
    String ended = days.time(last);
    if (begun.equals(ended)) {
      return begun;
    }
    boolean sameDay = days.date(first).equals(days.date(last));
    return begun + " to " + (sameDay ? days.hour(last) : ended);
  }

  /** What is open on the cards that hold, in a few words each. */
  public static List<String> open(EngineJob job) {
    return TorqueCards.holding(job).stream()
        .filter(kept -> !kept.isDone())
        .map(kept -> kept.words() + ": " + kept.state())
        .toList();
  }
}
