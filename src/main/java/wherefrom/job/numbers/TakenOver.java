package wherefrom.job.numbers;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.FiguresKept;
import wherefrom.workings.InputSpec;
import wherefrom.workings.Working;
import wherefrom.workings.plan.PlanInputs;

/** Figures of how things are that were typed for single workings and that the plan lacks. */
public final class TakenOver {
  private final OpenJob job;
  private final Sheets sheets;

  public TakenOver(OpenJob job) {
    this.job = job;
    this.sheets = new Sheets(job);
  }

  /** By the input's key, as typed; of two the one that was kept last. */
  public Map<String, String> find() {
    Map<String, String> now = new PlanBook(job).sheet(0).figures();
    Map<String, String> found = new TreeMap<>();
    for (LoggedEntry logged : job.state().standing()) {
      if (logged.entry() instanceof FiguresKept kept) {
        WorkingBook.findWorking(kept.sheet())
            .flatMap(working -> sheets.find(kept.sheet()).map(sheet -> same(working, sheet)))
            .ifPresent(found::putAll);
      }
    }
    found.keySet().removeAll(now.keySet());
    return found;
  }

  /** Puts them into the column of now, in one step. */
  public void take() {
    job.inOne(() -> takeOnce());
  }

  private void takeOnce() {
    PlanBook book = new PlanBook(job);
    Sheet sheet = book.sheet(0);
    for (Map.Entry<String, String> figure : find().entrySet()) {
      sheet = sheet.with(figure.getKey(), figure.getValue());
    }
    book.keep(0, sheet);
  }

  /** The figures whose inputs mean the same in the plan. */
  private static Map<String, String> same(Working working, Sheet sheet) {
    Map<String, String> figures = new TreeMap<>();
    for (InputSpec input : PlanInputs.all()) {
      Optional<InputSpec> other = working.card().findInput(input.key());
      String text = sheet.figures().getOrDefault(input.key(), "");
      boolean alike = other.filter(spec -> spec.meaning().equals(input.meaning())).isPresent();
      if (alike && !text.isEmpty() && !PlanGroup.isChange(input.key())) {
        figures.put(input.key(), text);
      }
    }
    return figures;
  }
}
