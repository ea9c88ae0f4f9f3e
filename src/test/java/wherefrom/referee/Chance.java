package wherefrom.referee;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import wherefrom.referee.Act.Verb;

/**
 * A history drawn from a seed: a few places of an engine, a few changes, and what is done there.
 */
final class Chance {
  private static final List<String> CHANGES =
      List.of(
          "NEW_FLAT_CAM",
          "CAM_REGROUND",
          "FLAT_TO_ROLLER",
          "ROLLER_TO_FLAT",
          "NEW_ROLLER_CAM",
          "LIFT_INCREASED",
          "HEAD_MILLED bank",
          "DECK_MILLED bank",
          "GASKET_THICKNESS",
          "VALVE_JOB bank",
          "ROD_JOURNALS_GROUND",
          "MAIN_JOURNALS_GROUND",
          "CRANK_POLISHED",
          "BORED bore",
          "HONED bore",
          "ROD_RESIZED bore",
          "LINE_HONED",
          "HOT_TANKED",
          "SPRINGS_CHANGED",
          "SPRINGS_SHIMMED",
          "ROCKER_RATIO",
          "LARGER_VALVES bank",
          "LARGER_INTAKE_VALVES bank",
          "LARGER_EXHAUST_VALVES bank",
          "STUDS_SCREW_IN bank",
          "CRANK_CHANGED",
          "PISTONS_CHANGED");

  private static final Set<String> CUTS =
      Set.of("ROD_JOURNALS_GROUND", "MAIN_JOURNALS_GROUND", "BORED");

  /** What the machine shop does, too. */
  private static final Set<String> WORKS =
      Set.of(
          "ROD_JOURNALS_GROUND",
          "MAIN_JOURNALS_GROUND",
          "BORED",
          "HONED",
          "CRANK_POLISHED",
          "ROD_RESIZED",
          "LINE_HONED",
          "HEAD_MILLED",
          "DECK_MILLED",
          "VALVE_JOB");

  /** A quick test of each kind; failing some of them is a finding with rules of its own. */
  private static final Map<Kind, List<String>> LOOKS = new EnumMap<>(Kind.class);

  static {
    LOOKS.put(Kind.ROCKER, List.of("rocker-faces"));
    LOOKS.put(Kind.PIVOT, List.of("pivot-face"));
    LOOKS.put(Kind.PUSHROD, List.of("pushrod-roll", "pushrod-ends"));
    LOOKS.put(Kind.LIFTER, List.of("lifter-foot", "lifter-sink"));
    LOOKS.put(Kind.KEEPERS, List.of("keeper-beads"));
    LOOKS.put(Kind.RETAINER, List.of("retainer-cone"));
    LOOKS.put(Kind.SPRING, List.of("spring-wire"));
    LOOKS.put(Kind.VALVE, List.of("valve-margin"));
    LOOKS.put(Kind.PISTON, List.of("piston-skirt"));
    LOOKS.put(Kind.ROD, List.of("rod-bend"));
    LOOKS.put(Kind.ROD_CAP, List.of("rod-cap-mark"));
    LOOKS.put(Kind.ROD_SHELL, List.of("rod-shell-face", "rod-shell-back"));
    LOOKS.put(Kind.MAIN_CAP, List.of("main-cap-mark"));
    LOOKS.put(Kind.MAIN_SHELL, List.of("main-shell-face", "main-shell-back"));
    LOOKS.put(Kind.CAM_BEARING, List.of("cam-bearing-face"));
  }

  /** The changes that keep a part of a kind out, or let it wait. */
  private static final Map<Kind, List<String>> ABOUT = new EnumMap<>(Kind.class);

  static {
    for (Kind kind : Kind.values()) {
      ABOUT.put(kind, CHANGES.stream().filter(change -> isAbout(kind, change)).toList());
    }
  }

  private final Motor motor;
  private final Random random;
  private final Deeds deeds;

  Chance(Motor motor, long seed) {
    this.motor = motor;
    this.random = new Random(seed);
    Set<Integer> slots = places();
    List<String> changes = new ArrayList<>();
    for (int at = 0; at < 3; at++) {
      changes.add(change(random.nextBoolean() ? CHANGES : about(slots)));
    }
    Map<Kind, String> looks = new EnumMap<>(Kind.class);
    LOOKS.forEach((kind, all) -> looks.put(kind, any(all)));
    this.deeds = new Deeds(motor, slots, slots, changes, looks);
  }

  private static boolean isAbout(Kind kind, String change) {
    return Rulebook.ROWS.stream()
        .anyMatch(row -> row.speaksOf(kind) && row.changes().contains(change.split(" ")[0]));
  }

  /** Every change, at this bank and this bore where it names one. */
  static List<String> everyChange(String bank, String bore) {
    return CHANGES.stream()
        .map(change -> change.replace(" bank", " " + bank).replace(" bore", " " + bore))
        .toList();
  }

  static Map<Kind, String> oneLookEach() {
    Map<Kind, String> looks = new EnumMap<>(Kind.class);
    LOOKS.forEach((kind, all) -> looks.put(kind, all.get(0)));
    return looks;
  }

  private <T> T any(List<T> all) {
    return all.get(random.nextInt(all.size()));
  }

  /** The places where this history happens. */
  Set<Integer> slots() {
    return deeds.slots();
  }

  /** Two or three journals, or valves of one side, with all that lives there. */
  private Set<Integer> places() {
    Set<String> journals = new TreeSet<>();
    List<String> alike =
        random.nextBoolean()
            ? motor.journalsLike(any(motor.slots).journal())
            : any(motor.sortsOfJournals());
    for (int at = 0; at < 3; at++) {
      journals.add(any(alike));
    }
    Set<Integer> all = new TreeSet<>();
    motor.slots.stream()
        .filter(slot -> journals.contains(slot.journal()))
        .forEach(slot -> all.add(slot.at()));
    Set<Integer> some = new TreeSet<>(all);
    some.removeIf(at -> motor.slot(at).kind().home.equals("valve") && random.nextBoolean());
    return some.isEmpty() ? all : some;
  }

  /** The changes that concern a part which lives here. */
  private List<String> about(Set<Integer> slots) {
    List<String> about = ABOUT.get(motor.slot(any(List.copyOf(slots))).kind());
    return about.isEmpty() ? CHANGES : about;
  }

  private String change(List<String> changes) {
    String[] words = any(changes).split(" ");
    List<Slot> cylinders = motor.slots.stream().filter(slot -> slot.cylinder() > 0).toList();
    if (words.length == 1) {
      return words[0];
    }
    boolean bore = words[1].equals("bore");
    Slot slot = any(cylinders);
    return words[0] + " " + (bore ? "B" + slot.cylinder() : slot.bank());
  }

  /** What is done next, as things stand: often a change, else any verb like every other. */
  Act next(Story story) {
    int way = random.nextInt(20);
    if (way < 2) {
      return oddFit(story);
    }
    return way == 2 ? oddWord(story) : vary(story, way < 6 ? change() : usual(story));
  }

  private Act change() {
    String[] words = any(deeds.changes()).split(" ");
    return Act.change(words[0], words.length > 1 ? words[1] : "");
  }

  private Act usual(Story story) {
    Map<Verb, List<Act>> byVerb = new EnumMap<>(Verb.class);
    deeds
        .next(story)
        .forEach(act -> byVerb.computeIfAbsent(act.verb(), verb -> new ArrayList<>()).add(act));
    if (byVerb.containsKey(Verb.FIT) && random.nextInt(4) == 0) {
      return any(byVerb.getOrDefault(Verb.FIT, List.of()));
    }
    return any(any(List.copyOf(byVerb.values())));
  }

  /** The same in another way that the walk through every history leaves out. */
  private Act vary(Story story, Act act) {
    if (act.isChange() || act.verb() == Verb.REPLACE) {
      return sized(story, act);
    }
    boolean other = random.nextInt(3) == 0;
    return !other
        ? act
        : switch (act.verb()) {
          case SEND -> Act.of(Verb.WASH, act.piece());
          case LOOK -> Act.look(act.piece(), act.what(), "SUSPECT");
          case READ -> Act.read(act.piece(), act.what(), any(List.of("SUSPECT", "PASS")));
          case CHECK -> Act.check(act.what(), "FAIL");
          case DECIDE -> Act.decide(act.piece(), any(List.of("MACHINE", "REUSE", "REPLACE")));
          default -> act;
        };
  }

  /** A cut, or a part bought, of a size or a sort; or nobody says. */
  private Act sized(Story story, Act act) {
    if (act.isChange()) {
      boolean cut = CUTS.contains(act.what());
      boolean byShop = WORKS.contains(act.what()) && random.nextInt(2) == 0;
      return act.cutTo(cut ? any(List.of(-1, 10, 10, 20)) : -1, byShop);
    }
    Kind kind = story.scene().piece(act.piece()).kind;
    if (kind.isShell() || kind == Kind.PISTON) {
      return act.of(any(List.of("", "listed", "0", "10", "20")), "");
    }
    return kind == Kind.LIFTER ? act.of("", any(List.of("", "roller"))) : act;
  }

  /** What is said of a part or a lobe, or asked of the whole job. */
  private Act oddWord(Story story) {
    int piece = any(List.copyOf(slots()));
    Slot slot = motor.slot(piece);
    boolean decidable = story.scene().piece(piece).state != Piece.State.RETIRED;
    return switch (random.nextInt(4)) {
      case 0 -> Act.ask(any(List.of("every", "doubtful")));
      case 1 -> new Act(Verb.SLOT_UNKNOWN, piece, -1, "", "");
      case 2 ->
          slot.kind() == Kind.LIFTER
              ? lobe(piece, any(List.of("FAIL", "PASS", "SUSPECT")))
              : Act.ask("every");
      default -> decidable ? Act.decide(piece, "REUSE") : Act.ask("every");
    };
  }

  private Act lobe(int slot, String answer) {
    return random.nextBoolean() ? Act.lobe(slot, answer) : Act.lobeLift(slot, answer);
  }

  /** Any part at any place of its kind, or turned, or where none of its kind lives. */
  private Act oddFit(Story story) {
    List<Integer> pieces =
        story.scene().pieces.values().stream()
            .filter(piece -> slots().contains(piece.home))
            .map(piece -> piece.number)
            .toList();
    int piece = any(pieces);
    Kind kind = story.scene().piece(piece).kind;
    int odd = random.nextInt(8);
    List<Slot> where =
        motor.slots.stream()
            .filter(slot -> odd == 0 ? !motor.canLive(kind, slot) : slot.kind() == kind)
            .toList();
    int slot = odd < 4 ? any(where).at() : story.scene().piece(piece).home;
    Act fit = Act.at(odd == 6 ? Verb.ON_PURPOSE : Verb.FIT, piece, slot);
    return odd < 6 ? fit : fit.turned();
  }
}
