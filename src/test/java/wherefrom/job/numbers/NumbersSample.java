package wherefrom.job.numbers;

import java.util.LinkedHashMap;
import java.util.Map;

/** An invented V8's figures for tests. */
public final class NumbersSample {
  private NumbersSample() {}

  /** How things are now. */
  public static Map<String, String> figures() {
    Map<String, String> figures = new LinkedHashMap<>();
    figures.put("bore", "3.870 in±0.0005 in");
    figures.put("stroke", "3.310 in");
    figures.put("chamber", "63 cc±0.5 cc");
    figures.put("gasket-bore", "3.970 in");
    figures.put("gasket-thickness", "0.040 in±0.001 in max");
    figures.put("deck", "0.025 in±0.001 in");
    figures.put("piston-volume", "6 cc±0.3 cc");
    figures.put("opening", "0.165 cc/thou±0.005 cc/thou");
    figures.put("bank-angle", "90 deg");
    figures.put("face-angle", "80 deg");
    figures.put("lobe-lift", "0.300 in±0.001 in");
    figures.put("rocker-ratio", "1.5");
    figures.put("lash", "0 in");
    figures.put("installed-height", "1.700 in±0.010 in");
    figures.put("solid-height", "1.150 in");
    figures.put("seal-gap", "0.520 in±0.010 in");
    figures.put("pushrod-tilt", "8 deg");
    figures.put("clearance-intake", "0.130 in±0.005 in");
    figures.put("clearance-exhaust", "0.135 in±0.005 in");
    figures.put("valve-tilt", "20 deg");
    figures.put("crown", "flat");
    return figures;
  }

  public static void now(PlanBook book) {
    figures()
        .forEach(
            (key, text) -> {
              if (book.set(0, key, text) instanceof FigureOutcome.Refused refused) {
                throw new AssertionError(refused.sentence());
              }
            });
  }
}
