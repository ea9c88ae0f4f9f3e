package wherefrom.workings.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wherefrom.inspection.Citations;
import wherefrom.workings.Working;

/** One row a figure, each met to its last digit; the source stands beside it. */
class PrintedFigureTest {
  /** A figure known before the program was asked. */
  record Row(String working, String inputs, String result, String figure, String source) {
    double value() {
      return Double.parseDouble(figure);
    }

    double halfStep() {
      int point = figure.indexOf('.');
      return 0.5 * Math.pow(10, point < 0 ? 0 : point + 1 - figure.length());
    }
  }

  /** Worked out by hand, because nothing in print was found. */
  private static final String OWN = "own example, worked out by hand; none was found in print";

  private static final String FULL =
      "bore=3.870in stroke=3.310in gasket-bore=3.970in gasket-thickness=0.040in deck=0.025in"
          + " piston-volume=6cc ";

  private static final String MAGAZINE = "Circle Track, \"Compression Ratio Rules\", May 2004";
  private static final String FIRST_SPRING =
      "TM 10-4320-344-24, Table 4-1: means of free length 1.702 to 1.722 in, 45 to 51 lb at 1.492"
          + " in, 130 to 144 lb at 1.082 in; by wire 0.172 in, OD 1.302 in, 6 coils";
  private static final String UNDERSIZES = "TM 5-3805-262-34, 4-24";
  private static final String FASTENERS =
      "\"Suggested Tightening Torque Values To Produce Corresponding Bolt Clamping Loads\""
          + " (studylib.net, 26058660), undated: SAE grade 5, 3/8-16, 4,940 lb";
  private static final String FASTENERS_TOO =
      "Emerson, Bettis 500 Installation and Operation Manual, E2K-405-0218 rev. 2, 2018, p. 89:"
          + " grade 5, 3/8-16, 4,941 lb at 30.9 lb·ft, K 0.2";
  private static final String ISO = "ISO 14253-1:2017, from two secondary texts; " + OWN;

  private static Row row(
      String working, String inputs, String result, String figure, String source) {
    return new Row(working, inputs, result, figure, source);
  }

  static List<Row> volumes() {
    String handbook = "FAA-H-8083-30, 2008, figs 1-26 and 1-27";
    String engines = "FAA-H-8083-32, 2012, ch. 1";
    return List.of(
        row("swept-volume", "bore=5.5in stroke=5.4in cylinders=8", "cylinder", "128.29", handbook),
        row("swept-volume", "bore=5.5in stroke=5.5in cylinders=14", "engine", "1829.389", engines),
        row(
            "compression-ratio",
            "bore=10in stroke=1.5278874536821951in chamber=20in3 gasket-bore=10in"
                + " gasket-thickness=0in deck=0in piston-volume=0cc",
            "ratio",
            "7.000000000",
            engines + ", Fig 1-38: 140 over 20"),
        row(
            "compression-ratio",
            "bore=4.00in stroke=3.48in deck=0.050in gasket-bore=4.00in gasket-thickness=0.020in"
                + " piston-volume=5cc chamber=70cc",
            "ratio",
            "9.01",
            MAGAZINE),
        row("compression-ratio", FULL + "chamber=63cc", "swept", "638.0298", OWN),
        row("swept-volume", "bore=100.838mm stroke=1.016mm cylinders=1", "cylinder", "8.1139", OWN),
        row("swept-volume", "bore=98.298mm stroke=0.635mm cylinders=1", "cylinder", "4.8190", OWN),
        row("compression-ratio", FULL + "chamber=63cc", "clearance", "81.9329", OWN),
        row("compression-ratio", FULL + "chamber=63cc", "ratio", "8.7872", OWN),
        row(
            "compression-ratio",
            FULL + "chamber=63cc crevice-height=0.300in crevice-gap=0.020in",
            "ratio",
            "8.6758",
            OWN),
        row("chamber-for-ratio", FULL + "target=9.5", "clearance", "75.0623", OWN),
        row("chamber-for-ratio", FULL + "target=9.5", "chamber", "56.1294", OWN),
        row("chamber-for-ratio", FULL + "target=9.5 chamber=63cc", "remove", "6.8706", OWN));
  }

  static List<Row> cuts() {
    return List.of(
        row(
            "head-cut",
            "chamber-now=63cc chamber-wanted=56.1294cc opening=0.165cc/thou",
            "cut",
            "0.0416",
            OWN),
        row("opening-by-pour", "poured=0.1927582cc depth=1thou", "opening", "0.19276", OWN),
        row("deck-cut", FULL + "target=9.5 chamber=63cc", "cut", "0.0356", OWN),
        row(
            "ratio-after-cut",
            FULL + "chamber=63cc head-cut=0.04164in opening=0.165cc/thou deck-cut=0in",
            "ratio",
            "9.500",
            OWN),
        row(
            "ratio-after-cut",
            FULL + "chamber=63cc head-cut=0in opening=0.165cc/thou deck-cut=0.0356in",
            "ratio",
            "9.50",
            OWN),
        row(
            "intake-correction",
            "cut=0.030in bank-angle=90deg face-angle=80deg",
            "face",
            "0.0370",
            OWN),
        row(
            "intake-correction",
            "cut=0.030in bank-angle=90deg face-angle=80deg",
            "rails",
            "0.0515",
            OWN),
        row(
            "pushrod-length",
            "base-radius-loss=0.025in lowering=0.042in pushrod-tilt=8deg tip-rise=0.020in"
                + " rocker-ratio=1.5",
            "change",
            "-0.0299",
            OWN),
        row("piston-to-valve", valve("flat"), "clearance", "0.1181", OWN),
        row("piston-to-valve", valve("pocket"), "clearance", "0.1218", OWN),
        row("piston-to-valve", sunk("flat"), "clearance", "0.1281", OWN),
        row("piston-to-valve", sunk("pocket"), "clearance", "0.1318", OWN));
  }

  /** 0.030 in at 20° costs 0.0319 on a flat crown and 0.0282 to a parallel pocket. */
  private static String valve(String crown) {
    return "clearance-now=0.150in lowering=0.030in valve-tilt=20deg seat-sink=0in side=exhaust"
        + " crown="
        + crown;
  }

  /** The same with the seat sunk by 0.010 in. */
  private static String sunk(String crown) {
    return valve(crown).replace("seat-sink=0in", "seat-sink=0.010in");
  }

  static List<Row> springs() {
    String second = "TM 9-6115-464-34, 1-15: wire 0.177 in, OD 1.297 in, 6¼ coils";
    return List.of(
        row("valve-lift", "lobe-lift=0.300in rocker-ratio=1.5 lash=0in", "lift", "0.450", OWN),
        row("valve-lift", "lobe-lift=0.300in rocker-ratio=1.5 lash=0.020in", "lift", "0.430", OWN),
        row(
            "coil-bind",
            "installed-height=1.700in solid-height=1.150in lift=0.450in",
            "margin",
            "0.100",
            OWN),
        row(
            "coil-bind",
            "installed-height=1.700in coils=5.75 wire=0.200in lift=0.450in",
            "solid",
            "1.150",
            OWN),
        row("retainer-to-seal", "seal-gap=0.520in lift=0.450in", "margin", "0.070", OWN),
        row("spring-rate", loads("1.492", "48", "1.082", "137"), "rate", "217.07", FIRST_SPRING),
        row("spring-rate", loads("1.712", "0", "1.082", "137"), "rate", "217.46", FIRST_SPRING),
        row("spring-rate", loads("1.712", "0", "1.492", "48"), "rate", "218.18", FIRST_SPRING),
        row("spring-rate-by-wire", wire("0.172", "1.302", "4"), "rate", "217.98", FIRST_SPRING),
        row("spring-rate-by-wire", wire("0.177", "1.297", "4.25"), "rate", "236.3", second),
        row("spring-loads", from("48"), "open", "137.0", FIRST_SPRING),
        row("spring-loads", from("48"), "seat", "48.0", FIRST_SPRING),
        row("spring-loads", shimmed(), "seat", "50.17", FIRST_SPRING + "; " + OWN));
  }

  private static String loads(String height1, String load1, String height2, String load2) {
    return "height-1="
        + height1
        + "in load-1="
        + load1
        + "lb height-2="
        + height2
        + "in load-2="
        + load2
        + "lb";
  }

  /** The modulus is from memory. */
  private static String wire(String wire, String outside, String active) {
    return "wire="
        + wire
        + "in outside-diameter="
        + outside
        + "in active-coils="
        + active
        + " modulus=11500000psi";
  }

  private static String from(String load) {
    return "rate=217.07lb/in at-height=1.492in installed-height=1.492in lift=0.410in load="
        + load
        + "lb";
  }

  /** The same spring, installed 0.010 in shorter: 48 + 2.17 lb. */
  private static String shimmed() {
    return from("48").replace("installed-height=1.492in", "installed-height=1.482in");
  }

  static List<Row> bearings() {
    String army = "TM 10-3930-653-14&P, specifications: 0.0008 to 0.0024 in on 2.478 in";
    String four = "housing=2.8010in upper-wall=0.0945in lower-wall=0.0945in journal=2.6100in";
    return List.of(
        row("oil-clearance", four, "clearance", "0.0020", OWN),
        row("oil-clearance", four, "per-diameter", "0.00077", "NAVEDTRA 14050 says about 0.001"),
        row(
            "oil-clearance",
            "housing=71.1454mm upper-wall=2.4003mm lower-wall=2.4003mm journal=66.294mm",
            "clearance",
            "0.0508",
            OWN),
        row(
            "oil-clearance-one-wall",
            "housing=2.8010in wall=0.0945in journal=2.6100in",
            "clearance",
            "0.0020",
            OWN),
        row("oil-clearance-bore", "inside=2.4788in journal=2.478in", "clearance", "0.0008", army),
        row("oil-clearance-bore", "inside=2.4804in journal=2.478in", "clearance", "0.0024", army),
        row("next-undersize", "standard=2.748in smallest=2.743in", "diameter", "2.738", UNDERSIZES),
        row("next-undersize", "standard=2.749in smallest=2.744in", "diameter", "2.739", UNDERSIZES),
        row("next-undersize", "standard=2.748in smallest=2.742in", "diameter", "2.728", UNDERSIZES),
        row("next-undersize", "standard=2.749in smallest=2.743in", "diameter", "2.729", UNDERSIZES),
        row("next-undersize", "standard=2.748in smallest=2.735in", "diameter", "2.718", UNDERSIZES),
        row("next-undersize", "standard=2.749in smallest=2.736in", "diameter", "2.719", UNDERSIZES),
        row("strip-width", "strand=0.010in clearance=0.0015in", "width", "0.0524", OWN),
        row("strip-width", "strand=0.010in clearance=0.002in", "width", "0.0393", OWN),
        row("strip-width", "strand=0.010in clearance=0.003in", "width", "0.0262", OWN),
        row("strip-clearance", "strand=0.010in width=0.0393in", "clearance", "0.0020", OWN));
  }

  static List<Row> fasteners() {
    String chart = "diameter=0.375in preload=4940lb lubricant=";
    String half = "diameter=0.4375in torque=65lbft lubricant=";
    return List.of(
        row("torque", chart + "dry", "torque", "30.88", FASTENERS + "; prints 30, cut off"),
        row("torque", chart.replace("4940", "4941") + "dry", "torque", "30.9", FASTENERS_TOO),
        row("torque", chart + "oiled", "torque", "23", FASTENERS),
        row("torque", chart + "oiled", "torque", "23.16", FASTENERS),
        row("preload", half + "dry", "preload", "8914", OWN + "; K from " + FASTENERS),
        row("preload", half + "oiled", "preload", "11886", OWN + "; K from " + FASTENERS),
        row(
            "angle-stage",
            "pitch=1.25mm angle=165deg",
            "travel",
            "0.573",
            "165° as in TM 10-3930-669-20, App. E; the pitch is invented, " + OWN));
  }

  static List<Row> shapes() {
    String bore =
        "thrust-top=3.8752in thrust-middle=3.8738in thrust-bottom=3.8712in axial-top=3.8730in"
            + " axial-middle=3.8724in axial-bottom=3.8710in nominal=3.870in";
    String journal =
        "front-vertical=2.6100in front-horizontal=2.6096in rear-vertical=2.6097in"
            + " rear-horizontal=2.6090in standard=2.6102in";
    String small = "TM 5-3805-260-24, 1-24: 0.003 in of gap per 0.001 in of bore";
    String chain = "TM 9-2815-237-34, 2-28: 0.810 in (20.6 mm) in all";
    return List.of(
        row("bore-shape", bore, "out-of-round", "0.0022", OWN),
        row("bore-shape", bore, "taper", "0.0040", OWN),
        row("bore-shape", bore, "wear", "0.0052", OWN),
        row("bore-shape", bore, "clean-up", "3.8804", OWN),
        row("bore-shape", bore, "oversize", "0.020", OWN),
        row("journal-shape", journal, "out-of-round", "0.0007", OWN),
        row("journal-shape", journal, "taper", "0.0006", OWN),
        row("journal-shape", journal, "wear", "0.0012", OWN),
        row("ring-gap-change", "bore-change=0.001in", "change", "0.003", small),
        row("ring-gap-change", "bore-change=0.03mm", "change", "0.094", OWN),
        row(
            "ring-gap",
            "bore=3in gap-per-bore=0.004",
            "gap",
            "0.012",
            "Hastings Service Tips, \"Oversize Cylinders\" (P32), undated: 0.012 in for 3 in"),
        row("ring-gap", "bore=3.870in gap-per-bore=0.004", "gap", "0.01548", OWN),
        row("chain-deflection", "inward=-0.400in outward=0.410in", "deflection", "0.810", chain),
        row("chain-deflection", "inward=-0.400in outward=10.414mm", "deflection", "0.810", chain),
        row("cam-slack", "forward=6.5deg backward=-0.5deg", "slack", "7.0", OWN),
        row("top-dead-center", "before=-32deg after=29deg", "center", "-1.5", OWN));
  }

  static List<Row> cylinders() {
    String share = "Pontiac Solstice, Service Manual, 2006: 70 % of 150 psi is 105 psi";
    String leak =
        "Dodge Dakota, Service Manual, 2002: 25 % of leakage at 80 psi leaves 60 psi;"
            + " FAA AC 43.13-1B, 8-14: 25 % of 80 psi";
    return List.of(
        row("cylinder-compression", "dry=105psi highest=150psi", "share", "70.0000", share),
        row("cylinder-compression", "dry=725kPa highest=1035kPa", "share", "70", share),
        row("cylinder-compression", "dry=90psi highest=150psi wet=135psi", "rise", "50.0", OWN),
        row("leak-down", "supply=80psi held=60psi", "leak", "25.000", leak),
        row("leak-down", "supply=552kPa held=414kPa", "leak", "25.000", leak));
  }

  static List<Row> acceptance() {
    String inch = "uncertainty=0.000131in lower=0.0010in upper=0.0025in reading=";
    String metric = "uncertainty=0.00262mm lower=0.025mm upper=0.064mm reading=0.040mm";
    return List.of(
        row("accept", inch + "0.0022in", "guard-band", "0.000216", ISO),
        row("accept", inch + "0.0022in", "accept-from", "0.00122", ISO),
        row("accept", inch + "0.0022in", "accept-to", "0.00228", ISO),
        row("accept", inch + "0.0022in", "reject-below", "0.00078", ISO),
        row("accept", inch + "0.0022in", "reject-above", "0.00272", ISO),
        row("accept", inch + "0.0022in", "probability", "98.9", ISO),
        row("accept", inch + "0.0023in", "probability", "93.7", ISO),
        row("accept", metric, "guard-band", "0.0043", ISO),
        row("accept", metric, "accept-from", "0.0293", ISO),
        row("accept", metric, "accept-to", "0.0597", ISO));
  }

  static List<Row> rows() {
    return java.util.stream.Stream.of(
            volumes(),
            cuts(),
            springs(),
            bearings(),
            fasteners(),
            shapes(),
            cylinders(),
            acceptance())
        .flatMap(List::stream)
        .toList();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void figureComesOutToItsLastDigit(Row row) {
    double value = Ask.value(row.result(), row.working(), row.inputs().split(" "));
    assertThat(value)
        .as("%s (%s)", row.working(), row.source())
        .isCloseTo(row.value(), within(row.halfStep() * (1 + 1e-9)));
  }

  @Test
  void everyRowsSourceCanBeFound() {
    assertThat(rows())
        .extracting(Row::source)
        .allSatisfy(source -> assertThat(Citations.canBeFound(source)).as(source).isTrue());
  }

  @Test
  void everyWorkingHasARow() {
    assertThat(rows().stream().map(Row::working).collect(Collectors.toSet()))
        .isEqualTo(Workings.all().stream().map(Working::key).collect(Collectors.toSet()));
  }
}
