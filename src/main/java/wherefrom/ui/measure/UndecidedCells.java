package wherefrom.ui.measure;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.BearingClearance;
import wherefrom.job.MeasuredResult;
import wherefrom.ui.app.Desk;
import wherefrom.ui.subject.Cell;
import wherefrom.ui.subject.Named;

/** Results that their uncertainty leaves open, to be opened and measured better. */
final class UndecidedCells {
  private final Desk desk;
  private final MeasureModel model;

  UndecidedCells(Desk desk, MeasureModel model) {
    this.desk = desk;
    this.model = model;
  }

  List<Cell> list() {
    List<Cell> cells = new ArrayList<>();
    for (MeasuredResult result : model.undecided()) {
      cells.add(
          new Cell(
              Named.title(desk.state(), result.subject()),
              result.plan().title(),
              () ->
                  desk.navigator()
                      .open(
                          () -> new ReadingsScreen(desk, result.subject(), result.plan().key()))));
    }
    for (BearingClearance bearing : model.undecidedClearances()) {
      cells.add(
          new Cell(
              bearing.words(),
              "oil clearance",
              () -> desk.navigator().open(() -> new ClearanceScreen(desk))));
    }
    return cells;
  }
}
