package wherefrom.ui.controls;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import wherefrom.engine.Spot;
import wherefrom.parts.PartKind;
import wherefrom.rules.Cue;

/**
 * What stands on the screen after a scan, a tap or a card.
 *
 * @param cue how it is shown and sounded; empty when there is nothing to judge
 * @param headline a word or two
 * @param lines at most three, each short enough to be read from the engine
 * @param small what to do now, in working text; may be empty
 * @param kind the kind of part that the drawn engine shows; empty to leave it as it is
 * @param lit the spots to light up
 */
public record ScreenAnswer(
    Optional<Cue> cue,
    String headline,
    List<String> lines,
    String small,
    Optional<PartKind> kind,
    Set<Spot> lit) {
  public ScreenAnswer {
    lines = List.copyOf(lines);
    lit = Set.copyOf(lit);
  }

  /** Nothing is said. */
  public static ScreenAnswer nothing() {
    return said("", "");
  }

  /** Words alone, with nothing to light up. */
  public static ScreenAnswer said(String headline, String small) {
    return new ScreenAnswer(
        Optional.empty(), headline, List.of(), small, Optional.empty(), Set.of());
  }

  /**
   * A tag is in view and not read: what helps is written as large as that.
   *
   * @param small what else to say, in working text; may be empty
   */
  public static ScreenAnswer notRead(String hint, String small) {
    return new ScreenAnswer(
        Optional.of(Cue.ASK), "Not read yet", List.of(hint), small, Optional.empty(), Set.of());
  }

  /** A deed that could not be written down: nothing of it is so. */
  public static ScreenAnswer notKept(String why) {
    return said("Not kept", why).withCue(Cue.ASK);
  }

  /** The same, with other words to say what to do now. */
  public ScreenAnswer saying(String words) {
    return new ScreenAnswer(cue, headline, lines, words, kind, lit);
  }

  public ScreenAnswer withCue(Cue changed) {
    return new ScreenAnswer(Optional.of(changed), headline, lines, small, kind, lit);
  }
}
