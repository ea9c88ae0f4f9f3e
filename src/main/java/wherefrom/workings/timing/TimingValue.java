package wherefrom.workings.timing;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** What a cam card states and a degree wheel shows, in the order of a card. */
public enum TimingValue {
  INTAKE_OPENING("intake opens", true, timing -> timing.intake().opening()),
  INTAKE_CLOSING("intake closes", true, timing -> timing.intake().closing()),
  INTAKE_DURATION("intake duration", false, timing -> timing.intake().duration()),
  INTAKE_CENTRE("intake centre line", true, timing -> timing.intake().centreLine()),
  EXHAUST_OPENING("exhaust opens", true, timing -> timing.exhaust().opening()),
  EXHAUST_CLOSING("exhaust closes", true, timing -> timing.exhaust().closing()),
  EXHAUST_DURATION("exhaust duration", false, timing -> timing.exhaust().duration()),
  EXHAUST_CENTRE("exhaust centre line", true, timing -> timing.exhaust().centreLine()),
  OVERLAP("overlap", false, ValveTiming::overlap),
  LOBE_SEPARATION("lobe separation, cam degrees", false, ValveTiming::lobeSeparation),
  ADVANCE("cam advance", false, ValveTiming::advance);

  private final String words;
  private final boolean event;
  private final Function<ValveTiming, AngleValue> value;

  TimingValue(String words, boolean event, Function<ValveTiming, AngleValue> value) {
    this.words = words;
    this.event = event;
    this.value = value;
  }

  public String words() {
    return words;
  }

  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public static Optional<TimingValue> find(String key) {
    return Arrays.stream(values()).filter(value -> value.key().equals(key)).findFirst();
  }

  public AngleValue of(ValveTiming timing) {
    return value.apply(timing);
  }

  /** An event by its dead centre, a centre line from top dead centre, anything else as degrees. */
  public String said(double degrees) {
    if (this == INTAKE_CENTRE || this == EXHAUST_CENTRE) {
      String side = degrees < 0 ? "before" : "after";
      return String.format(Locale.ROOT, "%.1f deg %s top dead centre", Math.abs(degrees), side);
    }
    return event ? Event.words(degrees) : String.format(Locale.ROOT, "%.1f deg", degrees);
  }
}
