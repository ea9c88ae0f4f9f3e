package wherefrom.ui.numbers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.job.numbers.WorkingBook;
import wherefrom.quantity.Amount;
import wherefrom.quantity.AmountReading;
import wherefrom.quantity.AmountText;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Backward;
import wherefrom.workings.BackwardAnswer;
import wherefrom.workings.Inputs;
import wherefrom.workings.Nonsense;
import wherefrom.workings.Range;
import wherefrom.workings.Result;
import wherefrom.workings.ResultValue;
import wherefrom.workings.Solution;
import wherefrom.workings.WorkingAnswer;

/** Works backwards: which input gives the wanted result. */
final class SolveModel {
  private static final int PROBES = 24;

  private final WorkingBook book;
  private Optional<AmountInput> unknown = Optional.empty();
  private Optional<ResultValue> result = Optional.empty();
  private String wanted = "";

  SolveModel(WorkingBook book) {
    this.book = book;
  }

  /** The inputs that can be looked for. */
  List<AmountInput> unknowns() {
    return book.working().card().inputs().stream()
        .filter(AmountInput.class::isInstance)
        .map(AmountInput.class::cast)
        .toList();
  }

  Optional<AmountInput> unknown() {
    return unknown;
  }

  void find(AmountInput input) {
    unknown = Optional.of(input);
    if (result.isEmpty()) {
      result = results().stream().findFirst();
    }
  }

  Optional<ResultValue> result() {
    return result;
  }

  void want(ResultValue chosen) {
    result = Optional.of(chosen);
    wanted = "";
  }

  /** The wanted value as typed. */
  String wanted() {
    return wanted;
  }

  void want(String text) {
    wanted = text;
  }

  /** The wanted result as something to be typed. */
  Optional<AmountInput> asked() {
    return result.map(
        value ->
            new AmountInput(
                value.key(),
                value.words(),
                "The value you want.",
                value.unit().dimension(),
                true,
                Range.signed(value.unit().dimension())));
  }

  /** What the working gives; found with a trial value where the unknown is not there yet. */
  List<ResultValue> results() {
    WorkingAnswer answer = book.answer();
    for (int at = 0; at < PROBES && !(answer instanceof Result) && unknown.isPresent(); at++) {
      AmountInput input = unknown.get();
      Amount trial =
          Amount.of(
              Math.pow(10, -2 + at / 3.0), wherefrom.quantity.Unit.getBase(input.dimension()));
      answer = book.working().compute(book.inputs().with(input.key(), trial));
    }
    return answer instanceof Result found ? found.values() : List.of();
  }

  Optional<BackwardAnswer> answer() {
    if (unknown.isEmpty() || result.isEmpty() || wanted.isEmpty()) {
      return Optional.empty();
    }
    AmountReading reading = AmountText.read(wanted, result.get().unit());
    if (!(reading instanceof AmountReading.Understood understood)) {
      return Optional.of(new Nonsense("", ((AmountReading.NotUnderstood) reading).sentence()));
    }
    Inputs known = book.inputs();
    return Optional.of(
        Backward.solve(
            book.working(), known, unknown.get().key(), result.get().key(), understood.amount()));
  }

  /** The answer as rows. */
  List<ResultRows.Row> rows() {
    if (result.isEmpty()) {
      return ResultRows.of(book.answer());
    }
    return answer()
        .map(SolveModel::rows)
        .orElseGet(
            () -> List.of(ResultRows.Row.of("Which value?", "Type the value that is wanted.")));
  }

  private static List<ResultRows.Row> rows(BackwardAnswer answer) {
    return answer.match(
        SolveModel::solved,
        none -> List.of(ResultRows.Row.of("There is no answer", none.sentence())),
        ResultRows::of,
        ResultRows::of);
  }

  private static List<ResultRows.Row> solved(Solution solution) {
    List<ResultRows.Row> rows = new ArrayList<>();
    rows.add(ResultRows.of(solution.unknown()));
    rows.addAll(ResultRows.of(solution.result()));
    return rows;
  }

  /** The found value, to be put into the working; without the band that the others give it. */
  Optional<String> findText() {
    return answer()
        .filter(Solution.class::isInstance)
        .map(
            found -> {
              ResultValue value = ((Solution) found).unknown();
              return value.amount().rounded(value.unit().decimals() + 1).text();
            });
  }
}
