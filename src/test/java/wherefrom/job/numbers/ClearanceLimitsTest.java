package wherefrom.job.numbers;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.job.BenchJob;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.LimitTyped;
import wherefrom.job.numbers.ClearanceLimits.Field;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;

class ClearanceLimitsTest {
  private static final String SOURCE = "manual, page 6-12";

  private final OpenJob job = BenchJob.v8().job;

  private void set(Field what, String text) {
    assertThat(ClearanceLimits.set(job, Bearings.MAINS, what, text))
        .isEqualTo(new FigureOutcome.Done());
  }

  private ClearanceLimits limits() {
    return ClearanceLimits.of(job, Bearings.MAINS);
  }

  private static Amount amount(String figure, Unit unit) {
    return Amount.of(figure, unit);
  }

  /** One end in inches, the other in millimetres: each change keeps the other end. */
  @Test
  void anEndInAnotherUnitIsKeptWhenTheOtherOneChanges() {
    set(Field.LOWER, "0.0015 in");
    set(Field.UPPER, "0.08 mm");
    set(Field.SOURCE, SOURCE);
    assertThat(size(limits().upper())).isEqualByComparingTo("0.08");
    set(Field.LOWER, "0.0010 in");
    assertThat(size(limits().lower())).isEqualByComparingTo("0.0254");
    assertThat(size(limits().upper())).isEqualByComparingTo("0.08");
    set(Field.SOURCE, "manual, page 6-13");
    assertThat(size(limits().upper())).isEqualByComparingTo("0.08");
    assertThat(limits().words()).isEqualTo("0.0254 mm to 0.08 mm (manual, page 6-13)");
  }

  private static java.math.BigDecimal size(Optional<Amount> end) {
    return end.orElseThrow().inBase();
  }

  /** Logbooks of earlier versions hold an upper end of forty digits. */
  @Test
  void anEndOfManyDigitsIsKeptToo() {
    Amount long40 = amount("0.003149606299212598425196850393700787401575", Unit.INCH);
    job.record(
        new LimitTyped(
            Bearings.MAINS.plan(),
            "clearance",
            Optional.of(amount("0.0015", Unit.INCH)),
            Optional.of(long40),
            SOURCE));
    set(Field.LOWER, "0.0010 in");
    assertThat(limits().upper()).contains(long40);
  }

  @Test
  void anEndOfAnotherDimensionIsRefused() {
    set(Field.LOWER, "0.0015 in");
    set(Field.SOURCE, SOURCE);
    assertThat(ClearanceLimits.set(job, Bearings.MAINS, Field.UPPER, "3 lb"))
        .isInstanceOf(FigureOutcome.Refused.class);
    assertThat(limits().upper()).isEmpty();
    assertThat(limits().lower()).contains(amount("0.0015", Unit.INCH));
  }

  @Test
  void twoEndsOfALimitStandInTheUnitThatHoldsBothExactly() {
    LimitTyped typed =
        new LimitTyped(
            "pushrod-runout",
            "value",
            Optional.of(amount("0.05", Unit.MILLIMETRE)),
            Optional.of(amount("0.003", Unit.INCH)),
            SOURCE);
    assertThat(typed.lower()).contains(amount("0.05", Unit.MILLIMETRE));
    assertThat(typed.upper()).contains(amount("0.0762", Unit.MILLIMETRE));
    LimitTyped other =
        new LimitTyped(
            "pushrod-runout",
            "value",
            Optional.of(amount("0.003", Unit.INCH)),
            Optional.of(amount("0.08", Unit.MILLIMETRE)),
            SOURCE);
    assertThat(other.lower()).contains(amount("0.0762", Unit.MILLIMETRE));
    assertThat(other.upper()).contains(amount("0.08", Unit.MILLIMETRE));
  }
}
