package wherefrom.job.timing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import wherefrom.engine.Spots;
import wherefrom.engine.ValveSpot;
import wherefrom.job.OpenJob;
import wherefrom.job.numbers.FigureOutcome;
import wherefrom.job.numbers.Sheet;
import wherefrom.job.numbers.Sheets;
import wherefrom.quantity.Amount;
import wherefrom.quantity.AmountReading;
import wherefrom.quantity.AmountText;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.workings.timing.TimingValue;

/**
 * Readings, settings and card of the timing check, kept as sheets of figures. A sheet is logged
 * anew with every figure, so that leaving half-way loses nothing and UNDO takes one back.
 */
public final class TimingBook {
  private static final String SETTINGS = "timing-settings";
  private static final String CARD = "timing-card";
  private static final String SOURCE = "source";
  private static final BigDecimal MOST_DEGREES = BigDecimal.valueOf(720);

  private final OpenJob job;
  private final Sheets sheets;

  public TimingBook(OpenJob job) {
    this.job = job;
    this.sheets = new Sheets(job);
  }

  public OpenJob job() {
    return job;
  }

  private static String sheet(ValveSpot lobe) {
    return "timing-" + lobe.key();
  }

  private Sheet find(String key, String name) {
    return sheets.find(key).orElseGet(() -> Sheet.empty(name));
  }

  private static String name(ValveSpot lobe) {
    return "the lobe of " + lobe.words();
  }

  /** The lobes that have a reading, cylinder by cylinder. */
  public List<ValveSpot> lobes() {
    return Spots.valves(job.state().layout()).stream()
        .filter(lobe -> !readings(lobe).isEmpty())
        .sorted(Comparator.comparing(ValveSpot::cylinder).thenComparing(ValveSpot::side))
        .toList();
  }

  /** The cylinders that have a reading on one of their lobes. */
  public List<Integer> cylinders() {
    return lobes().stream().map(ValveSpot::cylinder).distinct().toList();
  }

  /** The readings over one lobe, in the order of the wheel. */
  public List<LiftReading> readings(ValveSpot lobe) {
    List<LiftReading> readings = new ArrayList<>();
    Map<String, String> figures = find(sheet(lobe), name(lobe)).figures();
    figures.forEach(
        (degrees, lift) -> readings.add(new LiftReading(amount(degrees), amount(lift))));
    readings.sort(Comparator.comparing(reading -> reading.degrees().number()));
    return readings;
  }

  private static Amount amount(String kept) {
    return ((AmountReading.Understood) AmountText.read(kept)).amount();
  }

  /**
   * Takes a reading; another at the same angle corrects it.
   *
   * @param degrees as typed; degrees where no unit is named
   * @param lift as typed, in the job's unit of length where none is named
   */
  public FigureOutcome read(ValveSpot lobe, String degrees, String lift) {
    return job.asOne(() -> readOnce(lobe, degrees, lift));
  }

  private FigureOutcome readOnce(ValveSpot lobe, String degrees, String lift) {
    AmountReading wheel = AmountText.read(degrees, Unit.DEGREE);
    AmountReading dial = AmountText.read(lift, job.state().units().unit(Dimension.LENGTH));
    Optional<String> fault = fault(wheel, Dimension.ANGLE).or(() -> fault(dial, Dimension.LENGTH));
    if (fault.isPresent()) {
      return new FigureOutcome.Refused(fault.get());
    }
    Amount angle = amount(wheel);
    if (angle.inBase().abs().compareTo(MOST_DEGREES) > 0) {
      return new FigureOutcome.Refused(
          angle.text() + " is over two turns from top dead center. Read the wheel again.");
    }
    String key = key(angle);
    sheets.keep(sheet(lobe), find(sheet(lobe), name(lobe)).with(key, amount(dial).text()));
    return new FigureOutcome.Done();
  }

  private static Optional<String> fault(AmountReading reading, Dimension wanted) {
    if (reading instanceof AmountReading.NotUnderstood not) {
      return Optional.of(not.sentence());
    }
    Amount amount = amount(reading);
    return amount.dimension() == wanted
        ? Optional.empty()
        : Optional.of(amount.text() + " is not " + wanted.words() + ".");
  }

  private static Amount amount(AmountReading reading) {
    return ((AmountReading.Understood) reading).amount();
  }

  /** 10 deg and 10.0 deg are the same place on the wheel. */
  private static String key(Amount angle) {
    BigDecimal degrees = angle.to(Unit.DEGREE).number().stripTrailingZeros();
    return new Amount(degrees, Unit.DEGREE).text();
  }

  /** Takes the reading at this angle out. */
  public FigureOutcome remove(ValveSpot lobe, String degrees) {
    return job.asOne(() -> removeOnce(lobe, degrees));
  }

  private FigureOutcome removeOnce(ValveSpot lobe, String degrees) {
    AmountReading wheel = AmountText.read(degrees, Unit.DEGREE);
    Optional<String> fault = fault(wheel, Dimension.ANGLE);
    if (fault.isPresent()) {
      return new FigureOutcome.Refused(fault.get());
    }
    Sheet now = find(sheet(lobe), name(lobe));
    String key = key(amount(wheel));
    if (!now.figures().containsKey(key)) {
      return new FigureOutcome.Refused("There is no reading at " + key + " on " + name(lobe) + ".");
    }
    sheets.keep(sheet(lobe), now.with(key, ""));
    return new FigureOutcome.Done();
  }

  /** A setting as typed; empty where it was not. */
  public Optional<Amount> find(TimingSetting setting) {
    return Optional.ofNullable(find(SETTINGS, "the timing check").figures().get(setting.key()))
        .map(TimingBook::amount);
  }

  public FigureOutcome set(TimingSetting setting, String text) {
    return job.asOne(() -> setOnce(setting, text));
  }

  private FigureOutcome setOnce(TimingSetting setting, String text) {
    AmountReading reading = AmountText.read(text, job.state().units().unit(setting.dimension()));
    Optional<String> fault = fault(reading, setting.dimension());
    if (fault.isPresent()) {
      return new FigureOutcome.Refused(fault.get());
    }
    boolean lift = setting == TimingSetting.STATED_LIFT;
    int sign = amount(reading).number().signum();
    if (sign < 0 || (lift && sign == 0)) {
      return new FigureOutcome.Refused(
          setting.words() + ": " + amount(reading).text() + " cannot be.");
    }
    Sheet now = find(SETTINGS, "the timing check");
    sheets.keep(SETTINGS, now.with(setting.key(), amount(reading).text()));
    return new FigureOutcome.Done();
  }

  /** What the cam card states, in degrees; events from top dead centre. */
  public OptionalDouble card(TimingValue value) {
    String kept = find(CARD, "the cam card").figures().get(value.key());
    return kept == null ? OptionalDouble.empty() : OptionalDouble.of(amount(kept).in(Unit.DEGREE));
  }

  /** Where the card's figures come from; empty where it was not said. */
  public String cardSource() {
    return find(CARD, "the cam card").figures().getOrDefault(SOURCE, "");
  }

  /** Keeps a figure of the card; it needs the card's source first. */
  public FigureOutcome card(TimingValue value, String degrees) {
    return job.asOne(() -> cardOnce(value, degrees));
  }

  private FigureOutcome cardOnce(TimingValue value, String degrees) {
    if (cardSource().isEmpty()) {
      return new FigureOutcome.Refused("First say where the card's figures come from.");
    }
    AmountReading reading = AmountText.read(degrees, Unit.DEGREE);
    Optional<String> fault = fault(reading, Dimension.ANGLE);
    if (fault.isPresent()) {
      return new FigureOutcome.Refused(fault.get());
    }
    Sheet now = find(CARD, "the cam card");
    sheets.keep(CARD, now.with(value.key(), amount(reading).text()));
    return new FigureOutcome.Done();
  }

  public FigureOutcome cardSource(String words) {
    return job.asOne(() -> cardSourceOnce(words));
  }

  private FigureOutcome cardSourceOnce(String words) {
    if (words.isBlank()) {
      return new FigureOutcome.Refused("Say where the card's figures come from.");
    }
    sheets.keep(CARD, find(CARD, "the cam card").with(SOURCE, words.strip()));
    return new FigureOutcome.Done();
  }
}
