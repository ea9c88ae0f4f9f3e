package wherefrom.job.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import wherefrom.inspection.Look;
import wherefrom.job.Days;
import wherefrom.job.EngineJob;
import wherefrom.job.EntryFold;
import wherefrom.job.EntryWords;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.ShopChanges;
import wherefrom.job.change.PlannedChange;
import wherefrom.job.change.Planning;
import wherefrom.job.entry.ChangeMade;
import wherefrom.job.entry.ChangePlanned;
import wherefrom.job.entry.CheckAnswered;
import wherefrom.job.entry.SlotUnknown;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.pages.RecordTable;

/** The record's table of changes: those planned and not yet made, those made, and the checks. */
final class RecordChanges {
  private static final EntryFold<RecordChanges> READS =
      EntryFold.<RecordChanges>none()
          .at(ChangePlanned.class, RecordChanges::planned)
          .at(ChangeMade.class, RecordChanges::made)
          .at(SlotUnknown.class, RecordChanges::stray)
          .at(CheckAnswered.class, RecordChanges::answered);

  private final EngineJob state;
  private final Days days;
  private final Set<Integer> planned;
  private final List<RecordSection.Row> rows = new ArrayList<>();

  RecordChanges(OpenJob job) {
    this.state = job.state();
    this.days = job.days();
    this.planned =
        new Planning(job).plans().stream().map(PlannedChange::number).collect(Collectors.toSet());
  }

  RecordSection section() {
    ShopChanges shop = new ShopChanges(state);
    for (LoggedEntry logged : state.standing()) {
      shop.take(logged)
          .forEach(change -> row(false, "done at the shop: " + change.words(), "", logged));
      READS.take(this, logged);
    }
    return new RecordSection(
        RecordTable.CHANGES,
        List.of("what", "note", "when"),
        rows,
        "No change was recorded or planned.");
  }

  private void planned(ChangePlanned plan, LoggedEntry logged) {
    if (planned.contains(plan.plan())) {
      row(false, "planned, not made: " + plan.change().words(), "plan " + plan.plan(), logged);
    }
  }

  private void made(ChangeMade made, LoggedEntry logged) {
    row(false, EntryWords.of(state, made), "", logged);
  }

  private void stray(SlotUnknown stray, LoggedEntry logged) {
    row(false, EntryWords.of(state, stray), stray.reason(), logged);
  }

  private void answered(CheckAnswered answered, LoggedEntry logged) {
    boolean open = answered.look() != Look.PASS;
    row(open, EntryWords.of(state, answered), answered.words(), logged);
  }

  private void row(boolean open, String what, String note, LoggedEntry logged) {
    String day = days.day(logged.time());
    rows.add(new RecordSection.Row(List.of(what, note, day), open));
  }
}
