package wherefrom.ui.numbers;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.quantity.Unit;

class PlanRowTest {

  @Test
  void aUnitThatAllFiguresShareStandsOnceInTheName() {
    PlanRows.Row row = row("Head cut", in("0.0000"), in("0.0416 ± 0.0040"), words(""));

    assertThat(row.name()).isEqualTo("Head cut, in");
    assertThat(words(row)).containsExactly("0.0000", "0.0416 ± 0.0040", "");
  }

  @Test
  void unlikeUnitsStayWithTheirFigures() {
    PlanRows.Row row = row("Head cut", in("0.0416"), of("1.06", Unit.MILLIMETRE));

    assertThat(row.name()).isEqualTo("Head cut");
    assertThat(words(row)).containsExactly("0.0416 in", "1.06 mm");
  }

  @Test
  void aFigureWithoutUnitGivesNone() {
    PlanRows.Row row = row("Ratio", of("8.787 ± 0.059", Unit.ONE), of("9.5000", Unit.ONE));

    assertThat(row.name()).isEqualTo("Ratio");
    assertThat(words(row)).containsExactly("8.787 ± 0.059", "9.5000");
  }

  @Test
  void wordsAreNoUnit() {
    PlanRows.Row unknown = row("Valve lift", words("not known"), words("not known"));

    assertThat(unknown.name()).isEqualTo("Valve lift");
    assertThat(words(unknown)).containsExactly("not known", "not known");
    assertThat(row("Valve lift", in("0.4500"), words("not known")).name()).isEqualTo("Valve lift");
  }

  private static PlanRows.Cell in(String figure) {
    return of(figure, Unit.INCH);
  }

  private static PlanRows.Cell of(String figure, Unit unit) {
    return new PlanRows.Cell(figure, Optional.of(unit), Optional.empty());
  }

  private static PlanRows.Cell words(String words) {
    return PlanRows.Cell.of(words);
  }

  private static PlanRows.Row row(String name, PlanRows.Cell... cells) {
    return PlanRows.Row.ofFigures(name, List.of(cells));
  }

  private static List<String> words(PlanRows.Row row) {
    return row.cells().stream().map(PlanRows.Cell::words).toList();
  }
}
