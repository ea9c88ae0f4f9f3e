package wherefrom.ui.numbers;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.quantity.Unit;

class PlanRowTest {

  @Test
  void aUnitThatAllFiguresShareStandsOnceInTheName() {
    PlanModel.Row row = row("Head cut", in("0.0000"), in("0.0416 ± 0.0040"), words(""));

    assertThat(row.name()).isEqualTo("Head cut, in");
    assertThat(words(row)).containsExactly("0.0000", "0.0416 ± 0.0040", "");
  }

  @Test
  void unlikeUnitsStayWithTheirFigures() {
    PlanModel.Row row = row("Head cut", in("0.0416"), of("1.06", Unit.MILLIMETRE));

    assertThat(row.name()).isEqualTo("Head cut");
    assertThat(words(row)).containsExactly("0.0416 in", "1.06 mm");
  }

  @Test
  void aFigureWithoutUnitGivesNone() {
    PlanModel.Row row = row("Ratio", of("8.787 ± 0.059", Unit.ONE), of("9.5000", Unit.ONE));

    assertThat(row.name()).isEqualTo("Ratio");
    assertThat(words(row)).containsExactly("8.787 ± 0.059", "9.5000");
  }

  @Test
  void wordsAreNoUnit() {
    PlanModel.Row unknown = row("Valve lift", words("not known"), words("not known"));

    assertThat(unknown.name()).isEqualTo("Valve lift");
    assertThat(words(unknown)).containsExactly("not known", "not known");
    assertThat(row("Valve lift", in("0.4500"), words("not known")).name()).isEqualTo("Valve lift");
  }

  private static PlanModel.Cell in(String figure) {
    return of(figure, Unit.INCH);
  }

  private static PlanModel.Cell of(String figure, Unit unit) {
    return new PlanModel.Cell(figure, Optional.of(unit), Optional.empty());
  }

  private static PlanModel.Cell words(String words) {
    return PlanModel.Cell.of(words);
  }

  private static PlanModel.Row row(String name, PlanModel.Cell... cells) {
    return PlanModel.Row.ofFigures(name, List.of(cells));
  }

  private static List<String> words(PlanModel.Row row) {
    return row.cells().stream().map(PlanModel.Cell::words).toList();
  }
}
