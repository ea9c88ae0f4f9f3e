package wherefrom.referee;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

  private static final Set<String> FLAT_ONLY =
      Set.of("NEW_FLAT_CAM", "CAM_REGROUND", "FLAT_TO_ROLLER");

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

  private final Motor motor;
  private final Random random;
  private final Deeds deeds;

  Chance(Motor motor, long seed) {
    this.motor = motor;
    this.random = new Random(seed);
    Set<Integer> slots = places();
    List<String> changes = new ArrayList<>();
    for (int at = 0; at < 3; at++) {
      change().ifPresent(changes::add);
    }
    Map<Kind, String> looks = new EnumMap<>(Kind.class);
    LOOKS.forEach((kind, all) -> looks.put(kind, any(all)));
    this.deeds = new Deeds(motor, slots, slots, changes, looks);
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
    String like = any(motor.slots).journal();
    List<String> alike = motor.journalsLike(like);
    for (int at = 0; at < 3; at++) {
      journals.add(any(alike));
    }
    Set<Integer> slots = new TreeSet<>();
    motor.slots.stream()
        .filter(slot -> journals.contains(slot.journal()))
        .filter(slot -> slot.kind().home.equals("valve") ? random.nextInt(2) == 0 : true)
        .forEach(slot -> slots.add(slot.at()));
    return slots;
  }

  private Optional<String> change() {
    String[] words = any(CHANGES).split(" ");
    if (motor.roller && FLAT_ONLY.contains(words[0])) {
      return Optional.empty();
    }
    List<Slot> cylinders = motor.slots.stream().filter(slot -> slot.cylinder() > 0).toList();
    if (words.length == 1) {
      return Optional.of(words[0]);
    }
    boolean bore = words[1].equals("bore");
    Slot slot = any(cylinders);
    return Optional.of(words[0] + " " + (bore ? "B" + slot.cylinder() : slot.bank()));
  }

  /** What is done next, as things stand: each verb is as likely as every other. */
  Act next(Story story) {
    int way = random.nextInt(20);
    if (way < 3) {
      return oddFit(story);
    }
    return way == 3 ? oddWord(story) : vary(story, usual(story));
  }

  private Act usual(Story story) {
    Map<Verb, List<Act>> byVerb = new EnumMap<>(Verb.class);
    deeds
        .next(story)
        .forEach(act -> byVerb.computeIfAbsent(act.verb(), verb -> new ArrayList<>()).add(act));
    if (byVerb.containsKey(Verb.FIT) && random.nextInt(3) == 0) {
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
      return act.cutTo(cut && !byShop ? any(List.of(-1, 10, 20)) : -1, byShop);
    }
    Kind kind = story.scene().piece(act.piece()).kind;
    if (kind.isShell() || kind == Kind.PISTON) {
      return act.of(any(List.of("", "", "0", "10", "20")), "");
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
              ? Act.lobe(piece, any(List.of("FAIL", "PASS", "SUSPECT")))
              : Act.ask("every");
      default -> decidable ? Act.decide(piece, "REUSE") : Act.ask("every");
    };
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
    return new Act(Verb.FIT, piece, slot, "", odd == 7 ? "turned" : "");
  }
}
