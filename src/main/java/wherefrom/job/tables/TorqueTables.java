package wherefrom.job.tables;

import java.util.Optional;
import wherefrom.job.EngineJob;
import wherefrom.job.OpenJob;
import wherefrom.job.pages.TidyCell;
import wherefrom.job.pages.TidyTable;
import wherefrom.job.timing.TimingBook;
import wherefrom.job.timing.TimingCheck;
import wherefrom.job.torque.KeptCard;
import wherefrom.job.torque.TorqueCards;
import wherefrom.quantity.Unit;
import wherefrom.workings.timing.Comparison;
import wherefrom.workings.torque.Stage;
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
            "bolt",
            "what",
            "value",
            "unit",
            "threads",
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
      Optional<Stage> stage =
          tick.stage() == card.checkStage()
              ? Optional.empty()
              : Optional.of(card.spec().stages().get(tick.stage() - 1));
      rows.add(
          TidyCell.of(kept.number()),
          TidyCell.of(card.spec().fastener()),
          TidyCell.of(kept.holds()),
          TidyCell.of(tick.stage()),
          TidyCell.of(tick.bolt()),
          TidyCell.of(stage.map(TorqueTables::what).orElse("checked by a second person")),
          TidyCell.of(stage.map(one -> one.amount().number())),
          TidyCell.of(stage.map(one -> one.amount().unit().symbol()).orElse("")),
          TidyCell.of(card.spec().threads()),
          TidyCell.of(tick.person()),
          TidyCell.of(tick.outOfTurn()),
          TidyCell.of(card.spec().source().text()),
          TidyCell.of(kept.marks().get(at).time()));
    }
  }

  private static String what(Stage stage) {
    return stage.match(torque -> "to a torque", angle -> "on by an angle", loosen -> "loosened");
  }

  /** A row a value; marks of the wheel are degrees from top dead center. */
  static TidyTable timing(OpenJob job) {
    Rows rows =
        new Rows(
            "timing",
            "cylinder",
            "result",
            "value",
            "unit",
            "standard_uncertainty",
            "card_value",
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
            TidyCell.of(Unit.DEGREE.symbol()),
            TidyCell.of(each.found().standardUncertainty()),
            card ? TidyCell.of(each.card().getAsDouble()) : TidyCell.NONE,
            TidyCell.of(card ? book.cardSource() : ""),
            TidyCell.of(card ? verdict(each) : ""));
      }
    }
    return rows.table();
  }

  private static String verdict(Comparison comparison) {
    return comparison.differs() ? "differs" : "agrees";
  }
}
