package wherefrom.job.numbers;

import java.util.Optional;
import wherefrom.job.OpenJob;
import wherefrom.workings.EntryReading;
import wherefrom.workings.InputSpec;
import wherefrom.workings.InputText;
import wherefrom.workings.Inputs;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingAnswer;
import wherefrom.workings.catalogue.Workings;

/** One working with the figures that the job keeps for it. */
public final class WorkingBook {
  private static final String PREFIX = "working-";

  private final Working working;
  private final Optional<OpenJob> job;
  private Sheet loose;

  /**
   * @param job where the figures are kept; without one they are forgotten with this object
   */
  public WorkingBook(Working working, Optional<OpenJob> job) {
    this.working = working;
    this.job = job;
    this.loose = Sheet.empty(working.card().title());
  }

  public Working working() {
    return working;
  }

  public Sheet sheet() {
    return job.flatMap(open -> new Sheets(open).find(key())).orElse(loose);
  }

  private String key() {
    return PREFIX + working.key();
  }

  /** The name of today of a sheet, for those that were kept under an older one. */
  static String today(String sheet) {
    return sheet.startsWith(PREFIX)
        ? PREFIX + Workings.today(sheet.substring(PREFIX.length()))
        : sheet;
  }

  /** The working whose figures a sheet holds; empty for other sheets. */
  static Optional<Working> findWorking(String sheet) {
    return sheet.startsWith(PREFIX)
        ? Workings.find(sheet.substring(PREFIX.length()))
        : Optional.empty();
  }

  public Inputs inputs() {
    return SheetInputs.of(working.card(), sheet());
  }

  public WorkingAnswer answer() {
    return working.compute(inputs());
  }

  /** The figure as typed; empty where there is none. */
  public String text(InputSpec input) {
    return sheet().figures().getOrDefault(input.key(), "");
  }

  /** Keeps a figure as typed; an empty text takes it out. */
  public FigureOutcome set(String key, String text) {
    if (!text.isEmpty()
        && InputText.readEntry(working.card(), key, text)
            instanceof EntryReading.NotUnderstood not) {
      return new FigureOutcome.Refused(not.sentence());
    }
    if (job.isPresent()) {
      job.get().inOne(() -> keep(sheet().with(key, text)));
    } else {
      keep(sheet().with(key, text));
    }
    return new FigureOutcome.Done();
  }

  /** Takes every figure out. */
  public void clear() {
    keep(Sheet.empty(working.card().title()));
  }

  private void keep(Sheet sheet) {
    loose = sheet;
    job.ifPresent(open -> new Sheets(open).keep(key(), sheet));
  }
}
