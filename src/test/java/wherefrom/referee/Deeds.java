package wherefrom.referee;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import wherefrom.referee.Act.Verb;
import wherefrom.referee.Piece.State;

/**
 * What can be done next in a small part of the engine: to the pieces that live at some slots, and
 * the changes that concern them.
 *
 * @param slots where pieces are fitted and judged
 * @param main those of them whose pieces also go away, get lost and are looked at
 * @param changes {@code ROD_RESIZED B1}
 * @param looks the quick test that is failed and passed, by kind
 */
record Deeds(
    Motor motor,
    Set<Integer> slots,
    Set<Integer> main,
    List<String> changes,
    Map<Kind, String> looks) {

  /** Plans of readings that have a limit. */
  private static final Map<Kind, List<String>> READINGS =
      Map.of(
          Kind.PUSHROD, List.of("pushrod-runout"),
          Kind.LIFTER, List.of("lifter-crown"),
          Kind.SPRING, List.of("spring-free"),
          Kind.PISTON, List.of("piston-diameter"));

  private static Act read(int piece, String plan) {
    return Act.read(piece, plan, "FAIL");
  }

  List<Act> next(Story story) {
    List<Act> acts = new ArrayList<>();
    for (Piece piece : story.scene().pieces.values()) {
      if (slots.contains(piece.home) && piece.state == State.RETIRED) {
        fits(story, piece, piece.home, acts);
      } else if (slots.contains(piece.home)) {
        moves(story, piece, acts);
        if (main.contains(piece.home)) {
          says(story, piece, acts);
        }
      }
    }
    for (String change : changes) {
      String[] words = change.split(" ");
      acts.add(Act.change(words[0], words.length > 1 ? words[1] : ""));
    }
    story.referee().checks().forEach((key, open) -> checks(key, open, acts));
    for (int slot : main) {
      if (story.referee().isFilledBut(slot) || story.referee().isMissing(slot)) {
        acts.add(Act.excuse(slot));
      }
    }
    slots.stream()
        .map(slot -> motor.slot(slot).section())
        .distinct()
        .filter(section -> !story.scene().closed.contains(section))
        .forEach(section -> acts.add(Act.close(section)));
    if (story.hasFacts() && story.scene().canReopen()) {
      acts.add(Act.reopen());
    }
    if (story.hasFacts()) {
      acts.add(Act.takeBack());
    }
    return acts;
  }

  private static void checks(String key, boolean open, List<Act> acts) {
    if (open) {
      acts.add(Act.check(key, "PASS"));
    }
  }

  private void moves(Story story, Piece piece, List<Act> acts) {
    int it = piece.number;
    switch (piece.state) {
      case IN -> acts.add(Act.of(Verb.OUT, it));
      case FITTED -> acts.add(Act.of(Verb.TAKE_OUT, it));
      case LOST -> acts.add(Act.of(Verb.FIND, it));
      case AWAY -> acts.add(Act.of(piece.atShop ? Verb.BACK : Verb.WASHED, it));
      default -> {}
    }
    if (!piece.replaced) {
      acts.add(Act.at(Verb.REPLACE, it, story.nextPiece()));
    }
    for (int slot : slots) {
      boolean half = motor.slot(slot).isUpper() == motor.slot(piece.home).isUpper();
      if (motor.slot(slot).kind() == piece.kind && (half || !piece.kind.isShell())) {
        fits(story, piece, slot, acts);
      }
    }
  }

  private static void fits(Story story, Piece piece, int slot, List<Act> acts) {
    Referee.Word word = story.referee().judge(piece.number, slot, false);
    if (word == Referee.Word.RIGHT) {
      acts.add(Act.at(Verb.FIT, piece.number, slot));
    } else if (word.stops()) {
      acts.add(Act.at(Verb.ON_PURPOSE, piece.number, slot));
    }
  }

  private void says(Story story, Piece piece, List<Act> acts) {
    int it = piece.number;
    if (piece.state == State.OUT) {
      acts.add(Act.of(Verb.LOSE, it));
      acts.add(Act.of(Verb.SEND, it));
    }
    boolean hasFoot = piece.kind == Kind.LIFTER && !piece.isNew && !story.scene().roller;
    String usual = looks.get(piece.kind);
    String check = piece.kind == Kind.LIFTER && !hasFoot ? "lifter-sink" : usual;
    if (check != null) {
      acts.add(Act.look(it, check, "FAIL"));
      READINGS.getOrDefault(piece.kind, List.of()).forEach(plan -> acts.add(read(it, plan)));
      if (piece.looks.containsKey(check)) {
        acts.add(Act.look(it, check, "PASS"));
        acts.add(Act.decide(it, "REUSE"));
        acts.add(Act.decide(it, "REPLACE"));
      }
    }
  }

  /** The journals or valve spots that an act touches; all, where it may concern anything. */
  Set<String> touches(Story story, Act act) {
    boolean moves =
        switch (act.verb()) {
          case OUT, FIT, ON_PURPOSE, TAKE_OUT, REPLACE, LOSE, FIND, SEND, BACK -> true;
          default -> false;
        };
    if (!moves) {
      return Set.of("all");
    }
    Piece piece = story.scene().piece(act.piece());
    Set<String> touched = new java.util.HashSet<>();
    touched.add(motor.slot(piece.home).journal());
    if (piece.sits >= 0) {
      touched.add(motor.slot(piece.sits).journal());
    }
    if (act.verb() != Verb.REPLACE && act.slot() >= 0) {
      touched.add(motor.slot(act.slot()).journal());
      int there = story.scene().sitting(act.slot());
      if (there >= 0) {
        touched.add(motor.slot(story.scene().piece(there).home).journal());
      }
    }
    return touched;
  }
}
