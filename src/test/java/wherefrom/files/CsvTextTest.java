package wherefrom.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** No cell is a formula (OWASP, CSV Injection), and every one comes back as it was. */
class CsvTextTest {
  @ParameterizedTest
  @CsvSource({
    "=1+1,'''=1+1'",
    "@SUM(A1),'''@SUM(A1)'",
    "+cmd|x,'''+cmd|x'",
    "-2+3,'''-2+3'",
    "' =1',''' =1'",
    "＝1,'''＝1'",
    "a;=1,'a;''=1'",
    "'''=1','''''=1'"
  })
  void whatBeginsLikeAFormulaIsMarkedAsText(String cell, String written) {
    assertThat(Csv.write(List.of(List.of(cell)))).isEqualTo(written + "\r\n");
    assertThat(Csv.read(Csv.write(List.of(List.of(cell, "x")))))
        .isEqualTo(List.of(List.of(cell, "x")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"-12.50", "+3", "-", "12,5", "a=b", "'hollow'", "o'clock", "x-y"})
  void whatIsNoneStaysAsItIs(String cell) {
    assertThat(CsvText.marked(cell)).isEqualTo(cell);
  }

  @Test
  void everyCellComesBackAsItWasAndNoneIsAFormula() {
    Random random = new Random(12);
    String signs = "=+-@';, \t\"\n\rab1.\uFF1D";
    for (int round = 0; round < 20_000; round++) {
      List<String> row = new ArrayList<>(List.of("first"));
      for (int cell = random.nextInt(4); cell >= 0; cell--) {
        StringBuilder text = new StringBuilder();
        for (int at = random.nextInt(7); at > 0; at--) {
          text.append(signs.charAt(random.nextInt(signs.length())));
        }
        row.add(text.toString());
      }
      assertThat(Csv.read(Csv.write(List.of(row)))).isEqualTo(List.of(row));
      for (String cell : row) {
        assertThat(CsvText.marked(cell)).doesNotMatch("(?s)\\s*[=+@-].*[^0-9.,+-].*");
      }
    }
  }
}
