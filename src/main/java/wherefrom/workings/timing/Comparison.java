package wherefrom.workings.timing;

import java.util.Locale;
import java.util.OptionalDouble;
import wherefrom.workings.maths.WheelAngle;

/**
 * One value as found beside the card's.
 *
 * @param found with its standard uncertainty
 * @param card as the card states it, in degrees; empty where nothing was typed
 */
public record Comparison(TimingValue value, AngleValue found, OptionalDouble card) {
  /** Two standard uncertainties: a band that holds about 95 % (JCGM 100:2008, 6.2.1 and G.1). */
  private static final double COVERAGE = 2;

  /** Whether the readings can tell the two apart. */
  public boolean differs() {
    return card.isPresent() && Math.abs(off()) > COVERAGE * found.standardUncertainty();
  }

  /** Found less card. Marks of the wheel are compared as such: 250° is 110° before. */
  private double off() {
    double off = found.degrees() - card.orElseThrow();
    return value.isMark() ? WheelAngle.near(off, 0) : off;
  }

  /** What was found, with its standard uncertainty. */
  public String foundWords() {
    return value.said(found.degrees()) + found.band();
  }

  /** What the card says; empty where nothing was typed. */
  public String cardWords() {
    return card.isPresent() ? value.said(card.getAsDouble()) : "";
  }

  /** The same in few words; empty where nothing was typed. */
  public String brief() {
    return card.isEmpty() ? "" : (differs() ? "DIFFERS: " : "agrees: ") + by();
  }

  private String by() {
    double off = off();
    return String.format(Locale.ROOT, "%.1f deg %s", Math.abs(off), off < 0 ? "less" : "more");
  }

  /** How the two stand to each other. */
  public String verdict() {
    if (card.isEmpty()) {
      return "no card value typed";
    }
    return differs()
        ? "DIFFERS: " + by() + ", more than the readings leave open"
        : "agrees within the readings: " + by();
  }
}
