package wherefrom.job.record;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import wherefrom.inspection.Look;
import wherefrom.job.EngineJob;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.bags.BagBook;
import wherefrom.job.money.Budget;
import wherefrom.job.money.MoneyBook;
import wherefrom.job.pages.RecordFigure;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.pages.RecordTable;
import wherefrom.job.puttogether.ToFit;
import wherefrom.job.running.RunIn;
import wherefrom.job.shop.MachineShop;
import wherefrom.job.shop.ShopVisit;
import wherefrom.job.torque.TorqueCards;
import wherefrom.job.torque.TorqueRecord;
import wherefrom.parts.Whereabouts;

/** The record's first page: what is done and what is not, in counts. */
final class RecordSummary {
  private final OpenJob job;
  private final EngineJob state;
  private final List<PartRecord> parts;
  private final List<RecordSection.Row> rows = new ArrayList<>();

  RecordSummary(OpenJob job) {
    this.job = job;
    this.state = job.state();
    this.parts =
        state.parts().stream().filter(part -> part.where() != Whereabouts.RETIRED).toList();
  }

  RecordSection section() {
    row("Parts taken out", parts.size(), count(part -> part.where() == Whereabouts.IN_ENGINE));
    row("Inspected or measured", parts.size(), count(this::unlooked));
    row("Decided", parts.size(), count(this::undecided));
    int checks = state.rules().checks().size();
    row("Checks that the changes ask for", checks, state.rules().openChecks().size());
    row("Places filled or left empty for a reason", state.places().size(), missing());
    bigParts();
    int against = new ToFit(job).fittedBut().size();
    rows.add(row(against > 0, "In, but something stands against it", "", none(against)));
    int cards = TorqueCards.holding(state).size();
    row("Torque cards done and checked by a second person", cards, TorqueRecord.open(state).size());
    shop();
    away("Parts off for washing", Whereabouts.WASHING);
    away("Parts that are lost", Whereabouts.LOST);
    int onPurpose = state.onPurpose().size();
    rows.add(row(onPurpose > 0, "Fitted on purpose in spite of a stop", onPurpose + "", ""));
    rows.add(row(false, "Replaced by new parts", count(part -> part.part().fresh()) + "", ""));
    RunIn.find(state).ifPresent(this::runIn);
    Budget budget = new MoneyBook(job).budget();
    boolean over = budget.limit().cents() > 0 && budget.left().cents() < 0;
    rows.add(row(over, "Money", budget.sentence(), over ? "OVER" : ""));
    return new RecordSection(
        RecordTable.IN_SHORT, List.of("what", "done", "open"), rows, "Nothing yet.");
  }

  /** The counts of the first page, out of all parts. */
  List<RecordFigure> figures() {
    int all = parts.size();
    return List.of(
        new RecordFigure(all - count(part -> part.where() == Whereabouts.IN_ENGINE), all, "out"),
        new RecordFigure(all - count(this::unlooked), all, "looked at"),
        new RecordFigure(all - count(this::undecided), all, "decided"),
        new RecordFigure(count(part -> part.where() == Whereabouts.FITTED), all, "fitted"),
        new RecordFigure(state.onPurpose().size(), 0, "on purpose"));
  }

  private int missing() {
    return new ToFit(job).places().size();
  }

  private void shop() {
    List<ShopVisit> visits = new MachineShop(job).visits();
    int pieces = visits.stream().mapToInt(ShopVisit::pieces).sum();
    row(
        "Pieces back from the machine shop",
        pieces,
        visits.stream().mapToInt(ShopVisit::missing).sum());
  }

  private void bigParts() {
    BagBook book = BagBook.of(state);
    if (!book.bigParts().isEmpty()) {
      row("Big parts on the engine", book.bigParts().size(), book.bigPartsOff().size());
    }
  }

  /** It is open until all its minutes were run, and what a gauge asked for was seen to. */
  private void runIn(RunIn run) {
    String ran = run.stretches().size() + " times, of " + run.plan().words();
    String fault = run.findStop().map(stop -> stop.why().words()).orElse("on");
    boolean done = run.state() == RunIn.State.DONE;
    rows.add(row(!done, "Run-in", ran, done ? "none" : fault));
  }

  private void away(String what, Whereabouts where) {
    int away = count(part -> part.where() == where);
    rows.add(row(away > 0, what, "", none(away)));
  }

  private static String none(int count) {
    return count == 0 ? "none" : Integer.toString(count);
  }

  private int count(Predicate<PartRecord> which) {
    return (int) parts.stream().filter(which).count();
  }

  private boolean unlooked(PartRecord part) {
    return !part.part().fresh()
        && part.looks().values().stream().allMatch(look -> look == Look.NOT_LOOKED)
        && state
            .measures()
            .listResults(wherefrom.inspection.Subject.ofPart(part.part().item()))
            .isEmpty();
  }

  private boolean undecided(PartRecord part) {
    return !part.part().fresh() && part.decision().isEmpty();
  }

  private void row(String what, int all, int open) {
    String left = open == 0 ? "none" : Integer.toString(open);
    rows.add(row(open > 0, what, all - open + " of " + all, left));
  }

  private static RecordSection.Row row(boolean open, String... cells) {
    return new RecordSection.Row(List.of(cells), open);
  }
}
