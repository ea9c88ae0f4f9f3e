package wherefrom.job.numbers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Sources;
import wherefrom.inspection.Subject;
import wherefrom.job.FigureParser;
import wherefrom.job.MeasuredResult;
import wherefrom.job.OpenJob;
import wherefrom.job.StaleReadings;
import wherefrom.job.SurfaceSize;
import wherefrom.job.SurfaceSizes;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Measured;
import wherefrom.quantity.Unit;
import wherefrom.rules.size.CutSurface;
import wherefrom.workings.ResultValue;
import wherefrom.workings.catalogue.accept.Acceptance;

/**
 * The card of ring filing: for each bore and ring the gap that is wanted, the gap that is, what is
 * to be filed off, and a tick. The wanted gap is a least gap, judged as a lower limit (ISO
 * 14253-1). Wanted gaps and ticks are two sheets of figures.
 */
public final class RingFiling {
  /** Where no source is named, common practice. */
  public static final String HOW =
      "File one end alone, from the face inward, and keep it square. Take the burr off. Square the"
          + " ring in its bore. Measure (common practice, no source).";

  private static final String WANTED = "ring-filing";
  private static final String TICKS = "rings-filed";
  private static final String READ_AT = " read at ";

  /** The keys of both sheets; they never change. */
  public static final List<String> SHEETS = List.of(WANTED, TICKS);

  /** Beyond this no rule of a ring maker goes; a figure above it is a slip. */
  private static final double MOST_PER_BORE = 0.02;

  private final OpenJob job;

  public RingFiling(OpenJob job) {
    this.job = job;
  }

  private Sheet sheet() {
    return new Sheets(job).find(WANTED).orElse(Sheet.empty("ring gaps wanted"));
  }

  private Sheet ticks() {
    return new Sheets(job).find(TICKS).orElse(Sheet.empty("rings filed"));
  }

  public Optional<WantedGap> findWanted(Ring ring) {
    return WantedGap.of(sheet(), ring);
  }

  /**
   * Keeps a rule for a sort of ring.
   *
   * @param perBore gap over bore, such as 0.004
   * @param source blank where there is none: common practice
   */
  public FigureOutcome wantPerBore(Ring ring, String perBore, String source) {
    return FigureParser.read(
        perBore,
        job.state().units(),
        Dimension.NUMBER,
        rule -> keepRule(ring, rule, source),
        FigureOutcome.Refused::new);
  }

  private FigureOutcome keepRule(Ring ring, Amount rule, String source) {
    double perBore = rule.number().doubleValue();
    return perBore > 0 && perBore <= MOST_PER_BORE
        ? keep(ring, WantedGap.Field.PER_BORE, rule.text(), source)
        : new FigureOutcome.Refused("Gap over bore lies between 0 and 0.02. Read the sheet again.");
  }

  /** Keeps the gap that the ring maker's sheet names, whatever the bore. */
  public FigureOutcome wantGap(Ring ring, String gap, String source) {
    return FigureParser.read(
        gap,
        job.state().units(),
        Dimension.LENGTH,
        amount ->
            amount.number().signum() > 0
                ? keep(ring, WantedGap.Field.GAP, amount.text(), source)
                : new FigureOutcome.Refused("A gap is more than 0."),
        FigureOutcome.Refused::new);
  }

  private FigureOutcome keep(Ring ring, WantedGap.Field field, String figure, String source) {
    job.inOne(() -> keepWanted(ring, field, figure, source));
    return new FigureOutcome.Done();
  }

  private void keepWanted(Ring ring, WantedGap.Field field, String figure, String source) {
    Sheet kept =
        sheet()
            .with(WantedGap.Field.PER_BORE.of(ring), "")
            .with(WantedGap.Field.GAP.of(ring), "")
            .with(field.of(ring), figure)
            .with(
                WantedGap.Field.SOURCE.of(ring),
                source.isBlank() ? Sources.PRACTICE : source.strip());
    new Sheets(job).keep(WANTED, kept);
  }

  /** Every ring of which a gap is wanted, bore by bore. */
  public List<RingGapRow> rows() {
    List<RingGapRow> rows = new ArrayList<>();
    for (String where : Feature.RINGS.where(job.state().layout())) {
      for (Ring ring : Ring.values()) {
        findWanted(ring).map(wanted -> row(ring, where, wanted)).ifPresent(rows::add);
      }
    }
    return rows;
  }

  public Optional<RingGapRow> find(String where, Ring ring) {
    return Feature.RINGS.where(job.state().layout()).contains(where)
        ? findWanted(ring).map(wanted -> row(ring, where, wanted))
        : Optional.empty();
  }

  /** Ticks a ring as done; it stays so while this reading stands and is not too narrow. */
  public FigureOutcome tick(String where, Ring ring) {
    return job.asOne(() -> tickOnce(where, ring));
  }

  private FigureOutcome tickOnce(String where, Ring ring) {
    Optional<RingGapRow> row = find(where, ring);
    if (row.isEmpty()) {
      return new FigureOutcome.Refused("No gap is wanted of this ring yet.");
    }
    if (row.get().state() == RingGapRow.State.DONE) {
      return new FigureOutcome.Done();
    }
    if (!row.get().mayBeTicked()) {
      return new FigureOutcome.Refused("Not done yet. " + row.get().sentence());
    }
    keepTick(row.get(), row.get().gap().map(gap -> tickOf(gap, ring, where)).orElse(""));
    return new FigureOutcome.Done();
  }

  /** Takes a tick off again. */
  public void untick(String where, Ring ring) {
    job.inOne(() -> untickOnce(where, ring));
  }

  private void untickOnce(String where, Ring ring) {
    find(where, ring).ifPresent(row -> keepTick(row, ""));
  }

  private void keepTick(RingGapRow row, String text) {
    new Sheets(job).keep(TICKS, ticks().with(key(row.where(), row.ring()), text));
  }

  private static String key(String where, Ring ring) {
    return where + "-" + ring.id();
  }

  /** The gap, and the entry since which it reads so: the same figure read anew has no tick yet. */
  private String tickOf(Measured gap, Ring ring, String where) {
    return exact(gap) + READ_AT + new RingReadings(job).since(ring, where);
  }

  private static String exact(Measured gap) {
    return gap.value().text();
  }

  /** Ticks of earlier versions name the gap alone. */
  private boolean isTicked(Measured gap, Ring ring, String where) {
    String tick = ticks().figures().getOrDefault(key(where, ring), "");
    return tick.equals(exact(gap)) || tick.equals(tickOf(gap, ring, where));
  }

  private RingGapRow row(Ring ring, String where, WantedGap rule) {
    Optional<Measured> wanted = wanted(where, rule);
    Optional<Measured> gap = gap(ring, where);
    if (wanted.isEmpty() || gap.isEmpty()) {
      RingGapRow.State state =
          wanted.isEmpty() ? RingGapRow.State.NO_BORE : RingGapRow.State.TO_MEASURE;
      return new RingGapRow(ring, where, state, wanted, gap, Optional.empty());
    }
    ResultValue toFile = toFile(wanted.get(), gap.get());
    boolean ticked = isTicked(gap.get(), ring, where);
    return new RingGapRow(ring, where, state(toFile, ticked), wanted, gap, Optional.of(toFile));
  }

  private static RingGapRow.State state(ResultValue toFile, boolean ticked) {
    Acceptance room =
        new Acceptance(
            -toFile.value(),
            toFile.standardUncertainty(),
            OptionalDouble.of(0),
            OptionalDouble.empty());
    return switch (room.decision()) {
      case REJECT -> RingGapRow.State.TO_FILE;
      case UNDECIDED -> ticked ? RingGapRow.State.DONE : RingGapRow.State.NEAR;
      case ACCEPT -> ticked ? RingGapRow.State.DONE : RingGapRow.State.WIDE_ENOUGH;
    };
  }

  /** Independent readings add in quadrature (JCGM 100:2008, 5.1.2). */
  private static ResultValue toFile(Measured wanted, Measured gap) {
    Unit unit = gap.value().unit();
    double value = wanted.value().in(unit) - gap.value().in(unit);
    double u = Math.hypot(uncertainty(wanted, unit), uncertainty(gap, unit));
    return new ResultValue("to-file", "to file", unit, value, u, List.of());
  }

  private static double uncertainty(Measured measured, Unit unit) {
    return measured.standardUncertainty().map(u -> u.in(unit)).orElse(0.0);
  }

  private Optional<Measured> gap(Ring ring, String where) {
    Subject rings = new Subject.AFeature(Feature.RINGS, where);
    Optional<MeasuredResult> read =
        job.state()
            .measures()
            .findResult(rings, ring.plan())
            .filter(result -> !new StaleReadings(job.state()).isStale(result));
    return read.flatMap(
        result ->
            result.samples().stream()
                .filter(sample -> sample.station().key().equals(ring.id()))
                .findFirst()
                .map(sample -> sample.measured(result.tool())));
  }

  private Optional<Measured> wanted(String where, WantedGap rule) {
    if (rule.gap().isPresent()) {
      return rule.gap().map(Measured::of);
    }
    return bore(where).map(bore -> times(bore, rule.perBore().orElseThrow()));
  }

  private static Measured times(Measured bore, Amount rule) {
    double factor = rule.number().doubleValue();
    Unit unit = bore.value().unit();
    return Measured.of(
        Amount.of(factor * bore.value().in(unit), unit),
        Amount.of(factor * uncertainty(bore, unit), unit));
  }

  /** As it is measured now, else as it was cut, else its size when new. */
  private Optional<Measured> bore(String where) {
    SurfaceSize size = new SurfaceSizes(job.state()).get(CutSurface.BORE, where);
    return size.measured()
        .map(MeasuredResult::mean)
        .or(() -> size.asCut().or(size::standard).map(Measured::of));
  }
}
