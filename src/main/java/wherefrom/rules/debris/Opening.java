package wherefrom.rules.debris;

import java.util.Locale;

/** What can be opened to look further, the cheapest first (common practice, no source). */
public enum Opening {
  NOTE("Write it down", "Write it down and photograph it. Nothing needs opening for this alone."),
  DRAINED_OIL(
      "Drained oil", "Strain the drained oil through a clean cloth. Look at oil and cloth."),
  FILTER("Oil filter", "Cut the filter open and pull out the pleats."),
  PRESSURE_TEST(
      "Pressure test",
      "Pressure-test the cooling system. Test head and block bare if a crack is suspected."),
  INTAKE_GASKET("Intake gasket", "Intake manifold off: its gasket and water passages."),
  LIFTERS("Lifters", "Take out the lifters one by one. Look at each foot and lobe."),
  HEAD_GASKET("Head gasket", "Head off: gasket and deck."),
  FRONT_COVER("Front cover", "Front cover off: timing drive, and the cover's gasket."),
  PAN_AND_PICKUP("Pan and pickup", "Pan off: pickup screen, all corners."),
  PUMP("Oil pump", "Open the oil pump."),
  FIRST_BEARINGS(
      "A few bearings",
      "One main cap at a time, crank in place. Look at two lower shells: nearest"
          + " the pump outlet, and farthest. Then look at one rod of each crank pin."
          + " A split case has no main caps: look at the rods alone."),
  CAM("Cam", "Pull the cam and look at every lobe and bearing."),
  ALL_BEARINGS("All bearings", "All rod and main caps off: every shell."),
  BORES("Pistons and bores", "Pistons out: skirts and bores."),
  GALLERIES("Oil galleries", "Crank out, gallery plugs out: brush and flush every gallery.");

  private final String title;
  private final String sentence;

  Opening(String title, String sentence) {
    this.title = title;
    this.sentence = sentence;
  }

  /** What is opened, in a word or two. */
  public String title() {
    return title;
  }

  public String sentence() {
    return sentence;
  }

  /** The name under which a look is answered: {@code open:first-bearings}. Never changes. */
  public String check() {
    return "open:" + name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
