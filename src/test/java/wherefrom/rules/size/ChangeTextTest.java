package wherefrom.rules.size;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;

class ChangeTextTest {
  private static Change typed(String detail) {
    return ChangeText.read(ChangeKind.BORED, "B3", detail, Unit.INCH);
  }

  private static Change kept(String detail) {
    return ChangeText.ofLogbook(ChangeKind.BORED, "B3", detail);
  }

  @Test
  void aBareFigureGetsItsUnitWhereItIsTyped() {
    assertThat(typed("0.030").detail()).isEqualTo("0.030 in");
    assertThat(typed("0.030").size()).contains(Amount.of("0.030", Unit.INCH));
  }

  @Test
  void whatWasSaidStaysAsItWasSaid() {
    assertThat(typed("0.030 in over").words()).isEqualTo("bored, cylinder 3, bore, 0.030 in over");
    assertThat(typed("where it knocks").size()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"0.030 in", "thirty over", "0.75 mm", "3.9000 in", "", "oval"})
  void aLogbookGivesBackWhatNeedsNoUnitOfTheJob(String detail) {
    assertThat(kept(detail)).isEqualTo(typed(detail));
  }

  @ParameterizedTest
  @ValueSource(strings = {"0.030", "0.030 over", "standard", "STD"})
  void whatAnEarlierLogbookLeavesToTheJobIsReadInItsUnit(String detail) {
    assertThat(kept(detail).size()).isEmpty();
    Change read = ChangeText.in(Unit.INCH, kept(detail));
    assertThat(read.size()).isEqualTo(typed(detail).size()).isPresent();
    assertThat(read.detail()).isEqualTo(detail);
  }
}
