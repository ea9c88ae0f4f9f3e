package wherefrom.rules.debris;

import java.util.Locale;

/** What can be opened to look further, the cheapest first (common practice, no source). */
public enum Opening {
  NOTE("Write it down and photograph it; nothing needs opening for this alone."),
  DRAINED_OIL("Strain the drained oil through a clean cloth; look at oil and cloth."),
  FILTER("Cut the filter open and pull out the pleats."),
  LIFTERS("Take out the lifters one by one and look at each foot and lobe."),
  HEAD_GASKET("Head off: gasket and deck."),
  FRONT_COVER("Front cover off: chain and gears."),
  PAN_AND_PICKUP("Pan off: pickup screen, all corners."),
  PUMP("Open the oil pump."),
  FIRST_BEARINGS(
      "One main cap at a time, crank in place: look at the lower shell of the main nearest the pump"
          + " outlet and of the one farthest from it; then one rod of each crank pin."),
  CAM("Draw the cam and look at every lobe and bearing."),
  ALL_BEARINGS("All rod and main caps off: every shell."),
  BORES("Pistons out: skirts and bores."),
  GALLERIES("Crank out, gallery plugs out: brush and flush every gallery.");

  private final String sentence;

  Opening(String sentence) {
    this.sentence = sentence;
  }

  public String sentence() {
    return sentence;
  }

  /** The name under which a look is answered: {@code open:first-bearings}. Never changes. */
  public String check() {
    return "open:" + name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
