package wherefrom.workings.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import wherefrom.workings.Result;

/** Worked figures in print, each with its source; figures from elsewhere say so. */
class PrintCheckTest {
  private static final String[] EXAMPLE = {
    "bore=4.000in",
    "stroke=3.500in",
    "gasket-bore=4.100in",
    "gasket-thickness=0.040in",
    "deck=0.025in",
    "piston-volume=6cc"
  };

  private static String[] example(String... more) {
    String[] all = java.util.Arrays.copyOf(EXAMPLE, EXAMPLE.length + more.length);
    System.arraycopy(more, 0, all, EXAMPLE.length, more.length);
    return all;
  }

  /** To the last printed digit. */
  private static Offset<Double> digits(int decimals) {
    return within(0.5 * Math.pow(10, -decimals));
  }

  @Test
  void sweptVolumeOfTheAviationHandbooks() {
    // FAA-H-8083-30, Figs 1-26/1-27: 5.5 x 5.4 in is 128.29; times 8 is printed as 1,026.32 because
    // the rounded value was multiplied. FAA-H-8083-32 ch. 1: 14 cylinders 5.5 x 5.5 in, 1,830.
    Result eight = Ask.result("swept-volume", "bore=5.5in", "stroke=5.4in", "cylinders=8");
    assertThat(eight.getValue("cylinder").value()).isCloseTo(128.29, digits(2));
    assertThat(8 * Math.round(100 * eight.getValue("cylinder").value()) / 100.0).isEqualTo(1026.32);
    assertThat(eight.getValue("engine").value()).isCloseTo(1026.3583, digits(4));
    double radial =
        Ask.value("engine", "swept-volume", "bore=5.5in", "stroke=5.5in", "cylinders=14");
    assertThat(radial).isCloseTo(1830, within(1.0));
    assertThat(radial).isCloseTo(1829.389, digits(3));
  }

  @Test
  void ratioOfTheAviationHandbook() {
    // FAA-H-8083-32 Fig 1-38: 140 in³ over 20 in³ is 7:1. A bore of 1 in with a stroke of 120/(π/4)
    // in sweeps 120 in³.
    double ratio =
        Ask.value(
            "ratio",
            "compression-ratio",
            "bore=10in",
            "stroke=1.5278874536821951in",
            "chamber=20in3",
            "gasket-bore=10in",
            "gasket-thickness=0in",
            "deck=0in",
            "piston-volume=0cc");
    assertThat(ratio).isCloseTo(7, within(1e-9));
  }

  @Test
  void ratioWithEveryTermOfAMagazineArticle() {
    // Racing magazine 2004, compression article: 9.01 (9.0143 with its rounding, 9.0146 without).
    double ratio =
        Ask.value(
            "ratio",
            "compression-ratio",
            "bore=4.00in",
            "stroke=3.48in",
            "deck=0.050in",
            "gasket-bore=4.00in",
            "gasket-thickness=0.020in",
            "piston-volume=5cc",
            "chamber=70cc");
    assertThat(ratio).isCloseTo(9.01, digits(2)).isCloseTo(9.0146, digits(4));
  }

  @Test
  void ratioOfTheWorkedExample() {
    // Own example, worked out twice; not in print.
    Result result = Ask.result("compression-ratio", example("chamber=72cc"));
    assertThat(result.getValue("swept").value()).isCloseTo(720.7407, digits(4));
    assertThat(result.getValue("clearance").value()).isCloseTo(91.8022, digits(4));
    assertThat(result.getValue("ratio").value()).isCloseTo(8.8510, digits(4));
    assertThat(result.findNote("crevice-left-out")).isPresent();
    Result crevice =
        Ask.result(
            "compression-ratio",
            example("chamber=72cc", "crevice-height=0.300in", "crevice-gap=0.020in"));
    assertThat(crevice.getValue("ratio").value()).isCloseTo(8.7473, digits(4));
    assertThat(crevice.getValue("clearance").value()).isCloseTo(91.8022 + 1.2294, digits(3));
  }

  @Test
  void chamberForTheWorkedExample() {
    // Own example; no published one was found.
    Result result = Ask.result("chamber-for-ratio", example("target=9.5", "chamber=72cc"));
    assertThat(result.getValue("clearance").value()).isCloseTo(84.7930, digits(4));
    assertThat(result.getValue("chamber").value()).isCloseTo(64.9908, digits(4));
    assertThat(result.getValue("remove").value()).isCloseTo(7.0092, digits(4));
  }

  @Test
  void headCutOfTheWorkedExample() {
    // Own example: 0.165 ± 0.005 cc/thou and 0.5 cc of pouring give 42.5 thou with u = 3.3 thou.
    Result result =
        Ask.result(
            "head-cut",
            "chamber-now=72cc±0.5cc",
            "chamber-wanted=64.9908cc",
            "opening=0.165cc/thou±0.005");
    assertThat(result.getValue("cut").value()).isCloseTo(0.0425, digits(4));
    assertThat(result.getValue("cut").standardUncertainty()).isCloseTo(0.0033, digits(4));
    assertThat(result.getValue("cut").findBiggestShare().orElseThrow().inputKey())
        .isEqualTo("chamber-now");
    assertThat(result.getValue("cut").text()).isEqualTo("0.0425 in ± 0.0033 in");
  }

  @Test
  void fullBoreDiscBoundsTheOpening() {
    // π·4²/4 in² over 0.001 in is 0.20593 cc: pouring that much raises the level by one thou.
    assertThat(Ask.value("opening", "opening-by-pour", "poured=0.2059255cc", "depth=1thou"))
        .isCloseTo(0.20593, digits(5));
  }

  @Test
  void deckCutOfTheWorkedExample() {
    // Own example: 0.0340 in off the deck alone brings 9.5.
    Result result = Ask.result("deck-cut", example("target=9.5", "chamber=72cc"));
    assertThat(result.getValue("cut").value()).isCloseTo(0.0340, digits(4));
    assertThat(result.findNote("piston-to-head-small")).isPresent();
  }

  @Test
  void valveLiftOfTheWorkedExample() {
    // Own example; no published product was found.
    assertThat(lift("0in")).isCloseTo(0.450, within(1e-12));
    assertThat(lift("0.020in")).isCloseTo(0.430, within(1e-12));
  }

  private static double lift(String lash) {
    return Ask.value("lift", "valve-lift", "lobe-lift=0.300in", "rocker-ratio=1.5", "lash=" + lash);
  }

  @Test
  void marginsOfTheWorkedExamples() {
    // Own examples; no published ones were found.
    assertThat(
            Ask.value(
                "margin",
                "coil-bind",
                "installed-height=1.700in",
                "solid-height=1.150in",
                "lift=0.450in"))
        .isCloseTo(0.100, within(1e-12));
    assertThat(Ask.value("margin", "retainer-to-seal", "seal-gap=0.520in", "lift=0.450in"))
        .isCloseTo(0.070, within(1e-12));
  }

  @Test
  void springRatesOfAnArmyTable() {
    // TM 10-4320-344-24 Table 4-1: wire 0.172, OD 1.302, 6 coils, free 1.702 to 1.722 in, 45 to
    // 51 lb at 1.492, 130 to 144 lb at 1.082 in; means of the ranges. G from memory.
    assertThat(rate("1.492in", "48lb", "1.082in", "137lb")).isCloseTo(217.07, digits(2));
    assertThat(rate("1.712in", "0lb", "1.082in", "137lb")).isCloseTo(217.46, digits(2));
    assertThat(rate("1.712in", "0lb", "1.492in", "48lb")).isCloseTo(218.18, digits(2));
    assertThat(byWire("0.172in", "1.302in", "4")).isCloseTo(217.98, digits(2));
  }

  @Test
  void secondSpringOfAnArmyManual() {
    // TM 9-6115-464-34 1-15: wire 0.177, OD 1.297, 6¼ coils: 236.3 by wire.
    assertThat(byWire("0.177in", "1.297in", "4.25")).isCloseTo(236.3, digits(1));
  }

  private static double rate(String height1, String load1, String height2, String load2) {
    return Ask.value(
        "rate",
        "spring-rate",
        "height-1=" + height1,
        "load-1=" + load1,
        "height-2=" + height2,
        "load-2=" + load2);
  }

  private static double byWire(String wire, String outside, String active) {
    return Ask.value(
        "rate",
        "spring-rate-by-wire",
        "wire=" + wire,
        "outside-diameter=" + outside,
        "active-coils=" + active,
        "modulus=11500000psi");
  }

  @Test
  void seatAndOpenLoadFollowTheRate() {
    // The same Army spring: from 48 lb at 1.492 in, 0.410 in further down 137 lb stand in print.
    Result loads =
        Ask.result(
            "spring-loads",
            "rate=217.0731707317073lb/in",
            "load=48lb",
            "at-height=1.492in",
            "installed-height=1.492in",
            "lift=0.410in");
    assertThat(loads.getValue("seat").value()).isCloseTo(48, within(1e-9));
    assertThat(loads.getValue("open").value()).isCloseTo(137, within(1e-9));
  }

  @Test
  void pushrodChangeOfTheWorkedExample() {
    // Own example; not published.
    assertThat(
            Ask.value(
                "change",
                "pushrod-length",
                "base-radius-loss=0.025in",
                "lowering=0.042in",
                "pushrod-tilt=8deg",
                "tip-rise=0.020in",
                "rocker-ratio=1.5"))
        .isCloseTo(-0.0299, digits(4));
  }

  @Test
  void oilClearanceOfTheWorkedExample() {
    // Own example; about 0.001 in per inch as in NAVEDTRA 14050 and lecture notes on bearings.
    Result result =
        Ask.result(
            "oil-clearance",
            "housing=2.6400in",
            "upper-wall=0.0945in",
            "lower-wall=0.0945in",
            "journal=2.4490in");
    assertThat(result.getValue("clearance").value()).isCloseTo(0.0020, within(1e-12));
    assertThat(result.getValue("per-diameter").value()).isCloseTo(0.00082, digits(5));
  }

  @Test
  void clearanceOfAnArmyManualIsAccepted() {
    // TM 10-3930-653-14&P: 0.0008 to 0.0024 in on 2.478 in.
    assertThat(Ask.value("clearance", "oil-clearance-bore", "inside=2.4796in", "journal=2.4780in"))
        .isCloseTo(0.0016, within(1e-12));
  }

  @Test
  void undersizesOfAnArmyManual() {
    // TM 5-3805-262-34 4-24: standard 2.748; ground 2.738, 2.728, 2.718 for 0.010, 0.020, 0.030.
    assertThat(ground("2.7470in")).isCloseTo(2.738, within(1e-12));
    assertThat(ground("2.7430in")).isCloseTo(2.738, within(1e-12));
    assertThat(ground("2.7429in")).isCloseTo(2.728, within(1e-12));
    assertThat(ground("2.7335in")).isCloseTo(2.718, within(1e-12));
    assertThat(ground("2.7480in")).isCloseTo(2.748, within(1e-12));
  }

  private static double ground(String smallest) {
    return Ask.value("diameter", "next-undersize", "standard=2.748in", "smallest=" + smallest);
  }

  @Test
  void stripWidths() {
    // Own figures from constant volume; a real reading uses the packaged scale.
    double[][] printed = {{0.0015, 0.0524}, {0.002, 0.0393}, {0.003, 0.0262}};
    for (double[] row : printed) {
      double width =
          Ask.value("width", "strip-width", "strand=0.010in", "clearance=" + row[0] + "in");
      assertThat(width).isCloseTo(row[1], digits(4));
      double back =
          Ask.value("clearance", "strip-clearance", "strand=10thou", "width=" + width + "in");
      assertThat(back).isCloseTo(row[0], within(1e-12));
    }
  }

  @Test
  void torqueOfAFastenerArticle() {
    // Fastener article 2020: 3/8-16 at 4,940 lb, 30 lb·ft dry and 23 lb·ft oiled; the exact figures
    // are 30.88 (printed cut off, not rounded) and 23.16.
    assertThat(torque("dry")).isCloseTo(30.88, digits(2));
    assertThat(Math.floor(torque("dry"))).isEqualTo(30);
    assertThat(torque("oiled")).isCloseTo(23.16, digits(2)).isCloseTo(23, digits(0));
  }

  private static double torque(String lubricant) {
    return Ask.value(
        "torque", "torque", "diameter=0.375in", "preload=4940lb", "lubricant=" + lubricant);
  }

  @Test
  void oilUnderADryTorqueAddsAThird() {
    // Own figures with the article's K: 65 lb·ft on 7/16 in.
    assertThat(preload("dry")).isCloseTo(8914, digits(0));
    assertThat(preload("oiled")).isCloseTo(11886, digits(0));
    assertThat(preload("oiled") / preload("dry")).isCloseTo(4.0 / 3, within(1e-12));
  }

  private static double preload(String lubricant) {
    return Ask.value(
        "preload", "preload", "diameter=0.4375in", "torque=65lbft", "lubricant=" + lubricant);
  }

  @Test
  void boreShapeOfTheWorkedExample() {
    // Own example.
    Result result =
        Ask.result(
            "bore-shape",
            "thrust-top=4.0052in",
            "thrust-middle=4.0038in",
            "thrust-bottom=4.0012in",
            "axial-top=4.0030in",
            "axial-middle=4.0024in",
            "axial-bottom=4.0010in",
            "nominal=4.000in");
    assertThat(result.getValue("out-of-round").value()).isCloseTo(0.0022, within(1e-12));
    assertThat(result.getValue("taper").value()).isCloseTo(0.0040, within(1e-12));
    assertThat(result.getValue("wear").value()).isCloseTo(0.0052, within(1e-12));
    assertThat(result.getValue("clean-up").value()).isCloseTo(4.0104, within(1e-12));
    assertThat(result.getValue("oversize").value()).isCloseTo(0.020, within(1e-12));
  }

  @Test
  void ringGapOpensPiTimesAsMuch() {
    // Small-engine manual: 0.001 in of bore, 0.003 in of gap. TM 5-3825-229-14&P 6-24 prints 0.0012
    // to 0.0031 in, which this does not give: π·0.0012 is 0.0038.
    assertThat(Ask.value("change", "ring-gap-change", "bore-change=0.001in"))
        .isCloseTo(0.003, digits(3));
    assertThat(Ask.value("change", "ring-gap-change", "bore-change=0.0012in"))
        .isCloseTo(0.0038, digits(4));
    assertThat(Ask.value("change", "ring-gap-change", "bore-change=0.03mm"))
        .isCloseTo(0.094, digits(3));
  }

  @Test
  void ringGapOfATradeQuiz() {
    // Trade quiz page: 3 in bore, 0.012 in.
    assertThat(gap("3in")).isCloseTo(0.012, within(1e-12));
    assertThat(gap("4.000in")).isCloseTo(0.016, within(1e-12));
  }

  private static double gap(String bore) {
    return Ask.value("gap", "ring-gap", "bore=" + bore, "gap-per-bore=0.004");
  }

  @Test
  void pistonToValveOfTheWorkedExample() {
    // Own example: 0.030 in at 20° costs 0.0319 on a flat crown and 0.0282 to a parallel pocket.
    assertThat(0.150 - room("flat")).isCloseTo(0.0319, digits(4));
    assertThat(0.150 - room("pocket")).isCloseTo(0.0282, digits(4));
  }

  private static double room(String crown) {
    return Ask.value(
        "clearance",
        "piston-to-valve",
        "clearance-now=0.150in",
        "lowering=0.030in",
        "valve-tilt=20deg",
        "crown=" + crown,
        "seat-sink=0in",
        "side=exhaust");
  }
}
