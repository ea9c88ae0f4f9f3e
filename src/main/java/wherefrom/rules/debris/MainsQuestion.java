package wherefrom.rules.debris;

import java.util.ArrayList;
import java.util.List;
import wherefrom.inspection.Look;

/**
 * Did it reach the mains? Every look that harmful debris may be behind opens the question; looks at
 * the bearings alone answer it. The lower main shells tell, one cap at a time with the crank in
 * place (TM 5-3895-346-14): the first and the last of them, and a rod of each pin (common practice,
 * no source). Where debris is past the filter, or a bearing is worn to its copper, all of them are
 * wanted (common practice, no source). A clean filter answers nothing: its bypass may have opened.
 *
 * @param openedBy the finds and findings that ask it
 * @param answeredBy the looks that answer it; empty while it is open
 * @param wanted what must still be looked at; empty once it is answered
 */
public record MainsQuestion(
    ReachedMains answer, List<String> openedBy, List<String> answeredBy, List<String> wanted) {

  public MainsQuestion {
    openedBy = List.copyOf(openedBy);
    answeredBy = List.copyOf(answeredBy);
    wanted = List.copyOf(wanted);
  }

  /**
   * Asks and, where the looks suffice, answers it.
   *
   * @param implied findings elsewhere that set debris loose, such as a failed lobe
   */
  public static MainsQuestion of(
      List<DebrisFind> finds, List<String> implied, BearingLooks bearings) {
    List<DebrisFind> harmful = finds.stream().filter(find -> find.look().isHarmful()).toList();
    List<String> openedBy = new ArrayList<>(harmful.stream().map(DebrisFind::words).toList());
    openedBy.addAll(implied);
    List<String> bad = new ArrayList<>();
    harmful.stream()
        .filter(find -> find.place() == DebrisPlace.MAINS)
        .forEach(find -> bad.add(find.words()));
    bearings.that(Look.FAIL).forEach(look -> bad.add(look.answer()));
    if (!bad.isEmpty()) {
      return new MainsQuestion(ReachedMains.YES, openedBy, bad, List.of());
    }
    if (openedBy.isEmpty()) {
      return new MainsQuestion(ReachedMains.NOTHING_FOUND, List.of(), List.of(), List.of());
    }
    List<String> wanted = new ArrayList<>();
    bearings
        .that(Look.SUSPECT)
        .forEach(look -> wanted.add(look.words() + ": suspect, measure it or ask someone"));
    wanted.addAll(wantsAll(finds) ? bearings.leftAll() : bearings.leftFirst());
    if (!wanted.isEmpty()) {
      return new MainsQuestion(ReachedMains.OPEN, openedBy, List.of(), wanted);
    }
    List<String> clean = bearings.that(Look.PASS).map(BearingLook::answer).toList();
    return new MainsQuestion(ReachedMains.NO, openedBy, clean, List.of());
  }

  /** Whether the first few bearings do not tell, so that all of them are wanted. */
  public static boolean wantsAll(List<DebrisFind> finds) {
    return finds.stream()
        .filter(find -> find.look().isHarmful())
        .anyMatch(find -> find.place().isPastFilter() || find.look() == DebrisLook.COPPER);
  }
}
