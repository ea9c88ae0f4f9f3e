package wherefrom.workings.timing;

import java.util.Locale;

/** What a cam card states and a degree wheel shows, in the order of a card. */
public enum TimingValue {
  INTAKE_OPENING("intake opens", true),
  INTAKE_CLOSING("intake closes", true),
  INTAKE_DURATION("intake duration", false),
  INTAKE_CENTRE("intake centerline", true),
  EXHAUST_OPENING("exhaust opens", true),
  EXHAUST_CLOSING("exhaust closes", true),
  EXHAUST_DURATION("exhaust duration", false),
  EXHAUST_CENTRE("exhaust centerline", true),
  OVERLAP("overlap", false),
  LOBE_SEPARATION("lobe separation, cam degrees", false),
  ADVANCE("cam advance", false);

  private final String words;
  private final boolean event;

  TimingValue(String words, boolean event) {
    this.words = words;
    this.event = event;
  }

  public String words() {
    return words;
  }

  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Whether it is a mark on the wheel, where a whole turn changes nothing; else a difference. */
  boolean isMark() {
    return event;
  }

  public AngleValue of(ValveTiming timing) {
    return switch (this) {
      case INTAKE_OPENING -> timing.intake().opening();
      case INTAKE_CLOSING -> timing.intake().closing();
      case INTAKE_DURATION -> timing.intake().duration();
      case INTAKE_CENTRE -> timing.intake().centreLine();
      case EXHAUST_OPENING -> timing.exhaust().opening();
      case EXHAUST_CLOSING -> timing.exhaust().closing();
      case EXHAUST_DURATION -> timing.exhaust().duration();
      case EXHAUST_CENTRE -> timing.exhaust().centreLine();
      case OVERLAP -> timing.overlap();
      case LOBE_SEPARATION -> timing.lobeSeparation();
      case ADVANCE -> timing.advance();
    };
  }

  /** An event by its dead centre, a centre line from top dead centre, anything else as degrees. */
  public String said(double degrees) {
    if (this == INTAKE_CENTRE || this == EXHAUST_CENTRE) {
      String side = degrees < 0 ? "before" : "after";
      return String.format(Locale.ROOT, "%.1f deg %s top dead center", Math.abs(degrees), side);
    }
    return event ? Event.words(degrees) : String.format(Locale.ROOT, "%.1f deg", degrees);
  }
}
