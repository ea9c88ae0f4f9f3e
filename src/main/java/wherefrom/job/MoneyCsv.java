package wherefrom.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import wherefrom.job.entry.CostState;
import wherefrom.quantity.Money;

/** Cost lines out to a table and in again. */
public final class MoneyCsv {
  private static final List<String> HEADER = List.of("what", "about", "state", "amount", "note");

  private final OpenJob job;

  public MoneyCsv(OpenJob job) {
    this.job = job;
  }

  public String write() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(HEADER);
    for (CostLine line : new MoneyBook(job).lines()) {
      rows.add(
          List.of(
              line.what(),
              line.about(),
              line.state().name().toLowerCase(Locale.ROOT),
              line.amount().text(),
              line.note()));
    }
    return Csv.write(rows);
  }

  /**
   * Adds the rows as new lines. All or none: a row that is wrong is named.
   *
   * @return the sentence of the first fault; empty when all were added
   */
  public Optional<String> read(String text) {
    List<List<String>> rows;
    try {
      rows = Csv.read(text);
    } catch (IllegalArgumentException e) {
      return Optional.of(e.getMessage() + ". Nothing was added.");
    }
    if (rows.isEmpty() || !rows.get(0).equals(HEADER)) {
      return Optional.of(
          "The first row must read " + String.join(",", HEADER) + ". Nothing was added.");
    }
    for (int at = 1; at < rows.size(); at++) {
      List<String> row = rows.get(at);
      boolean good =
          row.size() == HEADER.size()
              && !row.get(0).isBlank()
              && state(row.get(2)).isPresent()
              && Money.find(row.get(3)).isPresent();
      if (!good) {
        return Optional.of(
            "Row "
                + (at + 1)
                + " is wrong: it needs a name, a state (quoted, committed, paid, avoided) and an"
                + " amount like 12.50. Nothing was added.");
      }
    }
    MoneyBook book = new MoneyBook(job);
    for (List<String> row : rows.subList(1, rows.size())) {
      CostState state = state(row.get(2)).orElseThrow();
      book.note(0, row.get(0), row.get(1), state, row.get(3), 0, row.get(4));
    }
    return Optional.empty();
  }

  private static Optional<CostState> state(String word) {
    return Stream.of(CostState.values())
        .filter(state -> state.name().equalsIgnoreCase(word.strip()))
        .findFirst();
  }
}
