package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.measure.Judgement;
import wherefrom.inspection.measure.Limit;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.workings.ResultValue;
import wherefrom.workings.catalogue.accept.Acceptance.Ruling;

class ClearanceRangeTest {
  private static final Limit LIMIT =
      new Limit(
          "main-journal",
          "clearance",
          Optional.of(Amount.of("0.0010", Unit.INCH)),
          Optional.of(Amount.of("0.0025", Unit.INCH)),
          "this engine's manual, p. 9");

  private static ResultValue clearance(double value) {
    return new ResultValue("clearance", "oil clearance", Unit.INCH, value, 0.000131, List.of());
  }

  private static Judgement judge(double least, double most) {
    return new ClearanceRange(clearance(least), clearance(most)).judge(LIMIT);
  }

  /** The guard band is 1.65·0.000131 = 0.000216 in (ISO 14253-1). */
  @Test
  void aBearingIsGoodOnlyWhereItsLeastAndItsMostAre() {
    assertThat(judge(0.0016, 0.0020).decision()).isEqualTo(Ruling.ACCEPT);
    assertThat(judge(0.0018, 0.0023).decision()).isEqualTo(Ruling.UNDECIDED);
    assertThat(judge(0.0011, 0.0016).decision()).isEqualTo(Ruling.UNDECIDED);
    assertThat(judge(0.0006, 0.0020).decision()).isEqualTo(Ruling.REJECT);
    assertThat(judge(0.0016, 0.0029).decision()).isEqualTo(Ruling.REJECT);
  }

  @Test
  void theEndThatDecidesIsNamed() {
    assertThat(judge(0.0018, 0.0023).sentence())
        .startsWith("oil clearance at its most 0.00230 in ± 0.00013 in, limit ");
    assertThat(judge(0.0006, 0.0024).sentence()).startsWith("oil clearance at its least 0.00060");
    assertThat(judge(0.0020, 0.0020).sentence()).startsWith("oil clearance 0.00200");
  }
}
