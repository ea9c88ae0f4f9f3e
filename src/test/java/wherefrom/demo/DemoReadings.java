package wherefrom.demo;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.job.OpenJob;
import wherefrom.job.measure.Instruments;
import wherefrom.job.measure.Measuring;
import wherefrom.parts.Place;
import wherefrom.quantity.Dimension;

/** The tools, limits and readings of the demo, all invented: no engine has these sizes. */
final class DemoReadings {
  private static final String MANUAL = "invented for the demo: no manual says so";
  private static final String MICROMETER = "micrometer 0-1 in";
  private static final String LARGE = "micrometer 2-3 in";
  private static final String LONG = "micrometer 7-8 in";
  private static final String CALLIPER = "caliper";
  private static final String DIAL = "dial";
  private static final String BORE_GAUGE = "bore gauge";
  private static final String SCALE = "spring scale";

  /** Ten-thousandths of an inch by which the parts of a set differ, in turn. */
  private static final int[] SPREAD = {0, 3, -2, 5, 1, -4, 2, -1, 4, -3, 0, 2, -5, 1, 3, -2};

  private final OpenJob job;
  private final Instruments instruments;
  private final Measuring measuring;

  DemoReadings(OpenJob job) {
    this.job = job;
    this.instruments = new Instruments(job);
    this.measuring = new Measuring(job);
  }

  void tools() {
    length(MICROMETER, "0.0001", "0.0001", "0.0001");
    length(LARGE, "0.0001", "0.0001", "0.0001");
    length(LONG, "0.0001", "0.0001", "0.0001");
    length(CALLIPER, "0.0005", "0.001", "0.0005");
    length(DIAL, "0.0001", "0.0002", "0.0001");
    length(BORE_GAUGE, "0.0001", "0.0002", "0.0001");
    instruments.list(SCALE, Dimension.FORCE, "1lb", "2lb", "1lb");
    for (String tool : List.of(MICROMETER, LARGE, LONG, CALLIPER, DIAL)) {
      instruments.zero(tool, "0");
    }
    limit("pushrod-runout", "value", "", "0.0020");
    limit("lifter-crown", "value", "0.0002", "");
    limit("lobe-lift", "lift", "0.2600", "");
    limit("spring-free", "value", "1.980", "");
    limit("spring-load", "value", "180lb", "");
    for (String journal : List.of("rod-journal", "main-journal")) {
      limit(journal, "out-of-round", "", "0.0010");
      limit(journal, "taper", "", "0.0005");
      limit(journal, "clearance", "0.0010", "0.0030");
    }
    limit("bore", "taper", "", "0.0050");
    limit("bore", "out-of-round", "", "0.0020");
    kept(instruments.size("main-journal", "2.6100", MANUAL));
    kept(instruments.size("rod-journal", "2.2400", MANUAL));
    kept(instruments.size("bore", "3.8700", MANUAL));
  }

  private void length(String name, String step, String error, String repeat) {
    kept(instruments.list(name, Dimension.LENGTH, step, error, repeat));
  }

  private void limit(String plan, String result, String lower, String upper) {
    kept(instruments.limit(plan, result, lower, upper, MANUAL));
  }

  private static void kept(Instruments.Answer answer) {
    if (answer instanceof Instruments.Answer.Refused refused) {
      throw new IllegalStateException(refused.sentence());
    }
  }

  void valvetrain() {
    set("pushrod-runout", "pushrod", DIAL, 9, Map.of("3EX", 28, "5IN", 19), Set.of("8EX"));
    set("pushrod-length", "pushrod", LONG, 79_200, Map.of(), Set.of("8EX"));
    set("lifter-crown", "lifter", DIAL, 15, Map.of("6EX", -11, "6IN", 2), Set.of());
    set("spring-free", "spring", CALLIPER, 20_300, Map.of("4EX", 19_760), Set.of());
    for (Place place : places("spring")) {
      boolean weak = place.spot().key().equals("4EX");
      int load = 200 + SPREAD[places("spring").indexOf(place)];
      take(part(place), "spring-load", SCALE, List.of((weak ? 179 : load) + "lb"));
    }
    List<String> lobes = Feature.LOBE.where(job.state().layout());
    for (String at : lobes) {
      int across = 12_000 + SPREAD[lobes.indexOf(at)];
      int lift = at.equals("6EX") ? 2_410 : 2_660 + SPREAD[15 - lobes.indexOf(at)];
      take(
          new Subject.AFeature(Feature.LOBE, at),
          "lobe-lift",
          LARGE,
          inches(across + lift, across));
    }
    List<String> studs = Feature.STUD.where(job.state().layout());
    for (String at : studs) {
      int proud = at.equals("3IN") ? 110 : SPREAD[studs.indexOf(at)];
      take(new Subject.AFeature(Feature.STUD, at), "stud-height", CALLIPER, inches(17_500 + proud));
    }
  }

  /** The crank, before it went to the shop and as it came back; shells, housings, four bores. */
  void bottomEnd() {
    journals(Feature.MAIN_JOURNAL, 26_093, "M3");
    journals(Feature.ROD_JOURNAL, 22_396, "B7");
    List<String> mains = Feature.MAIN_HOUSING.where(job.state().layout());
    for (String at : mains) {
      int bore = 28_012 + SPREAD[mains.indexOf(at)];
      Subject housing = new Subject.AFeature(Feature.MAIN_HOUSING, at);
      take(housing, "main-housing", BORE_GAUGE, inches(bore, bore + 1, bore));
    }
    for (Place place : places("main-shell")) {
      take(part(place), "main-shell-wall", MICROMETER, inches(949, 950, 949));
    }
    for (String at : List.of("B1", "B3", "B5", "B7")) {
      int bore = 38_712 + (at.equals("B5") ? 20 : 0);
      take(
          new Subject.AFeature(Feature.BORE, at),
          "bore",
          BORE_GAUGE,
          inches(bore + 42, bore + 20, bore, bore + 30, bore + 14, bore - 2));
    }
  }

  private void journals(Feature feature, int size, String worn) {
    List<String> all = feature.where(job.state().layout());
    for (String at : all) {
      int first = size + SPREAD[all.indexOf(at)] / 2;
      int less = at.equals(worn) ? 9 : 2;
      take(
          new Subject.AFeature(feature, at),
          feature.key(),
          LARGE,
          inches(first, first - less, first - 1, first - less));
    }
  }

  /** A reading of each part of a kind: the usual size, or its own where it differs much. */
  private void set(
      String plan, String kind, String tool, int usual, Map<String, Integer> own, Set<String> not) {
    List<Place> places = places(kind);
    for (Place place : places) {
      String at = place.spot().key();
      int spread = SPREAD[places.indexOf(place)];
      if (!not.contains(at)) {
        int size = own.getOrDefault(at, usual + (usual > 10_000 ? 10 * spread : spread));
        take(part(place), plan, tool, inches(size));
      }
    }
  }

  private List<Place> places(String kind) {
    return job.state().places().stream().filter(place -> place.kind().key().equals(kind)).toList();
  }

  private Subject part(Place place) {
    return Subject.ofPart(job.state().findOwner(place).orElseThrow().item());
  }

  private static List<String> inches(int... tenThousandths) {
    return java.util.Arrays.stream(tenThousandths)
        .mapToObj(size -> String.format(Locale.ROOT, "%.4f", size / 10_000.0))
        .toList();
  }

  private void take(Subject subject, String plan, String tool, List<String> sizes) {
    ReadingPlan readings = ReadingPlans.find(plan).orElseThrow();
    Map<String, List<String>> by = new LinkedHashMap<>();
    for (int at = 0; at < sizes.size(); at++) {
      by.put(readings.stations().get(at).key(), List.of(sizes.get(at)));
    }
    Measuring.Answer came = measuring.take(new Measuring.Entry(subject, plan, tool, by, false, ""));
    if (!(came instanceof Measuring.Answer.Kept)) {
      throw new IllegalStateException(plan + " of " + subject + ": " + came);
    }
  }
}
