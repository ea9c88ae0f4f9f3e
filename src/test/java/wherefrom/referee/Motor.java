package wherefrom.referee;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** An engine, as far as the referee must know it: its slots, and which goes with which. */
final class Motor {
  final boolean roller;
  final String thrust;
  final List<Slot> slots = new ArrayList<>();
  final Set<String> sections = new LinkedHashSet<>();

  /** The journals of valves, bores, rods, mains and the cam, each sort for itself. */
  private final Map<String, List<String>> journals = new LinkedHashMap<>();

  /** For each slot the one that it moves with; -1 where it goes by its place alone. */
  final int[] leader;

  /**
   * @param banks the cylinders of each bank
   * @param caps how many mains have caps: all or none
   */
  Motor(
      Map<String, List<Integer>> banks,
      int mains,
      int thrustMain,
      boolean caps,
      int cams,
      boolean roller) {
    this.roller = roller;
    this.thrust = "M" + thrustMain;
    banks.forEach(
        (bank, cylinders) ->
            cylinders.forEach(at -> cylinder(at, bank, banks.size() == 1 ? "" : "-" + bank)));
    for (int main = 1; main <= mains; main++) {
      String journal = "M" + main;
      add(Kind.MAIN_SHELL, journal + "U", journal, 0, "", "mains");
      add(Kind.MAIN_SHELL, journal + "L", journal, 0, "", "mains");
      if (caps) {
        add(Kind.MAIN_CAP, journal + "L", journal, 0, "", "mains");
      }
    }
    for (int cam = 1; cam <= cams; cam++) {
      add(Kind.CAM_BEARING, "C" + cam, "C" + cam, 0, "", "cam");
    }
    leader = slots.stream().mapToInt(this::findLeader).toArray();
  }

  private void cylinder(int at, String bank, String suffix) {
    for (Kind kind : Kind.values()) {
      if (kind.home.equals("valve")) {
        add(kind, at + "IN", at + "IN", at, bank, "valvetrain" + suffix);
        add(kind, at + "EX", at + "EX", at, bank, "valvetrain" + suffix);
      }
    }
    String journal = "R" + at;
    add(Kind.PISTON, "B" + at, "B" + at, at, bank, "rods");
    add(Kind.ROD, journal + "U", journal, at, bank, "rods");
    add(Kind.ROD_CAP, journal + "L", journal, at, bank, "rods");
    add(Kind.ROD_SHELL, journal + "U", journal, at, bank, "rods");
    add(Kind.ROD_SHELL, journal + "L", journal, at, bank, "rods");
  }

  private void add(
      Kind kind, String spot, String journal, int cylinder, String bank, String section) {
    slots.add(new Slot(slots.size(), kind, spot, journal, cylinder, bank, section));
    List<String> alike = journals.computeIfAbsent(sort(journal), sort -> new ArrayList<>());
    if (!alike.contains(journal)) {
      alike.add(journal);
    }
    sections.add(section);
  }

  /** {@code R} of {@code R1}; empty of a valve's, which begins with its cylinder. */
  private static String sort(String journal) {
    return Character.isLetter(journal.charAt(0)) ? journal.substring(0, 1) : "";
  }

  /** Every journal of the same sort, in order. */
  List<String> journalsLike(String journal) {
    return journals.get(sort(journal));
  }

  /** The valves, the bores, the rods, the mains and the cam bearings. */
  List<List<String>> sortsOfJournals() {
    return List.copyOf(journals.values());
  }

  /** Of the main shells, only those on the cap's side move with the cap. */
  private int findLeader(Slot slot) {
    if (slot.kind() == Kind.MAIN_SHELL && slot.isUpper()) {
      return -1;
    }
    return slots.stream()
        .filter(it -> it.kind().key.equals(slot.kind().movesWith))
        .filter(it -> it.journal().equals(slot.journal()))
        .mapToInt(Slot::at)
        .findFirst()
        .orElse(-1);
  }

  /** The slot like this one that moves with another leader. */
  int follower(Slot like, int leaderSlot) {
    return slots.stream()
        .filter(it -> it.kind() == like.kind() && leader[it.at()] == leaderSlot)
        .filter(it -> !it.kind().isShell() || it.isUpper() == like.isUpper())
        .mapToInt(Slot::at)
        .findFirst()
        .orElseThrow();
  }

  Slot slot(int at) {
    return slots.get(at);
  }

  int at(String key) {
    return slots.stream()
        .filter(it -> it.key().equals(key))
        .mapToInt(Slot::at)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(key));
  }

  /** Whether a part of this kind lives at a slot's spot at all. */
  boolean canLive(Kind kind, Slot slot) {
    return slot.kind() == kind
        || slots.stream().anyMatch(it -> it.kind() == kind && it.spot().equals(slot.spot()));
  }
}
