package wherefrom.job.timing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wherefrom.engine.ValveSide;
import wherefrom.engine.ValveSpot;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.text.Words;
import wherefrom.workings.chart.Axis;
import wherefrom.workings.chart.Chart;
import wherefrom.workings.timing.AngleValue;
import wherefrom.workings.timing.Comparison;
import wherefrom.workings.timing.DialReading;
import wherefrom.workings.timing.LobeAnswer;
import wherefrom.workings.timing.LobeFit;
import wherefrom.workings.timing.LobeReadings;
import wherefrom.workings.timing.LobeTiming;
import wherefrom.workings.timing.TimingValue;
import wherefrom.workings.timing.ValveTiming;

/** What the kept readings say. */
public final class TimingCheck {
  /** A spread of ± a, all of it as likely, has this standard uncertainty (JCGM 100:2008, 4.3.7). */
  private static final double RECTANGULAR = 1 / Math.sqrt(3);

  private final TimingBook book;
  private final Unit unit;

  public TimingCheck(TimingBook book) {
    this.book = book;
    this.unit = book.job().state().units().unit(Dimension.LENGTH);
  }

  /** What must be known of wheel, dial and card, and is not yet. */
  public List<TimingSetting> unknown() {
    return Arrays.stream(TimingSetting.values())
        .filter(setting -> book.find(setting).isEmpty())
        .toList();
  }

  /** What keeps one lobe from being fitted, in a sentence; empty where it is fitted. */
  public Optional<String> missing(ValveSpot lobe) {
    return fit(lobe) instanceof LobeAnswer.Unfit unfit
        ? Optional.of(unfit.sentence())
        : Optional.empty();
  }

  /** {@code 29 readings, centerline 108.0 deg ± 0.3 deg}: one lobe in few words. */
  public String brief(ValveSpot lobe) {
    String count = Words.count(book.readings(lobe).size(), "reading");
    return fit(lobe) instanceof LobeAnswer.Fitted fitted
        ? count + ", centerline " + fitted.timing().centreLine().text()
        : count;
  }

  /** One lobe fitted, or what is missing for it. */
  public LobeAnswer fit(ValveSpot lobe) {
    Optional<TimingSetting> unknown = unknown().stream().findFirst();
    if (unknown.isPresent()) {
      return new LobeAnswer.Unfit("Not known yet: " + Words.small(unknown.get().words()) + ".");
    }
    return LobeFit.fit(readings(lobe), book.find(TimingSetting.STATED_LIFT).orElseThrow().in(unit));
  }

  private LobeReadings readings(ValveSpot lobe) {
    List<DialReading> readings =
        book.readings(lobe).stream()
            .map(it -> new DialReading(it.degrees().in(Unit.DEGREE), it.lift().in(unit)))
            .toList();
    return new LobeReadings(
        readings,
        standard(TimingSetting.WHEEL, Unit.DEGREE),
        standard(TimingSetting.DIAL, unit),
        standard(TimingSetting.ZERO, Unit.DEGREE));
  }

  private double standard(TimingSetting setting, Unit in) {
    return book.find(setting).map(most -> most.in(in) * RECTANGULAR).orElse(0.0);
  }

  /** What keeps a cylinder from being told, a sentence a lobe; empty where both lobes are. */
  public List<String> open(int cylinder) {
    List<String> open = new ArrayList<>();
    for (ValveSide side : ValveSide.values()) {
      missing(new ValveSpot(cylinder, side))
          .ifPresent(sentence -> open.add(side.word() + ": " + sentence));
    }
    return open;
  }

  public Optional<ValveTiming> timing(int cylinder) {
    LobeAnswer intake = fit(new ValveSpot(cylinder, ValveSide.INTAKE));
    LobeAnswer exhaust = fit(new ValveSpot(cylinder, ValveSide.EXHAUST));
    return intake instanceof LobeAnswer.Fitted in && exhaust instanceof LobeAnswer.Fitted ex
        ? Optional.of(new ValveTiming(in.timing(), ex.timing()))
        : Optional.empty();
  }

  /** Every value beside the card's; none while a lobe is open. */
  public List<Comparison> compare(int cylinder) {
    Optional<ValveTiming> timing = timing(cylinder);
    return timing.isEmpty()
        ? List.of()
        : Arrays.stream(TimingValue.values())
            .map(value -> new Comparison(value, value.of(timing.get()), book.card(value)))
            .toList();
  }

  /** Lift against the wheel, each reading with its band, and the centre where it is fitted. */
  public Optional<Chart> plot(ValveSpot lobe) {
    List<DialReading> readings = readings(lobe).readings();
    if (readings.size() < 2) {
      return Optional.empty();
    }
    double band = 2 * standard(TimingSetting.DIAL, unit);
    double top = readings.stream().mapToDouble(DialReading::lift).max().orElse(0);
    List<Chart.Column> columns = new ArrayList<>();
    for (DialReading it : readings) {
      columns.add(
          Chart.Column.ofValue(it.degrees(), it.lift(), it.lift() - band, it.lift() + band));
    }
    if (fit(lobe) instanceof LobeAnswer.Fitted fitted) {
      double centre = fitted.timing().centreLine().degrees();
      columns.add(Chart.Column.ofValue(centre, top, 0, top).with(List.of(), "", true));
    }
    List<Chart.Point> line =
        readings.stream()
            .map(it -> new Chart.Point(it.degrees(), it.lift(), it.lift(), it.lift()))
            .toList();
    return Optional.of(
        new Chart(
            "Lift of " + lobe.words(),
            Axis.covering(
                "crank degrees; upright: centerline",
                readings.get(0).degrees(),
                readings.get(readings.size() - 1).degrees()),
            Axis.covering("lift, " + unit.symbol(), 0, top),
            List.of(new Chart.Trace("", line)),
            levels(),
            columns));
  }

  private List<Chart.Level> levels() {
    return book.find(TimingSetting.STATED_LIFT).stream()
        .map(lift -> Chart.Level.exact(onAxis(lift.text()), lift.in(unit)))
        .toList();
  }

  /** The axis says its unit already. */
  private String onAxis(String amount) {
    String own = " " + unit.symbol();
    return amount.endsWith(own) ? amount.substring(0, amount.length() - own.length()) : amount;
  }

  /** {@code centerline 108.0 deg}; empty where the lobe is not fitted. */
  public Optional<String> result(ValveSpot lobe) {
    return fit(lobe) instanceof LobeAnswer.Fitted fitted
        ? Optional.of(
            String.format(
                Locale.ROOT, "centerline %.1f deg", fitted.timing().centreLine().degrees()))
        : Optional.empty();
  }

  /** One lobe's own figures, in words; a sentence where it is not fitted. */
  public String words(ValveSpot lobe) {
    LobeAnswer answer = fit(lobe);
    if (answer instanceof LobeAnswer.Unfit unfit) {
      return unfit.sentence();
    }
    LobeTiming timing = ((LobeAnswer.Fitted) answer).timing();
    AngleValue centre = timing.centreLine();
    return "centerline "
        + centre.text()
        + ", duration "
        + timing.duration().text()
        + "; "
        + flankWords(timing.flanks());
  }

  /** Between which lifts the centre line was taken, and how far it moves there. */
  private String flankWords(LobeTiming.Flanks flanks) {
    return String.format(
        Locale.ROOT,
        "center between %s and %s of lift, leaning %.1f deg",
        Amount.of(flanks.from(), unit).rounded(unit.decimals()).text(),
        Amount.of(flanks.to(), unit).rounded(unit.decimals()).text(),
        Math.abs(flanks.lean()));
  }

  /** Where each centre line of a cylinder was taken, a sentence a lobe; none while one is open. */
  public List<String> notes(int cylinder) {
    List<String> notes = new ArrayList<>();
    for (ValveSide side : ValveSide.values()) {
      if (fit(new ValveSpot(cylinder, side)) instanceof LobeAnswer.Fitted fitted) {
        notes.add(side.word() + ": " + flankWords(fitted.timing().flanks()));
      }
    }
    return notes;
  }

  /** The lift at which the events count, in words. */
  public String atLift() {
    return book.find(TimingSetting.STATED_LIFT).map(Amount::text).orElse("no checking lift");
  }
}
