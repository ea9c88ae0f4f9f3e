package wherefrom.ui.measure;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.BearingClearance;
import wherefrom.job.MeasuredResult;
import wherefrom.job.PairClearance;
import wherefrom.job.measure.Undecided;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.subject.Cell;
import wherefrom.ui.subject.Named;

/** Results that their uncertainty leaves open, to be opened and measured better. */
final class UndecidedCells {
  private final ScreenContext context;
  private final MeasureModel model;

  UndecidedCells(ScreenContext context, MeasureModel model) {
    this.context = context;
    this.model = model;
  }

  List<Cell> list() {
    List<Cell> cells = new ArrayList<>();
    Undecided undecided = model.undecided();
    for (MeasuredResult result : undecided.results()) {
      cells.add(
          new Cell(
              Named.title(context.state(), result.subject()),
              result.plan().title(),
              () ->
                  context
                      .navigator()
                      .open(
                          () ->
                              new ReadingsScreen(context, result.subject(), result.plan().key()))));
    }
    for (BearingClearance bearing : undecided.bearings()) {
      cells.add(
          new Cell(
              bearing.words(),
              "oil clearance",
              () -> context.navigator().open(() -> new ClearanceScreen(context))));
    }
    for (PairClearance pair : undecided.pairs()) {
      cells.add(
          new Cell(
              pair.words(),
              pair.pair().title(),
              () -> context.navigator().open(() -> new PairScreen(context, pair.pair()))));
    }
    return cells;
  }
}
