package wherefrom.job.numbers;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.job.OpenJob;
import wherefrom.workings.EntryReading;
import wherefrom.workings.InputText;
import wherefrom.workings.Inputs;
import wherefrom.workings.WorkingCard;
import wherefrom.workings.catalogue.compression.ChamberForRatio;
import wherefrom.workings.catalogue.compression.RatioAfterCut;
import wherefrom.workings.plan.PlanAnswer;
import wherefrom.workings.plan.PlanWorking;
import wherefrom.workings.plan.WhatIf;
import wherefrom.workings.plan.WhatIfPlan;

/** The plan that the job keeps: column 0 is how things are now, 1 to 3 are what-ifs. */
public final class PlanBook {
  private static final WorkingCard CARD = new PlanWorking().card();

  /** Of these two the one that was typed last counts. */
  private static final Map<String, String> EITHER =
      Map.of(
          ChamberForRatio.TARGET.key(), RatioAfterCut.HEAD_CUT.key(),
          RatioAfterCut.HEAD_CUT.key(), ChamberForRatio.TARGET.key());

  private final OpenJob job;
  private final Sheets sheets;

  public PlanBook(OpenJob job) {
    this.job = job;
    this.sheets = new Sheets(job);
  }

  public OpenJob job() {
    return job;
  }

  private static String key(int column) {
    return column == 0 ? "plan-now" : "plan-" + column;
  }

  /** The columns that there are; now is always among them. */
  public List<Integer> columns() {
    List<Integer> columns = new ArrayList<>(List.of(0));
    for (int column = 1; column <= WhatIfPlan.MOST_WHAT_IFS; column++) {
      if (sheets.find(key(column)).isPresent()) {
        columns.add(column);
      }
    }
    return columns;
  }

  public Sheet sheet(int column) {
    return sheets.find(key(column)).orElseGet(() -> Sheet.empty(usualName(column)));
  }

  private static String usualName(int column) {
    return column == 0 ? "Now" : "Idea " + column;
  }

  /** The column for another what-if; empty where all three are there. */
  public Optional<Integer> findFree() {
    List<Integer> taken = columns();
    for (int column = 1; column <= WhatIfPlan.MOST_WHAT_IFS; column++) {
      if (!taken.contains(column)) {
        return Optional.of(column);
      }
    }
    return Optional.empty();
  }

  public void add(int column) {
    sheets.keep(key(column), Sheet.empty(usualName(column)));
  }

  public void drop(int column) {
    sheets.drop(key(column));
  }

  public void rename(int column, String name) {
    job.inOne(() -> renameOnce(column, name));
  }

  private void renameOnce(int column, String name) {
    if (!name.isBlank()) {
      sheets.keep(key(column), new Sheet(name.strip(), sheet(column).figures()));
    }
  }

  /** Keeps a figure as typed; an empty text takes it out. */
  public FigureOutcome set(int column, String input, String text) {
    return job.asOne(() -> setOnce(column, input, text));
  }

  private FigureOutcome setOnce(int column, String input, String text) {
    if (!text.isEmpty()
        && InputText.readEntry(CARD, input, text) instanceof EntryReading.NotUnderstood not) {
      return new FigureOutcome.Refused(not.sentence());
    }
    Sheet changed = sheet(column).with(input, text);
    String other = EITHER.getOrDefault(input, "");
    sheets.keep(key(column), text.isEmpty() ? changed : changed.with(other, ""));
    return new FigureOutcome.Done();
  }

  /** Keeps a whole column as one step. */
  void keep(int column, Sheet sheet) {
    sheets.keep(key(column), sheet);
  }

  /** The figure as typed in this column alone; empty where there is none. */
  public String text(int column, String input) {
    return sheet(column).figures().getOrDefault(input, "");
  }

  /** The column's own figures. */
  public Inputs own(int column) {
    return SheetInputs.of(CARD, sheet(column));
  }

  public WhatIfPlan plan() {
    List<WhatIf> whatIfs =
        columns().stream()
            .filter(column -> column > 0)
            .map(column -> new WhatIf(sheet(column).name(), own(column)))
            .toList();
    return new WhatIfPlan(own(0), whatIfs);
  }

  /** Every column worked out, in the order of {@link #columns()}. */
  public List<PlanAnswer> work() {
    return plan().work();
  }

  /** All figures that a column works with: its own and those of now. */
  public Inputs all(int column) {
    return column == 0 ? own(0) : plan().inputsOf(new WhatIf(sheet(column).name(), own(column)));
  }
}
