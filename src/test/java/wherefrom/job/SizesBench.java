package wherefrom.job;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.job.change.Planning;
import wherefrom.job.decide.Deciding;
import wherefrom.job.measure.Instruments;
import wherefrom.job.measure.Measuring;
import wherefrom.job.money.Replacement;
import wherefrom.job.shop.MachineShop;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.size.ChangeText;

/** A V8 on the bench whose journals and bores are measured and cut. */
public final class SizesBench {
  static final String MANUAL = "this engine's manual, p. 3";

  public final BenchJob bench = BenchJob.v8();
  public final MachineShop shop = new MachineShop(bench.job);
  public final Planning planning = new Planning(bench.job);

  private SizesBench() {}

  /** Rod journals of 2.2400 in, main journals of 2.6100 in, bores of 3.8700 in when new. */
  public static SizesBench typed() {
    SizesBench bench = untyped();
    bench.standard("rod-journal", "2.2400");
    bench.standard("main-journal", "2.6100");
    bench.standard("bore", "3.8700");
    return bench;
  }

  public static SizesBench untyped() {
    SizesBench bench = new SizesBench();
    new Instruments(bench.bench.job).list("mic", Dimension.LENGTH, "0.0001", "0.0001", "0.0001");
    return bench;
  }

  void standard(String plan, String size) {
    new Instruments(bench.job).size(plan, size, MANUAL);
  }

  public SurfaceSizes sizes() {
    return new SurfaceSizes(bench.job.state());
  }

  void journal(Feature feature, String where, String... four) {
    take(
        feature,
        where,
        List.of("front-vertical", "front-horizontal", "rear-vertical", "rear-horizontal"),
        four);
  }

  /** All four readings of a rod journal alike. */
  void rodJournal(int cylinder, String size) {
    journal(Feature.ROD_JOURNAL, "B" + cylinder, size, size, size, size);
  }

  void rodJournals(String size) {
    for (int at = 1; at <= 8; at++) {
      rodJournal(at, size);
    }
  }

  /** All three readings of a big end's housing alike. */
  void housing(int cylinder, String size) {
    take(Feature.ROD_HOUSING, "B" + cylinder, List.of("vertical", "left", "right"), size);
  }

  /** Worn at the top, as far as the first figure says, and not at the bottom. */
  public void bore(int cylinder, String top, String bottom) {
    take(
        Feature.BORE,
        "B" + cylinder,
        List.of(
            "thrust-top",
            "thrust-middle",
            "thrust-bottom",
            "axial-top",
            "axial-middle",
            "axial-bottom"),
        top,
        bottom,
        bottom,
        bottom,
        bottom,
        bottom);
  }

  private void take(Feature feature, String where, List<String> stations, String... figures) {
    Map<String, List<String>> readings = new LinkedHashMap<>();
    for (int at = 0; at < stations.size(); at++) {
      readings.put(stations.get(at), List.of(figures[at % figures.length]));
    }
    Measuring.Answer answer =
        new Measuring(bench.job)
            .take(
                new Measuring.Entry(
                    new Subject.AFeature(feature, where),
                    feature.key(),
                    "mic",
                    readings,
                    true,
                    ""));
    if (!(answer instanceof Measuring.Answer.Kept)) {
      throw new IllegalStateException(answer.toString());
    }
  }

  public void made(ChangeKind kind, String where, String size) {
    Planning.Answer answer = planning.make(ChangeText.read(kind, where, size, Unit.INCH));
    if (!(answer instanceof Planning.Answer.Made)) {
      throw new IllegalStateException(answer.toString());
    }
  }

  /** Bored, all eight. */
  public void bored(String size) {
    for (int at = 1; at <= 8; at++) {
      made(ChangeKind.BORED, "B" + at, size);
    }
  }

  public void toReplace(String... places) {
    for (String place : places) {
      bench.decide(place, Decision.REPLACE);
    }
  }

  /** What the list says for a kind: one text for each size. */
  public List<String> toBuy(PartKind kind) {
    return new Deciding(bench.job)
        .replacements().stream()
            .filter(line -> line.kind() == kind)
            .map(Replacement::sizeWords)
            .toList();
  }

  FittingSize fits(String place) {
    return sizes().findFitting(Place.find(place).orElseThrow()).orElseThrow();
  }
}
