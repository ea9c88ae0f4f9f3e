package wherefrom.workings;

import static java.util.Map.entry;

import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the engines that the product is for usually have, by an input's key and in the base unit of
 * its dimension: mm, mm³, mm², degrees, newtons. The ends are wide (common practice, no source). A
 * figure outside is asked back, for it may be a slip of the finger or of the unit; it is not
 * refused, for there are odd engines.
 */
public final class UsualFigures {
  private static final Map<String, Range> RANGES =
      Map.ofEntries(
          entry("bore", between("40", "200")),
          entry("stroke", between("30", "250")),
          entry("chamber", between("3000", "300000")),
          entry("chamber-now", between("3000", "300000")),
          entry("chamber-wanted", between("3000", "300000")),
          entry("gasket-bore", between("40", "220")),
          entry("gasket-thickness", between("0", "5")),
          entry("deck", between("-5", "10")),
          entry("piston-volume", between("-150000", "150000")),
          entry("crevice-height", between("0", "30")),
          entry("crevice-gap", between("0", "2")),
          entry("target", between("5", "14")),
          entry("opening", between("500", "31500")),
          entry("poured", between("500", "200000")),
          entry("depth", between("0.1", "30")),
          entry("head-cut", between("0", "3")),
          entry("deck-cut", between("0", "3")),
          entry("cut", between("0", "6")),
          entry("lowering", between("-5", "6")),
          entry("lobe-lift", between("2", "15")),
          entry("rocker-ratio", between("0.9", "2.2")),
          entry("lash", between("0", "1.5")),
          entry("lift", between("0", "25")),
          entry("installed-height", between("20", "80")),
          entry("solid-height", between("10", "70")),
          entry("coils", between("3", "14")),
          entry("active-coils", between("2", "12")),
          entry("wire", between("1.5", "10")),
          entry("outside-diameter", between("12", "80")),
          entry("seal-gap", between("2", "30")),
          entry("slot-room", between("2", "30")),
          entry("base-radius-loss", between("-4", "4")),
          entry("tip-rise", between("-4", "4")),
          entry("seat-sink", between("0", "4")),
          entry("pushrod-tilt", between("0", "30")),
          entry("valve-tilt", between("0", "45")),
          entry("clearance-now", between("0", "15")),
          entry("clearance-intake", between("0", "15")),
          entry("clearance-exhaust", between("0", "15")),
          entry("journal", between("20", "150")),
          entry("housing", between("20", "170")),
          entry("inside", between("20", "160")),
          entry("wall", between("0.8", "8")),
          entry("upper-wall", between("0.8", "8")),
          entry("lower-wall", between("0.8", "8")),
          entry("standard", between("20", "150")),
          entry("smallest", between("20", "150")),
          entry("nominal", between("40", "200")),
          entry("strand", between("0.05", "1")),
          entry("gap-per-bore", between("0.002", "0.01")),
          entry("bore-change", between("-0.5", "2")),
          entry("diameter", between("4", "25")),
          entry("pitch", between("0.5", "3.5")),
          entry("k", between("0.05", "0.4")));

  private UsualFigures() {}

  private static Range between(String least, String most) {
    return Range.between(least, most);
  }

  /** Empty where nothing within the input's own range is unusual. */
  public static Optional<Range> find(AmountInput input) {
    return Optional.ofNullable(RANGES.get(input.key()));
  }

  /** The keys that have a row here. */
  public static Set<String> keys() {
    return RANGES.keySet();
  }
}
