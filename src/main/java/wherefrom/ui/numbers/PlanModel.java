package wherefrom.ui.numbers;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import wherefrom.job.OpenJob;
import wherefrom.job.numbers.FigureOutcome;
import wherefrom.job.numbers.MeasuredRoom;
import wherefrom.job.numbers.PlanBook;
import wherefrom.job.numbers.PlanEffects;
import wherefrom.job.numbers.PlanFollowing;
import wherefrom.job.numbers.PlanStepper;
import wherefrom.job.numbers.PlanStepper.Stepped;
import wherefrom.quantity.Amount;
import wherefrom.workings.AmountInput;
import wherefrom.workings.InputSpec;
import wherefrom.workings.ResultValue;
import wherefrom.workings.catalogue.compression.ChamberForRatio;
import wherefrom.workings.plan.PlanAnswer;
import wherefrom.workings.plan.PlanColumn;
import wherefrom.workings.plan.PlanInputs;

/** What the plan's screen shows: rows of results, a cell for each column. */
final class PlanModel {
  private final OpenJob job;
  private final PlanBook book;
  private final PlanStepper stepper;
  private int chosen;
  private Stepped stepped = Stepped.RATIO;

  PlanModel(OpenJob job) {
    this.job = job;
    book = new PlanBook(job);
    stepper = new PlanStepper(book);
    chosen = book.columns().get(book.columns().size() - 1);
  }

  PlanBook book() {
    return book;
  }

  List<Integer> columns() {
    return book.columns();
  }

  String name(int column) {
    return book.sheet(column).name();
  }

  int chosen() {
    if (!columns().contains(chosen)) {
      chosen = 0;
    }
    return chosen;
  }

  void choose(int column) {
    chosen = column;
  }

  void add() {
    book.findFree()
        .ifPresent(
            free -> {
              book.add(free);
              chosen = free;
            });
  }

  List<PlanTableRows.Row> rows() {
    return new PlanTableRows(
            book.work(), this::findEffects, side -> MeasuredRoom.find(job.state(), side))
        .all();
  }

  /** The rows but those of the ratio, which has a drawing of its own. */
  List<PlanTableRows.Row> figures() {
    return rows().stream()
        .filter(row -> !row.ratio())
        .map(PlanTableRows.Row::withUnitAside)
        .toList();
  }

  /** The ratio of a column, after its cut; empty where it is not known. */
  Optional<ResultValue> ratio(int column) {
    return answer(column) instanceof PlanColumn worked
        ? worked
            .result()
            .findValue(PlanTableRows.RATIO)
            .or(() -> worked.result().findValue(PlanTableRows.UNCUT))
        : Optional.empty();
  }

  /** The ratio in figures, without its band. */
  String ratioWords(int column) {
    return ratio(column)
        .map(value -> String.format(Locale.ROOT, "%.2f", value.value()))
        .orElse(answer(column) instanceof PlanColumn ? "?" : "cannot be");
  }

  /** The ratio that the chosen column aims at. */
  OptionalDouble wanted() {
    return book.all(chosen())
        .findMeasured(ChamberForRatio.TARGET.key())
        .map(wanted -> OptionalDouble.of(wanted.value().number().doubleValue()))
        .orElse(OptionalDouble.empty());
  }

  /** How many things follow from the chosen column; empty where it is how things are now. */
  String follows() {
    return findEffects(answer(chosen()))
        .map(known -> known.lines().size() + " to buy, " + known.checks().size() + " to check")
        .orElse("");
  }

  /** Nothing follows from how things are now. */
  private Optional<PlanEffects> findEffects(PlanAnswer answer) {
    return answer instanceof PlanColumn column && !column.consequences().isEmpty()
        ? Optional.of(PlanFollowing.of(book.job(), column))
        : Optional.empty();
  }

  PlanAnswer answer(int column) {
    return book.work().get(columns().indexOf(column));
  }

  /** All that is known of the chosen column: bands, margins with their source, what to measure. */
  List<ResultRows.Row> details() {
    return PlanDetails.of(answer(chosen()));
  }

  /** What follows from the chosen column. */
  List<ResultRows.Row> effects() {
    return PlanDetails.of(findEffects(answer(chosen())));
  }

  Stepped stepped() {
    return stepped;
  }

  void stepOther(Stepped figure) {
    stepped = figure;
  }

  static AmountInput input(String key) {
    return PlanInputs.all().stream()
        .filter(AmountInput.class::isInstance)
        .map(AmountInput.class::cast)
        .filter(input -> input.key().equals(key))
        .findFirst()
        .orElseThrow();
  }

  static String inputName(String key) {
    return name(input(key));
  }

  /** The plan calls the ratio that is aimed at by what it is. */
  static String name(InputSpec input) {
    return input.key().equals(ChamberForRatio.TARGET.key()) ? "wanted ratio" : input.words();
  }

  /** The input by the name that the plan has for it. */
  static InputSpec named(InputSpec input) {
    return input instanceof AmountInput amount
        ? new AmountInput(
            amount.key(),
            name(amount),
            amount.meaning(),
            amount.dimension(),
            amount.required(),
            amount.range())
        : input;
  }

  String steppedWords() {
    return inputName(stepped.key())
        + ": "
        + stepper.find(chosen(), stepped).map(Amount::text).orElse("not said");
  }

  FigureOutcome step(int direction) {
    return stepper.step(chosen(), stepped, direction);
  }

  FigureOutcome type(String text) {
    return book.set(chosen(), stepped.key(), text);
  }
}
