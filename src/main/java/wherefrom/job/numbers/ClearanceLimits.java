package wherefrom.job.numbers;

import java.util.Optional;
import wherefrom.inspection.measure.Limit;
import wherefrom.job.OpenJob;
import wherefrom.job.measure.Instruments;
import wherefrom.quantity.Amount;
import wherefrom.quantity.AmountReading;
import wherefrom.quantity.AmountText;

/**
 * The limits of an oil clearance, typed in from the engine's service information.
 *
 * @param source manual and page; empty where nobody typed it
 */
public record ClearanceLimits(Optional<Amount> lower, Optional<Amount> upper, String source) {
  private static final String RESULT = "clearance";

  /**
   * Those of a kind of bearing: what was typed where limits of readings are typed, else what was
   * typed here.
   */
  public static ClearanceLimits of(OpenJob job, Bearings bearings) {
    return job.state()
        .measures()
        .findLimit(bearings.plan(), RESULT)
        .map(limit -> new ClearanceLimits(limit.lower(), limit.upper(), limit.source()))
        .orElseGet(() -> of(new Sheets(job).find(bearings.sheet()).orElse(Sheet.empty(""))));
  }

  private static ClearanceLimits of(Sheet sheet) {
    return new ClearanceLimits(
        amount(sheet, Field.LOWER),
        amount(sheet, Field.UPPER),
        sheet.figures().getOrDefault(Field.SOURCE.id(), ""));
  }

  /** What is typed of them; the id stands in logbooks. */
  public enum Field {
    LOWER("lower"),
    UPPER("upper"),
    SOURCE("source");

    private final String id;

    Field(String id) {
      this.id = id;
    }

    public String id() {
      return id;
    }
  }

  /**
   * Keeps one of them; an empty text takes it out. As soon as the source is known they also judge
   * the bearings.
   */
  public static FigureOutcome set(OpenJob job, Bearings bearings, Field what, String text) {
    return job.asOne(
        () -> keep(job, bearings, what, text), kept -> kept instanceof FigureOutcome.Done);
  }

  private static FigureOutcome keep(OpenJob job, Bearings bearings, Field what, String text) {
    if (what == Field.SOURCE || text.isEmpty()) {
      return keep(job, bearings, of(job, bearings).with(what, Optional.empty(), text));
    }
    AmountReading read = AmountText.read(text);
    if (read instanceof AmountReading.Understood understood) {
      Optional<Amount> end = Optional.of(understood.amount());
      return keep(job, bearings, of(job, bearings).with(what, end, text));
    }
    return new FigureOutcome.Refused(((AmountReading.NotUnderstood) read).sentence());
  }

  /** The other end is carried as it is, never read again. */
  private ClearanceLimits with(Field what, Optional<Amount> end, String text) {
    return switch (what) {
      case LOWER -> new ClearanceLimits(end, upper, source);
      case UPPER -> new ClearanceLimits(lower, end, source);
      case SOURCE -> new ClearanceLimits(lower, upper, text);
    };
  }

  private static FigureOutcome keep(OpenJob job, Bearings bearings, ClearanceLimits then) {
    boolean judging = job.state().measures().findLimit(bearings.plan(), RESULT).isPresent();
    boolean limited = then.lower().isPresent() || then.upper().isPresent();
    if (!then.source().isBlank() && (limited || judging)) {
      Instruments.Answer answer =
          new Instruments(job)
              .limit(bearings.plan(), RESULT, then.lower(), then.upper(), then.source());
      if (answer instanceof Instruments.Answer.Refused refused) {
        return new FigureOutcome.Refused(refused.sentence());
      }
      new Sheets(job).drop(bearings.sheet());
      return new FigureOutcome.Done();
    }
    if (judging) {
      return new FigureOutcome.Refused("These limits judge bearings. Type the manual and page.");
    }
    new Sheets(job).keep(bearings.sheet(), then.sheet(bearings));
    return new FigureOutcome.Done();
  }

  /** {@code 0.0010 in to 0.0025 in (manual, page 6-12)}. */
  public String words() {
    if (lower.isEmpty() && upper.isEmpty()) {
      return "none typed";
    }
    String from = source.isBlank() ? "source not typed" : source;
    return new Limit("", RESULT, lower, upper, from).words() + " (" + from + ")";
  }

  private static String words(Optional<Amount> limit) {
    return limit.map(Amount::text).orElse("");
  }

  private Sheet sheet(Bearings bearings) {
    return Sheet.empty("limits of " + bearings.id() + " clearance")
        .with(Field.LOWER.id(), words(lower))
        .with(Field.UPPER.id(), words(upper))
        .with(Field.SOURCE.id(), source);
  }

  private static Optional<Amount> amount(Sheet sheet, Field end) {
    return AmountText.read(sheet.figures().getOrDefault(end.id(), ""))
            instanceof AmountReading.Understood understood
        ? Optional.of(understood.amount())
        : Optional.empty();
  }
}
