package wherefrom.workings.catalogue.compression;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.quantity.Dimension;
import wherefrom.workings.AmountInput;
import wherefrom.workings.InputSpec;
import wherefrom.workings.MissingInputs;
import wherefrom.workings.Note;
import wherefrom.workings.Range;
import wherefrom.workings.Source;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.catalogue.basis.Gap;
import wherefrom.workings.catalogue.basis.Geometry;
import wherefrom.workings.maths.DualNumber;

/**
 * The terms of one cylinder's volume at top dead centre but for the chamber, in mm³.
 *
 * @param swept the volume the piston sweeps
 * @param gasket the hole in the gasket
 * @param deck between piston edge and deck; negative where the piston stands proud
 * @param piston dish and reliefs; negative for a dome
 * @param crevice round the piston above the top ring; zero where it is not counted
 */
public record CombustionSpace(
    DualNumber swept, DualNumber gasket, DualNumber deck, DualNumber piston, DualNumber crevice) {
  public static final AmountInput BORE =
      AmountInput.length("bore", "The diameter of the cylinder.");
  public static final AmountInput STROKE =
      AmountInput.length("stroke", "The travel of the piston from top to bottom.");
  public static final AmountInput CHAMBER =
      AmountInput.of(
          "chamber",
          Dimension.VOLUME,
          "The volume of the chamber in the head, valves and plug in place, poured with liquid.");
  public static final AmountInput GASKET_BORE =
      AmountInput.length("gasket-bore", "The diameter of the hole in the head gasket.");
  public static final AmountInput GASKET_THICKNESS =
      AmountInput.length("gasket-thickness", "The thickness of the head gasket when torqued down.")
          .in(Range.between("0", "25"));
  public static final AmountInput DECK =
      AmountInput.length(
              "deck",
              "The distance from the piston's flat edge at top dead center up to the deck;"
                  + " negative where the piston stands above it.")
          .in(Range.between("-50", "50"));
  public static final AmountInput PISTON_VOLUME =
      AmountInput.of(
              "piston-volume",
              Dimension.VOLUME,
              "Dish and valve reliefs as a positive volume, a dome as a negative one, 0 for a plain"
                  + " flat top.")
          .signed();
  public static final AmountInput CREVICE_HEIGHT =
      AmountInput.length("crevice-height", "From the piston's edge down to the top ring.")
          .orZero()
          .optional();
  public static final AmountInput CREVICE_GAP =
      AmountInput.length("crevice-gap", "The radial gap around the piston above the top ring.")
          .in(Range.between("0", "10"))
          .optional();

  private static final double LEAST_RATIO = 5;
  private static final double MOST_RATIO = 14;

  private static final List<AmountInput> ALL =
      List.of(
          BORE,
          STROKE,
          GASKET_BORE,
          GASKET_THICKNESS,
          DECK,
          PISTON_VOLUME,
          CREVICE_HEIGHT,
          CREVICE_GAP);

  /** The inputs of every term, with more in front. */
  public static List<InputSpec> inputs(InputSpec... first) {
    List<InputSpec> inputs = new ArrayList<>(List.of(first));
    inputs.addAll(ALL);
    return List.copyOf(inputs);
  }

  /** Both inputs of the crevice or neither: names the one that is missing. */
  public static Optional<MissingInputs> findMissing(Terms terms) {
    if (terms.has(CREVICE_HEIGHT) == terms.has(CREVICE_GAP)) {
      return Optional.empty();
    }
    InputSpec missing = terms.has(CREVICE_HEIGHT) ? CREVICE_GAP : CREVICE_HEIGHT;
    return Optional.of(new MissingInputs(List.of(missing)));
  }

  public static CombustionSpace of(Terms terms) {
    DualNumber bore = terms.get(BORE);
    return new CombustionSpace(
        Geometry.cylinder(bore, terms.get(STROKE)),
        Geometry.cylinder(terms.get(GASKET_BORE), terms.get(GASKET_THICKNESS)),
        Geometry.cylinder(bore, terms.get(DECK)),
        terms.get(PISTON_VOLUME),
        crevice(terms, bore));
  }

  /** A ring of the given height: π/4·(B² − (B − 2r)²)·h. */
  private static DualNumber crevice(Terms terms, DualNumber bore) {
    if (!terms.has(CREVICE_HEIGHT)) {
      return DualNumber.of(0);
    }
    DualNumber land = bore.minus(terms.get(CREVICE_GAP).times(2));
    DualNumber ring = Geometry.disc(bore).minus(Geometry.disc(land));
    return ring.times(terms.get(CREVICE_HEIGHT));
  }

  /** Everything above the piston but the chamber. */
  public DualNumber withoutChamber() {
    return gasket.plus(deck).plus(piston).plus(crevice);
  }

  /** (V_s + V_c) / V_c for the clearance volume V_c. */
  public DualNumber ratio(DualNumber clearance) {
    return swept.plus(clearance).dividedBy(clearance);
  }

  /** The clearance volume that gives the ratio: V_s / (CR − 1). */
  public DualNumber clearanceFor(DualNumber ratio) {
    return swept.dividedBy(ratio.minus(DualNumber.of(1)));
  }

  /** What a negative cut means. */
  static Note ratioAbove() {
    return Note.conclusion(
        "ratio-above-target",
        "The ratio is above the wanted one already. Nothing is to be cut.",
        Source.workedOut("the inputs given"));
  }

  /** What is left between piston edge and head: deck and gasket. */
  static DualNumber pistonToHead(Terms terms) {
    return terms.get(DECK).plus(terms.get(GASKET_THICKNESS));
  }

  /** As {@link #withNotes}, and asks back where no petrol engine has such a ratio. */
  static Values withRatioNotes(
      Terms terms, DualNumber pistonToHead, DualNumber ratio, Values values) {
    Values noted = withNotes(terms, pistonToHead, values);
    return findOddRatio(ratio).map(noted::note).orElse(noted);
  }

  /** Asks back where no engine that burns petrol has such a ratio. */
  public static Optional<Note> findOddRatio(DualNumber ratio) {
    double size = ratio.toDouble();
    if (size >= LEAST_RATIO && size <= MOST_RATIO) {
      return Optional.empty();
    }
    String shown = new BigDecimal(size).round(new MathContext(3)).toPlainString();
    return Optional.of(
        Note.question(
            "unusual-ratio",
            "A ratio of " + shown + ": gasoline engines have 5 to 14. Read every figure again.",
            Source.commonPractice()));
  }

  /**
   * Says when the piston would hit the head or comes near it, when the crevice is left out, and
   * when the gasket would hang into the bore.
   */
  static Values withNotes(Terms terms, DualNumber pistonToHead, Values values) {
    return Gap.PISTON_TO_HEAD
        .withNote(values, pistonToHead, terms.lengthUnit())
        .noteIf(
            !terms.has(CREVICE_HEIGHT),
            () ->
                Note.remark(
                    "crevice-left-out",
                    "The gap around the piston above the top ring is not counted.",
                    Source.workedOut("the inputs given")))
        .noteIf(
            terms.get(GASKET_BORE).isLessThan(terms.get(BORE)),
            () ->
                Note.caution(
                    "gasket-in-bore",
                    "The gasket's hole is smaller than the bore. It would hang into the cylinder.",
                    Source.workedOut("the two diameters")));
  }
}
