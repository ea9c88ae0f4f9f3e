package wherefrom.job;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import wherefrom.inspection.Decision;
import wherefrom.job.entry.CostState;
import wherefrom.rules.consequence.ChangeKind;

/**
 * The money of an inline four, kept apart from the program: amounts in whole units of the currency
 * as decimals, and what each piece of work wants written down by hand from the rules' own
 * sentences.
 */
final class Till {

  /** A line of the book. */
  record Row(String what, String about, CostState state, BigDecimal amount, int plan, String note) {
    Row in(CostState other) {
      return new Row(what, about, other, amount, plan, note);
    }

    boolean speaksOf(String thing) {
      return plural(what).equals(thing)
          || plural(about).equals(thing)
          || (thing.equals(ROLLERS) && speaksOf("lifters"));
    }
  }

  /** Work, the places whose parts it bans, and what it wants besides. */
  record Job(ChangeKind kind, String where, List<String> bans, Map<String, Integer> buys) {}

  private static final List<String> VALVES =
      List.of("1IN", "1EX", "2IN", "2EX", "3IN", "3EX", "4IN", "4EX");

  private static List<String> each(String kind, List<String> spots) {
    return spots.stream().map(spot -> kind + "@" + spot).toList();
  }

  private static List<String> halves(String kind, String letter, int most) {
    return IntStream.rangeClosed(1, most)
        .boxed()
        .flatMap(at -> List.of(letter + at + "U", letter + at + "L").stream())
        .map(spot -> kind + "@" + spot)
        .toList();
  }

  /** Another sort, with a price of its own. */
  private static final String ROLLERS = "roller lifters";

  private static final List<String> LIFTERS = each("lifter", VALVES);
  private static final List<String> ROD_SHELLS = halves("rod-shell", "R", 4);
  private static final List<String> MAIN_SHELLS = halves("main-shell", "M", 5);
  private static final List<String> PISTONS = each("piston", List.of("B1", "B2", "B3", "B4"));

  private static List<String> both(List<String> one, List<String> other) {
    List<String> all = new ArrayList<>(one);
    all.addAll(other);
    return all;
  }

  static final List<Job> JOBS =
      List.of(
          new Job(ChangeKind.NEW_FLAT_CAM, "", LIFTERS, Map.of()),
          new Job(
              ChangeKind.FLAT_TO_ROLLER,
              "",
              both(LIFTERS, each("pushrod", VALVES)),
              Map.of("roller cam", 1, ROLLERS, 8)),
          new Job(ChangeKind.ROD_JOURNALS_GROUND, "", ROD_SHELLS, Map.of()),
          new Job(ChangeKind.MAIN_JOURNALS_GROUND, "", MAIN_SHELLS, Map.of()),
          new Job(ChangeKind.LINE_HONED, "", MAIN_SHELLS, Map.of()),
          new Job(
              ChangeKind.ROD_RESIZED, "B2", halves("rod-shell", "R", 4).subList(2, 4), Map.of()),
          new Job(ChangeKind.BORED, "B3", PISTONS, Map.of("piston ring sets, oversize", 4)),
          new Job(ChangeKind.HEAD_MILLED, "single", List.of(), Map.of("head gaskets", 1)),
          new Job(ChangeKind.VALVE_JOB, "single", List.of(), Map.of("valve stem seals", 8)),
          new Job(ChangeKind.LIFT_INCREASED, "", List.of(), Map.of()));

  static final List<String> PLACES =
      List.of(
          "lifter@1IN",
          "lifter@2EX",
          "pushrod@3IN",
          "rod-shell@R2U",
          "main-shell@M3L",
          "piston@B1",
          "piston@B4",
          "cam-bearing@C1");

  /** Wanted by every engine that was taken apart. */
  private static final List<String> ALWAYS = List.of("gasket set", "seals");

  final Map<Integer, Row> rows = new TreeMap<>();
  final Map<String, BigDecimal> prices = new TreeMap<>();
  final Map<Integer, Job> open = new TreeMap<>();
  final List<Job> made = new ArrayList<>();
  final Map<String, Decision> decided = new TreeMap<>();

  Till copy() {
    Till copy = new Till();
    copy.rows.putAll(rows);
    copy.prices.putAll(prices);
    copy.open.putAll(open);
    copy.made.addAll(made);
    copy.decided.putAll(decided);
    return copy;
  }

  @Override
  public String toString() {
    return rows.values() + "; prices " + prices + "; open " + open.keySet() + "; " + decided;
  }

  List<Integer> openPlans() {
    return List.copyOf(open.keySet());
  }

  private static String plural(String text) {
    String small = text.toLowerCase(Locale.ROOT).replace('-', ' ');
    boolean one = Set.of("lifter", "rod shell", "cam bearing").contains(small);
    return one ? small + "s" : small;
  }

  private static String kindOf(String place) {
    return place.substring(0, place.indexOf('@')).replace('-', ' ') + "s";
  }

  private BigDecimal sum(Predicate<Row> which) {
    return rows.values().stream()
        .filter(which)
        .map(Row::amount)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  BigDecimal written(CostState state) {
    return sum(row -> row.state() == state);
  }

  BigDecimal settled(CostState state) {
    return sum(row -> row.state() == state && !open.containsKey(row.plan()));
  }

  BigDecimal planned() {
    return sum(row -> row.state() != CostState.AVOIDED && open.containsKey(row.plan()));
  }

  /** The places whose parts cannot stay: banned by work that was done, or so decided. */
  private Set<String> gone() {
    Set<String> gone = new HashSet<>();
    made.forEach(work -> gone.addAll(work.bans()));
    decided.forEach(
        (place, decision) -> {
          if (decision == Decision.REPLACE) {
            gone.add(place);
          }
        });
    return gone;
  }

  private static Map<String, Integer> count(Iterable<String> places) {
    Map<String, Integer> count = new TreeMap<>();
    places.forEach(place -> count.merge(kindOf(place), 1, Integer::sum));
    return count;
  }

  private static Map<String, Integer> wants(Job work) {
    Map<String, Integer> wants = count(work.bans());
    wants.putAll(work.buys());
    return noFlatBesideRoller(wants);
  }

  private static Map<String, Integer> noFlatBesideRoller(Map<String, Integer> pieces) {
    if (pieces.containsKey(ROLLERS)) {
      pieces.remove("lifters");
    }
    return pieces;
  }

  BigDecimal cost(Job work) {
    return price(wants(work));
  }

  private BigDecimal price(Map<String, Integer> pieces) {
    BigDecimal sum = BigDecimal.ZERO;
    for (Map.Entry<String, Integer> one : pieces.entrySet()) {
      BigDecimal price = prices.getOrDefault(one.getKey(), BigDecimal.ZERO);
      sum = sum.add(price.multiply(BigDecimal.valueOf(one.getValue())));
    }
    return sum;
  }

  /** What is wanted twice is bought once, and what a line speaks of is left to the line. */
  BigDecimal toBuy(List<Job> more) {
    Map<String, Integer> pieces = count(gone());
    ALWAYS.forEach(what -> pieces.put(what, 1));
    List<Job> all = new ArrayList<>(open.values());
    all.addAll(more);
    all.forEach(work -> wants(work).forEach((what, n) -> pieces.merge(what, n, Math::max)));
    made.forEach(work -> work.buys().forEach((what, n) -> pieces.merge(what, n, Math::max)));
    noFlatBesideRoller(pieces);
    rows.values().stream()
        .filter(row -> row.state() != CostState.AVOIDED)
        .forEach(row -> pieces.keySet().removeIf(row::speaksOf));
    return price(pieces);
  }

  /** Nothing is saved by a part that must be new. */
  BigDecimal avoided() {
    Set<String> reused = new HashSet<>();
    decided.forEach(
        (place, decision) -> {
          if (decision == Decision.REUSE && !gone().contains(place)) {
            reused.add(place);
          }
        });
    Map<String, Integer> pieces = count(reused);
    rows.values().stream()
        .filter(row -> row.state() == CostState.AVOIDED)
        .forEach(row -> pieces.keySet().removeIf(row::speaksOf));
    return settledAvoided().add(price(pieces));
  }

  private BigDecimal settledAvoided() {
    return written(CostState.AVOIDED);
  }
}
