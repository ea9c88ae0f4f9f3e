package wherefrom.job.money;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import wherefrom.files.Csv;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.CostState;
import wherefrom.quantity.JobCurrency;
import wherefrom.quantity.Money;

/** Cost lines out to a table and in again. */
public final class MoneyCsv {
  private static final List<String> HEADER =
      List.of("what", "about", "state", "amount", "note", "currency");

  private static final int MOST_ROWS = 2_000;
  private static final int MOST_LETTERS = 400;

  /** Tables without the currency are read too. */
  private static final List<String> SHORT = HEADER.subList(0, 5);

  private final OpenJob job;

  public MoneyCsv(OpenJob job) {
    this.job = job;
  }

  public String write() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(HEADER);
    MoneyBook book = new MoneyBook(job);
    String currency = book.findTender().map(JobCurrency::letters).orElse("");
    for (CostLine line : book.lines()) {
      rows.add(
          List.of(
              line.what().id(),
              line.about(),
              line.state().name().toLowerCase(Locale.ROOT),
              line.amount().text(),
              line.note(),
              currency));
    }
    return Csv.write(rows);
  }

  /**
   * Adds the rows as new lines. All or none: a row that is wrong is named.
   *
   * @return the sentence of the first fault; empty when all were added
   */
  public Optional<String> read(String text) {
    return job.asOne(() -> readOnce(text));
  }

  private Optional<String> readOnce(String text) {
    List<List<String>> rows;
    try {
      // The byte order mark that a spreadsheet may put first is no part of the first column.
      rows = Csv.read(text.startsWith("\uFEFF") ? text.substring(1) : text);
    } catch (IllegalArgumentException e) {
      return Optional.of(e.getMessage() + ". Nothing was added.");
    }
    if (rows.isEmpty() || !(rows.get(0).equals(HEADER) || rows.get(0).equals(SHORT))) {
      return Optional.of(
          "The first row must read " + String.join(",", HEADER) + ". Nothing was added.");
    }
    if (rows.size() > MOST_ROWS) {
      return Optional.of("The table has more than " + MOST_ROWS + " rows. Nothing was added.");
    }
    MoneyBook book = new MoneyBook(job);
    for (int at = 1; at < rows.size(); at++) {
      Optional<String> fault = findFault(rows.get(at), rows.get(0).size(), book.findTender());
      if (fault.isPresent()) {
        return Optional.of("Row " + (at + 1) + " " + fault.get() + " Nothing was added.");
      }
    }
    return job.asOne(
        () -> {
          for (List<String> row : rows.subList(1, rows.size())) {
            CostState state = state(row.get(2)).orElseThrow();
            book.note(0, row.get(0), row.get(1), state, row.get(3), 0, row.get(4));
          }
          return Optional.<String>empty();
        });
  }

  private static Optional<String> findFault(
      List<String> row, int columns, Optional<JobCurrency> tender) {
    if (row.size() != columns) {
      return Optional.of("is wrong: it has " + row.size() + " columns, not " + columns + ".");
    }
    if (row.stream().anyMatch(cell -> cell.length() > MOST_LETTERS)) {
      return Optional.of("is wrong: a cell is longer than " + MOST_LETTERS + " letters.");
    }
    if (row.get(0).isBlank()) {
      return Optional.of("is wrong: its first column says what it is for.");
    }
    if (state(row.get(2)).isEmpty()) {
      String word = row.get(2);
      return Optional.of(
          "is wrong: \"" + word + "\" is not known. Use one of: quoted, committed, paid, avoided.");
    }
    String amount = row.get(3);
    if (tender.map(one -> one.read(amount)).orElseGet(() -> Money.find(amount)).isEmpty()) {
      String example = tender.map(JobCurrency::example).orElse("12.50");
      return Optional.of(
          "is wrong: \"" + amount + "\" is not an amount; write it like " + example + ".");
    }
    String letters = columns > SHORT.size() ? row.get(columns - 1).strip() : "";
    boolean other =
        !letters.isEmpty() && tender.filter(one -> !one.letters().equals(letters)).isPresent();
    return other
        ? Optional.of("is in " + letters + ", and the job is in " + tender.get().letters() + ".")
        : Optional.empty();
  }

  private static Optional<CostState> state(String word) {
    return Stream.of(CostState.values())
        .filter(state -> state.name().equalsIgnoreCase(word.strip()))
        .findFirst();
  }
}
