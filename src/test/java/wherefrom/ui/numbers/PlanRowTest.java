package wherefrom.ui.numbers;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class PlanRowTest {

  @Test
  void aUnitThatAllFiguresShareStandsOnceInTheName() {
    PlanModel.Row row = row("Head cut", "0.0000 in", "0.0416 ± 0.0040 in", "");

    assertThat(row.name()).isEqualTo("Head cut, in");
    assertThat(words(row)).containsExactly("0.0000", "0.0416 ± 0.0040", "");
  }

  @Test
  void unlikeUnitsStayWithTheirFigures() {
    PlanModel.Row row = row("Head cut", "0.0416 in", "1.06 mm");

    assertThat(row.name()).isEqualTo("Head cut");
    assertThat(words(row)).containsExactly("0.0416 in", "1.06 mm");
  }

  @Test
  void aFigureWithoutUnitGivesNone() {
    PlanModel.Row row = row("Ratio", "8.787 ± 0.059", "9.5000");

    assertThat(row.name()).isEqualTo("Ratio");
    assertThat(words(row)).containsExactly("8.787 ± 0.059", "9.5000");
  }

  private static PlanModel.Row row(String name, String... words) {
    return PlanModel.Row.ofFigures(name, List.of(words).stream().map(PlanModel.Cell::of).toList());
  }

  private static List<String> words(PlanModel.Row row) {
    return row.cells().stream().map(PlanModel.Cell::words).toList();
  }
}
