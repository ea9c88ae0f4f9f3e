package wherefrom.job.numbers;

import java.util.Optional;
import wherefrom.quantity.Amount;
import wherefrom.quantity.AmountReading;
import wherefrom.quantity.AmountText;
import wherefrom.quantity.Unit;

/**
 * The gap that a sort of ring wants: so much per bore, or one gap from the ring maker's sheet.
 *
 * @param perBore gap over bore, a plain number such as 0.004; empty where a gap was typed
 * @param gap the gap itself; empty where a rule was typed
 * @param source the maker's sheet, or that there is none; never blank
 */
public record WantedGap(Optional<Amount> perBore, Optional<Amount> gap, String source) {

  /** What is typed of it. */
  enum Field {
    PER_BORE("per-bore"),
    GAP("gap"),
    SOURCE("source");

    private final String id;

    Field(String id) {
      this.id = id;
    }

    String of(Ring ring) {
      return ring.sort() + "-" + id;
    }
  }

  /** As a sheet keeps it; empty where nothing was typed of this ring. */
  static Optional<WantedGap> of(Sheet sheet, Ring ring) {
    Optional<Amount> rule = amount(sheet, Field.PER_BORE.of(ring), Unit.ONE);
    Optional<Amount> gap = amount(sheet, Field.GAP.of(ring), Unit.INCH);
    String source = sheet.figures().getOrDefault(Field.SOURCE.of(ring), "");
    return rule.isEmpty() && gap.isEmpty()
        ? Optional.empty()
        : Optional.of(new WantedGap(rule, gap, source));
  }

  private static Optional<Amount> amount(Sheet sheet, String key, Unit usual) {
    return AmountText.read(sheet.figures().getOrDefault(key, ""), usual)
            instanceof AmountReading.Understood understood
        ? Optional.of(understood.amount())
        : Optional.empty();
  }

  /** {@code 0.004 of the bore (common practice, no source)}. */
  public String words() {
    String what =
        gap.map(Amount::text)
            .orElseGet(() -> perBore.map(rule -> rule.text() + " of the bore").orElse(""));
    return what + " (" + source + ")";
  }
}
