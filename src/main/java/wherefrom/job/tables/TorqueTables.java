package wherefrom.job.tables;

import wherefrom.job.EngineJob;
import wherefrom.job.OpenJob;
import wherefrom.job.pages.TidyCell;
import wherefrom.job.pages.TidyTable;
import wherefrom.job.timing.TimingBook;
import wherefrom.job.timing.TimingCheck;
import wherefrom.job.torque.KeptCard;
import wherefrom.job.torque.TorqueCards;
import wherefrom.workings.timing.Comparison;
import wherefrom.workings.torque.Tick;
import wherefrom.workings.torque.TorqueCard;

/** Each bolt that was tightened or checked, and the cam's timing beside its card. */
final class TorqueTables {
  private TorqueTables() {}

  static TidyTable torque(EngineJob job) {
    Rows rows =
        new Rows(
            "torque",
            "card",
            "fastener",
            "holds",
            "stage",
            "what",
            "bolt",
            "person",
            "out_of_turn",
            "source",
            "utc");
    TorqueCards.of(job).forEach(kept -> card(rows, kept));
    return rows.table();
  }

  private static void card(Rows rows, KeptCard kept) {
    TorqueCard card = kept.card();
    for (int at = 0; at < kept.marks().size(); at++) {
      Tick tick = card.ticks().get(at);
      boolean check = tick.stage() == card.checkStage();
      rows.add(
          TidyCell.of(kept.number()),
          TidyCell.of(card.spec().fastener()),
          TidyCell.of(kept.holds()),
          TidyCell.of(tick.stage()),
          TidyCell.of(
              check ? "second person's check" : card.spec().stages().get(tick.stage() - 1).words()),
          TidyCell.of(tick.bolt()),
          TidyCell.of(tick.person()),
          TidyCell.of(tick.outOfTurn()),
          TidyCell.of(card.spec().source().text()),
          TidyCell.of(kept.marks().get(at).time()));
    }
  }

  static TidyTable timing(OpenJob job) {
    Rows rows =
        new Rows(
            "timing",
            "cylinder",
            "value",
            "degrees",
            "standard_uncertainty",
            "card_degrees",
            "card_source",
            "verdict");
    TimingBook book = new TimingBook(job);
    TimingCheck check = new TimingCheck(book);
    for (int cylinder : book.cylinders()) {
      for (Comparison each : check.compare(cylinder)) {
        boolean card = each.card().isPresent();
        rows.add(
            TidyCell.of(cylinder),
            TidyCell.of(each.value().key()),
            TidyCell.of(each.found().degrees()),
            TidyCell.of(each.found().standardUncertainty()),
            card ? TidyCell.of(each.card().getAsDouble()) : TidyCell.NONE,
            TidyCell.of(card ? book.cardSource() : ""),
            TidyCell.of(card ? each.verdict() : ""));
      }
    }
    return rows.table();
  }
}
