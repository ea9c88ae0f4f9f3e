package wherefrom.ui.numbers;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.quantity.Unit;

class PlanRowTest {

  @Test
  void aUnitThatAllFiguresShareStandsOnceInTheName() {
    PlanTableRows.Row row = row("Head cut", in("0.0000"), in("0.0416 ± 0.0040"), words(""));

    assertThat(row.name()).isEqualTo("Head cut, in");
    assertThat(words(row)).containsExactly("0.0000", "0.0416 ± 0.0040", "");
  }

  @Test
  void unlikeUnitsStayWithTheirFigures() {
    PlanTableRows.Row row = row("Head cut", in("0.0416"), of("1.06", Unit.MILLIMETRE));

    assertThat(row.name()).isEqualTo("Head cut");
    assertThat(words(row)).containsExactly("0.0416 in", "1.06 mm");
  }

  @Test
  void aFigureWithoutUnitGivesNone() {
    PlanTableRows.Row row = row("Ratio", of("8.787 ± 0.059", Unit.ONE), of("9.5000", Unit.ONE));

    assertThat(row.name()).isEqualTo("Ratio");
    assertThat(words(row)).containsExactly("8.787 ± 0.059", "9.5000");
  }

  @Test
  void wordsAreNoUnit() {
    PlanTableRows.Row unknown = row("Valve lift", words("not known"), words("not known"));

    assertThat(unknown.name()).isEqualTo("Valve lift");
    assertThat(words(unknown)).containsExactly("not known", "not known");
    assertThat(row("Valve lift", in("0.4500"), words("not known")).name()).isEqualTo("Valve lift");
  }

  private static PlanTableRows.Cell in(String figure) {
    return of(figure, Unit.INCH);
  }

  private static PlanTableRows.Cell of(String figure, Unit unit) {
    return new PlanTableRows.Cell(figure, Optional.of(unit), Optional.empty());
  }

  private static PlanTableRows.Cell words(String words) {
    return PlanTableRows.Cell.of(words);
  }

  private static PlanTableRows.Row row(String name, PlanTableRows.Cell... cells) {
    return PlanTableRows.Row.ofFigures(name, List.of(cells));
  }

  private static List<String> words(PlanTableRows.Row row) {
    return row.cells().stream().map(PlanTableRows.Cell::words).toList();
  }
}
