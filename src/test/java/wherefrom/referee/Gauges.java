package wherefrom.referee;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.engine.Layout;
import wherefrom.inspection.Subject;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.entry.LimitTyped;
import wherefrom.job.entry.SizeTyped;
import wherefrom.job.entry.ToolListed;
import wherefrom.job.measure.Measuring;
import wherefrom.parts.PartKind;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.quantity.UnitSystem;

/** One tool, limits and standard sizes of an invented engine, and figures that lie in and out. */
final class Gauges {
  private static final String TOOL = "gauge";
  private static final String SOURCE = "invented";

  private static final Amount STEP = Amount.of("0.01", Unit.MILLIMETRE);

  private static final List<JobEntry> ENTRIES =
      List.of(
          new ToolListed(TOOL, STEP, STEP, STEP),
          new LimitTyped("pushrod-runout", "value", Optional.empty(), mm("0.5"), SOURCE),
          new LimitTyped("lifter-crown", "value", mm("0.1"), Optional.empty(), SOURCE),
          new LimitTyped("spring-free", "value", mm("45"), Optional.empty(), SOURCE),
          new LimitTyped("piston-diameter", "value", mm("99"), Optional.empty(), SOURCE),
          new LimitTyped("lobe-lift", "lift", mm("7"), Optional.empty(), SOURCE),
          new SizeTyped("rod-journal", Amount.of("2.1000", Unit.INCH), SOURCE),
          new SizeTyped("main-journal", Amount.of("2.4500", Unit.INCH), SOURCE),
          new SizeTyped("bore", Amount.of("4.0000", Unit.INCH), SOURCE));

  /** By plan: within the limit, at it, and outside. */
  private static final Map<String, List<String>> FIGURES =
      Map.of(
          "pushrod-runout", List.of("0.1 mm", "0.5 mm", "2 mm"),
          "lifter-crown", List.of("0.3 mm", "0.1 mm", "-0.2 mm"),
          "spring-free", List.of("50 mm", "45 mm", "30 mm"),
          "piston-diameter", List.of("100 mm", "99 mm", "95 mm"),
          "lobe-lift", List.of("40 mm", "39 mm", "34 mm"));

  private static final Map<String, String> STATIONS =
      Map.of(
          "pushrod-runout", "middle",
          "lifter-crown", "crown",
          "spring-free", "height",
          "piston-diameter", "skirt",
          "lobe-lift", "heel-toe");

  private static final List<String> ANSWERS = List.of("PASS", "SUSPECT", "FAIL");

  /** Standard, in ten thousandths of an inch, and which way a cut takes it. */
  private static final Map<String, List<Integer>> SIZES =
      Map.of(
          "ROD_JOURNALS_GROUND", List.of(21_000, -10),
          "MAIN_JOURNALS_GROUND", List.of(24_500, -10),
          "BORED", List.of(40_000, 10));

  private Gauges() {}

  private static Optional<Amount> mm(String figure) {
    return Optional.of(Amount.of(figure, Unit.MILLIMETRE));
  }

  /** The first entries of a job: it is opened, every kind tracked, and what is typed once. */
  static JobEntry[] start(Layout layout) {
    List<JobEntry> entries = new ArrayList<>();
    entries.add(JobOpened.of("Bench", 4_711_508, layout, PartKind.all(), UnitSystem.INCH));
    entries.addAll(ENTRIES);
    return entries.toArray(JobEntry[]::new);
  }

  /** Readings that come out as this answer. */
  static Measuring.Entry reading(Subject subject, String plan, String answer) {
    String figure = FIGURES.get(plan).get(ANSWERS.indexOf(answer));
    Map<String, List<String>> heel = Map.of(STATIONS.get(plan), List.of(figure));
    Map<String, List<String>> both =
        Map.of(STATIONS.get(plan), List.of(figure), "across", List.of("32 mm"));
    return new Measuring.Entry(
        subject, plan, TOOL, plan.equals("lobe-lift") ? both : heel, true, "");
  }

  /** To what an act cuts: the step from standard; by the shop, and 0.020, as a diameter. */
  static String size(Act act) {
    boolean diameter = act.verb() == Act.Verb.WORK || act.slot() == 20;
    return act.slot() < 0
        ? ""
        : diameter ? diameter(act.what(), act.slot()) : "0.0" + act.slot() + " in";
  }

  /** {@code 2.0900 in} */
  private static String diameter(String cut, int thousandths) {
    List<Integer> size = SIZES.get(cut);
    int parts = size.get(0) + size.get(1) * thousandths;
    return parts / 10_000 + "." + String.valueOf(10_000 + parts % 10_000).substring(1) + " in";
  }
}
