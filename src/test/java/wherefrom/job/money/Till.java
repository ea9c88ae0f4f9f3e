package wherefrom.job.money;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wherefrom.inspection.Decision;
import wherefrom.job.entry.CostState;
import wherefrom.rules.consequence.ChangeKind;

/**
 * The money of an inline four, kept apart from the program: amounts in whole units of the currency
 * as decimals, and what each piece of work wants written down by hand from the rules' own
 * sentences: what, of which sort, at which place.
 */
final class Till {

  /** A line of the book. */
  record Row(String what, String about, CostState state, BigDecimal amount, int plan, String note) {
    Row in(CostState other) {
      return new Row(what, about, other, amount, plan, note);
    }

    boolean speaksOf(String thing, String sort) {
      List<String> said = List.of(plural(what), plural(about));
      boolean bill =
          said.contains("bored and honed") && Set.of("bored", "honed only").contains(sort);
      return bill || said.contains(sort) || (PARTS.contains(thing) && said.contains(thing));
    }
  }

  /** Work that is done somewhere. */
  record Job(ChangeKind kind, String where) {}

  /** One piece: {@code lifters}, of the sort {@code roller lifters}, at {@code 1IN}. */
  record Piece(String thing, String sort, String at) {}

  /** What some work asks for at once: parts that cannot stay, and what comes besides. */
  record Asked(List<Piece> gone, List<Piece> besides) {
    List<Piece> all() {
      return Stream.concat(gone.stream(), besides.stream()).toList();
    }
  }

  private static final Set<String> PARTS =
      Set.of(
          "lifters",
          "pushrods",
          "rod shells",
          "main shells",
          "pistons",
          "cam bearings",
          "valves",
          "valve springs",
          "rockers",
          "pivots");

  private static final List<String> VALVES =
      List.of("1IN", "1EX", "2IN", "2EX", "3IN", "3EX", "4IN", "4EX");
  private static final List<String> CYLINDERS = List.of("B1", "B2", "B3", "B4");
  private static final List<String> ENGINE = List.of("");
  private static final List<String> HEAD = List.of("single");

  private static List<String> halves(String letter, int first, int last) {
    return IntStream.rangeClosed(first, last)
        .boxed()
        .flatMap(at -> Stream.of(letter + at + "U", letter + at + "L"))
        .toList();
  }

  private static final List<String> RODS = halves("R", 1, 4);
  private static final List<String> MAINS = halves("M", 1, 5);

  private static List<Piece> each(String thing, List<String> spots) {
    return each(thing, thing, spots);
  }

  private static List<Piece> each(String thing, String sort, List<String> spots) {
    return spots.stream().map(spot -> new Piece(thing, sort, spot)).toList();
  }

  @SafeVarargs
  private static List<Piece> all(List<Piece>... lists) {
    return Stream.of(lists).flatMap(List::stream).toList();
  }

  static final List<Job> JOBS =
      List.of(
          new Job(ChangeKind.NEW_FLAT_CAM, ""),
          new Job(ChangeKind.CAM_REGROUND, ""),
          new Job(ChangeKind.FLAT_TO_ROLLER, ""),
          new Job(ChangeKind.NEW_ROLLER_CAM, ""),
          new Job(ChangeKind.ROD_JOURNALS_GROUND, ""),
          new Job(ChangeKind.MAIN_JOURNALS_GROUND, ""),
          new Job(ChangeKind.LINE_HONED, ""),
          new Job(ChangeKind.ROD_RESIZED, "B2"),
          new Job(ChangeKind.BORED, "B3"),
          new Job(ChangeKind.HONED, "B3"),
          new Job(ChangeKind.HONED, "B4"),
          new Job(ChangeKind.HEAD_MILLED, "single"),
          new Job(ChangeKind.DECK_MILLED, "single"),
          new Job(ChangeKind.GASKET_THICKNESS, ""),
          new Job(ChangeKind.VALVE_JOB, "single"),
          new Job(ChangeKind.LARGER_INTAKE_VALVES, "single"),
          new Job(ChangeKind.STUDS_SCREW_IN, "single"),
          new Job(ChangeKind.ROCKER_RATIO, ""),
          new Job(ChangeKind.HOT_TANKED, ""),
          new Job(ChangeKind.SPRINGS_CHANGED, ""),
          new Job(ChangeKind.PISTONS_CHANGED, ""),
          new Job(ChangeKind.LIFT_INCREASED, ""));

  /** What it asks for on an engine whose lifters are flat, or rollers, by now. */
  private static Asked asks(Job work, boolean rollers) {
    List<String> intakes = List.of("1IN", "2IN", "3IN", "4IN");
    return switch (work.kind()) {
      case NEW_FLAT_CAM ->
          rollers
              ? new Asked(
                  all(each("lifters", "flat lifters", VALVES), each("pushrods", VALVES)),
                  each("cam", ENGINE))
              : new Asked(each("lifters", VALVES), each("cam", ENGINE));
      case CAM_REGROUND ->
          new Asked(
              rollers ? List.of() : each("lifters", VALVES), each("cam", "cam reground", ENGINE));
      case FLAT_TO_ROLLER, NEW_ROLLER_CAM ->
          new Asked(
              rollers
                  ? List.of()
                  : all(each("lifters", "roller lifters", VALVES), each("pushrods", VALVES)),
              each("cam", "roller cam", ENGINE));
      case ROD_JOURNALS_GROUND ->
          new Asked(each("rod shells", RODS), each("rod journals ground", ENGINE));
      case MAIN_JOURNALS_GROUND ->
          new Asked(each("main shells", MAINS), each("main journals ground", ENGINE));
      case LINE_HONED -> new Asked(each("main shells", MAINS), each("mains line-honed", ENGINE));
      case ROD_RESIZED ->
          new Asked(
              each("rod shells", halves("R", 2, 2)),
              each("rod resized, or its bolts replaced", List.of("B2")));
      case BORED ->
          new Asked(
              each("pistons", CYLINDERS),
              all(
                  each("bored", CYLINDERS),
                  each("piston ring sets", "piston ring sets, oversize", CYLINDERS)));
      case HONED ->
          new Asked(
              List.of(),
              all(
                  each("honed only", List.of(work.where())),
                  each("piston ring sets", List.of(work.where()))));
      case HEAD_MILLED ->
          new Asked(List.of(), all(each("head milled", HEAD), each("head gaskets", HEAD)));
      case DECK_MILLED ->
          new Asked(List.of(), all(each("deck milled", HEAD), each("head gaskets", HEAD)));
      case GASKET_THICKNESS -> new Asked(List.of(), each("head gaskets", HEAD));
      case VALVE_JOB ->
          new Asked(
              List.of(),
              all(
                  each("valve job: seats or faces ground", HEAD),
                  each("valve stem seals", VALVES)));
      case LARGER_INTAKE_VALVES ->
          new Asked(
              each("valves", intakes),
              all(
                  each("seats and throats cut for larger valves", intakes),
                  each("valve stem seals", intakes)));
      case STUDS_SCREW_IN ->
          new Asked(
              List.of(),
              all(
                  each("head machined for screw-in studs", HEAD),
                  each("screw-in rocker studs", VALVES)));
      case ROCKER_RATIO ->
          new Asked(all(each("rockers", VALVES), each("pivots", VALVES)), List.of());
      case HOT_TANKED ->
          new Asked(
              each("cam bearings", List.of("C1", "C2", "C3")),
              all(each("block hot-tanked", ENGINE), each("core plugs and gallery plugs", ENGINE)));
      case SPRINGS_CHANGED -> new Asked(each("valve springs", VALVES), List.of());
      case PISTONS_CHANGED ->
          new Asked(each("pistons", CYLINDERS), each("piston ring sets", CYLINDERS));
      default -> new Asked(List.of(), List.of());
    };
  }

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

  /** New parts that no later work here finds of the wrong size or sort. */
  static final List<String> REPLACED = List.of("cam-bearing@C1", "cam-bearing@C2", "valve@1EX");

  final Map<Integer, Row> rows = new TreeMap<>();
  final Map<String, BigDecimal> prices = new TreeMap<>();
  final Map<Integer, Job> open = new TreeMap<>();
  final List<Job> made = new ArrayList<>();
  final Map<String, Decision> decided = new TreeMap<>();
  final Map<String, Integer> bought = new TreeMap<>();

  Till copy() {
    Till copy = new Till();
    copy.rows.putAll(rows);
    copy.prices.putAll(prices);
    copy.open.putAll(open);
    copy.made.addAll(made);
    copy.decided.putAll(decided);
    copy.bought.putAll(bought);
    return copy;
  }

  @Override
  public String toString() {
    return rows.values()
        + "; prices "
        + prices
        + "; made "
        + made
        + "; open "
        + open
        + "; "
        + decided
        + "; bought "
        + bought;
  }

  List<Integer> openPlans() {
    return List.copyOf(open.keySet());
  }

  private static String plural(String text) {
    String small = text.toLowerCase(Locale.ROOT).replace('-', ' ');
    boolean one = Set.of("lifter", "rod shell", "cam bearing").contains(small);
    return one ? small + "s" : small;
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

  /** Whether the lifters are rollers by now. */
  boolean rollers() {
    boolean rollers = false;
    for (Job work : made) {
      rollers = after(work, rollers);
    }
    return rollers;
  }

  private static boolean after(Job work, boolean rollers) {
    return switch (work.kind()) {
      case FLAT_TO_ROLLER, NEW_ROLLER_CAM -> true;
      case NEW_FLAT_CAM -> false;
      default -> rollers;
    };
  }

  /** Whether it can be planned at all. */
  boolean offers(Job work) {
    return work.kind() != ChangeKind.FLAT_TO_ROLLER || !rollers();
  }

  /** The kind of cam that some work ends in; empty where it leaves the cam. */
  private static String cam(Job work) {
    return switch (work.kind()) {
      case NEW_FLAT_CAM -> "flat";
      case CAM_REGROUND -> "reground";
      case FLAT_TO_ROLLER, NEW_ROLLER_CAM -> "roller";
      default -> "";
    };
  }

  private static String place(Piece piece) {
    String kind = piece.thing().equals("valve springs") ? "springs" : piece.thing();
    return kind.substring(0, kind.length() - 1).replace(' ', '-') + "@" + piece.at();
  }

  private static Piece usual(String place) {
    String kind = place.substring(0, place.indexOf('@')).replace('-', ' ') + "s";
    return new Piece(kind, kind, place.substring(place.indexOf('@') + 1));
  }

  /**
   * A slip of paper for each piece, the sort written on it; a second slip for it is thrown away.
   */
  private final class Slips {
    private final Map<String, Piece> slips = new LinkedHashMap<>();

    void put(Piece piece, int nth) {
      String name = piece.thing() + " at " + piece.at() + ", no. " + nth;
      Piece before = slips.get(name);
      boolean says = before == null || !piece.sort().equals(piece.thing());
      slips.put(name, says ? piece : before);
    }

    void take(Asked asked, int cam) {
      for (Piece piece : asked.all()) {
        put(piece, piece.thing().equals("cam") ? cam : Math.max(1, had(piece)));
      }
    }

    private int had(Piece piece) {
      return PARTS.contains(piece.thing()) ? bought.getOrDefault(place(piece), 0) : 0;
    }

    BigDecimal price() {
      BigDecimal sum = BigDecimal.ZERO;
      for (Piece piece : slips.values()) {
        sum = sum.add(prices.getOrDefault(piece.sort(), BigDecimal.ZERO));
      }
      return sum;
    }

    void leaveToTheBook() {
      rows.values().stream()
          .filter(row -> row.state() != CostState.AVOIDED)
          .forEach(row -> slips.values().removeIf(slip -> row.speaksOf(slip.thing(), slip.sort())));
    }
  }

  BigDecimal cost(Job work) {
    Slips slips = new Slips();
    slips.take(asks(work, rollers()), 1);
    return slips.price();
  }

  /** What is wanted twice is bought once, and what a line speaks of is left to the line. */
  BigDecimal toBuy(List<Job> more) {
    Slips slips = new Slips();
    List.of("gasket set", "seals").forEach(what -> slips.put(new Piece(what, what, ""), 1));
    bought.forEach(
        (place, count) -> IntStream.rangeClosed(1, count).forEach(n -> slips.put(usual(place), n)));
    bought.keySet().stream()
        .filter(place -> place.startsWith("valve@"))
        .forEach(
            place -> slips.put(new Piece("valve stem seals", "valve stem seals", at(place)), 1));
    Stream.concat(
            bought.keySet().stream(),
            decided.keySet().stream().filter(place -> decided.get(place) == Decision.REPLACE))
        .filter(place -> place.startsWith("piston@"))
        .forEach(
            place -> slips.put(new Piece("piston ring sets", "piston ring sets", at(place)), 1));
    decided.forEach(
        (place, decision) -> {
          if (decision == Decision.REPLACE) {
            slips.put(usual(place), bought.getOrDefault(place, 0) + 1);
          }
        });
    String cam = "";
    int cams = 0;
    boolean rollers = false;
    for (Job work : made) {
      cams += cam(work).isEmpty() || cam(work).equals(cam) ? 0 : 1;
      cam = cam(work).isEmpty() ? cam : cam(work);
      slips.take(asks(work, rollers), cams);
      rollers = after(work, rollers);
    }
    for (Job work : Stream.concat(open.values().stream(), more.stream()).toList()) {
      slips.take(asks(work, rollers), cams + (cam(work).equals(cam) ? 0 : 1));
    }
    slips.leaveToTheBook();
    return slips.price();
  }

  private static String at(String place) {
    return place.substring(place.indexOf('@') + 1);
  }

  /** Nothing is saved by a part that must be new, or is. */
  BigDecimal avoided() {
    Set<String> gone = new HashSet<>();
    boolean rollers = false;
    for (Job work : made) {
      asks(work, rollers).gone().forEach(piece -> gone.add(place(piece)));
      rollers = after(work, rollers);
    }
    Slips slips = new Slips();
    decided.forEach(
        (place, decision) -> {
          if (decision == Decision.REUSE && !gone.contains(place) && !bought.containsKey(place)) {
            slips.put(usual(place), 1);
          }
        });
    rows.values().stream()
        .filter(row -> row.state() == CostState.AVOIDED)
        .forEach(row -> slips.slips.values().removeIf(p -> row.speaksOf(p.thing(), p.sort())));
    return written(CostState.AVOIDED).add(slips.price());
  }
}
