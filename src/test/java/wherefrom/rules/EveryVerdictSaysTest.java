package wherefrom.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wherefrom.engine.Spots;
import wherefrom.parts.Action;
import wherefrom.parts.Orientation;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/** Each kind of verdict has its lines, its sentence and a way out that leads out of it. */
class EveryVerdictSaysTest {
  /** What the largest letters leave room for in a line: they shrink to 10 mm, not below. */
  private static final int LINE = 27;

  private static final int WORDS = 12;

  private static final PartNames NAMES =
      new PartNames() {
        @Override
        public String code(Part part) {
          return String.format("%04d 49", part.item());
        }

        @Override
        public String whereabouts(Part part) {
          return "on the bench";
        }

        @Override
        public Optional<Found> findFound(Part part) {
          return Optional.of(new Found("fail", "Is it straight? fail"));
        }

        @Override
        public String job() {
          return "Launch V8";
        }
      };

  private final Part pushrod = part(12, "pushrod@3EX", false);
  private final Part other = part(104, "pushrod@5EX", false);
  private final Part shell = part(88, "rod-shell@R8L", false);
  private final Part upper = part(87, "rod-shell@R7U", false);
  private final Part lower = part(85, "rod-shell@R7L", false);
  private final Part rod = part(33, "rod@R3U", false);
  private final Part cap = part(34, "rod-cap@R3L", false);
  private final Ban ban = new Ban("R25", "Fit a new pushrod.", "practice", 7, "");

  private static Part part(int item, String home, boolean fresh) {
    return new Part(item, place(home), 1, 1, fresh);
  }

  private static Place place(String key) {
    return Place.find(key).orElseThrow();
  }

  private static Belonging home(Part part) {
    return new Belonging(part.home(), 0, Optional.empty());
  }

  private StandsAgainst wrongPlace() {
    return new Misplaced.WrongPlace(shell, place("rod-shell@R7L"), home(shell), Optional.of(lower));
  }

  private StandsAgainst mustBeNew() {
    return new Verdict.MustBeNew(pushrod, pushrod.home(), ban);
  }

  private List<Verdict> stops() {
    Place here = pushrod.home();
    List<Verdict> all = new ArrayList<>();
    all.add(wrongPlace());
    all.add(
        new Misplaced.WrongPlace(
            cap,
            place("rod-cap@R3L"),
            new Belonging(place("rod-cap@R5L"), 4, Optional.of(rod)),
            Optional.empty()));
    all.add(
        new Misplaced.WrongMate(
            cap, place("rod-cap@R5L"), rod, Optional.of(rod), Optional.empty()));
    all.add(
        new Misplaced.WrongKind(pushrod, lower.home().spot(), Optional.empty(), Optional.empty()));
    all.add(
        new Misplaced.WrongKind(
            pushrod, cap.home().spot(), Optional.of(PartKind.ROD_CAP), Optional.of(cap)));
    all.add(new Misplaced.WrongHalf(upper, lower.home(), Optional.of(lower)));
    all.add(new Misplaced.WrongEnd(pushrod, here, Orientation.TOP_END));
    all.add(new Misplaced.WrongEnd(lower, lower.home(), Orientation.HALF));
    all.add(new Misplaced.WrongEnd(cap, cap.home(), Orientation.FACING));
    all.add(new Verdict.PlaceTaken(pushrod, here, other));
    all.add(new Verdict.AlreadyFitted(pushrod, other.home(), here));
    Stream.of(Hold.values())
        .forEach(hold -> all.add(new Verdict.NotCleared(pushrod, here, hold, "it waits", "key")));
    all.add(mustBeNew());
    all.add(new Verdict.FittedBut(pushrod, here, mustBeNew(), false));
    all.add(new Verdict.FittedBut(shell, shell.home(), wrongPlace(), true));
    all.add(new Verdict.Retired(pushrod, Optional.of(other)));
    all.add(new Verdict.Retired(pushrod, Optional.of(pushrod)));
    all.add(new Verdict.Retired(pushrod, Optional.empty()));
    all.add(
        new LeftStanding(
            VerdictName.WRONG_PLACE, "It came from there.", Optional.of(shell), Spots.find("R7L")));
    all.add(settledAtHome());
    all.add(oldTag());
    all.add(
        new LeftStanding(
            VerdictName.WRONG_ENGINE, "It is another's.", Optional.empty(), Optional.empty()));
    all.add(new CodeVerdict.WrongEngine(7, Optional.of("Gray six")));
    all.add(new CodeVerdict.WrongEngine(7, Optional.empty()));
    return all;
  }

  private LeftStanding oldTag() {
    return new LeftStanding(
        VerdictName.RETIRED,
        "This is an older tag.",
        Optional.empty(),
        Optional.of(pushrod.home().spot()));
  }

  private LeftStanding settledAtHome() {
    return new LeftStanding(
        VerdictName.NOT_CLEARED,
        "It is off for washing.",
        Optional.of(pushrod),
        Optional.of(pushrod.home().spot()));
  }

  private List<Verdict> others() {
    return List.of(
        new Verdict.RightPlace(pushrod, pushrod.home(), "The tagged end goes up."),
        new Verdict.AlreadyFitted(pushrod, pushrod.home(), pushrod.home()),
        new CodeVerdict.NotOneOfOurs("59012", false),
        new CodeVerdict.NotOneOfOurs("1123456701730142", true),
        new CodeVerdict.DigitsDisagree("0005 88"),
        new CodeVerdict.TypedCard("000148", Action.UNDO),
        new CodeVerdict.AlsoFits("0173 42", Map.of("1123456701730142", "a pushrod"), List.of()));
  }

  private static Stream<Class<?>> kinds(Class<?> sealed) {
    return Arrays.stream(sealed.getPermittedSubclasses())
        .flatMap(kind -> kind.isSealed() ? kinds(kind) : Stream.of(kind));
  }

  @Test
  void aReasonSettlesAllThatStandsAgainstAPartButThatItMustBeNew() {
    List<StandsAgainst> against =
        stops().stream()
            .filter(StandsAgainst.class::isInstance)
            .map(StandsAgainst.class::cast)
            .toList();
    assertThat(against).hasSizeGreaterThan(4);
    assertThat(against)
        .allSatisfy(
            one -> assertThat(one.canBeSettled()).isEqualTo(one.name() != VerdictName.MUST_BE_NEW));
  }

  @Test
  void noKindOfVerdictIsLeftOutHere() {
    Set<Class<?>> had = new HashSet<>();
    stops().forEach(verdict -> had.add(verdict.getClass()));
    others().forEach(verdict -> had.add(verdict.getClass()));
    assertThat(kinds(Verdict.class)).allMatch(had::contains).hasSizeGreaterThan(16);
  }

  @Test
  void aStopHasTwoOrThreeLinesThatCanBeReadFromTheEngine() {
    for (Verdict stop : stops()) {
      assertThat(stop.cue()).as(stop.word()).isEqualTo(Cue.STOP);
      List<String> lines = stop.words(NAMES).lines();
      assertThat(lines).as(stop.word()).hasSizeBetween(stop instanceof LeftStanding ? 1 : 2, 3);
      assertThat(lines)
          .as(stop.word())
          .allMatch(line -> line.length() <= LINE && !line.endsWith("."));
    }
  }

  @Test
  void aSentenceHasTwelveWordsAtMostAndEndsAsOne() {
    List<Verdict> all = new ArrayList<>(stops());
    all.addAll(others());
    for (Verdict verdict : all) {
      VerdictWords words = verdict.words(NAMES);
      for (String sentence : words.told().split("(?<=[.?:]) ")) {
        assertThat(sentence.split(" ")).as(sentence).hasSizeLessThanOrEqualTo(WORDS);
      }
      assertThat(words.sentence()).as(verdict.word()).matches(".*[.)]");
      assertThat(words.sentence() + words.advice()).doesNotContain("..", "  ");
    }
  }

  /** What is over is said as such, and one place is not named twice. */
  @Test
  void aStopThatIsSettledSaysSo() {
    VerdictWords words = settledAtHome().words(NAMES);
    assertThat(words.lines())
        .containsExactly("Stopped: not cleared", "Here: 3 EX pushrod", "Since then: settled");
    assertThat(words.small())
        .isEqualTo("What stood against it is settled since. It said: It is off for washing.");
  }

  /** The part of an old tag may be the right one: it is the tag that is to be changed. */
  @Test
  void anOldTagThatWasStoppedBeforeIsSaidToBeOld() {
    VerdictWords words = oldTag().words(NAMES);
    assertThat(words.lines()).containsExactly("Stopped: old tag", "Here: 3 EX");
    assertThat(words.first()).isEqualTo(WayOut.SCAN_NEWER_TAG);
    assertThat(words.advice()).doesNotContain("right part");
  }

  @Test
  void placesAreNamedInFullWords() {
    VerdictWords words = wrongPlace().words(NAMES);
    assertThat(words.lines())
        .containsExactly("From: rod 8, lower", "Here: rod 7, lower", "Right part: 0085 49");
    assertThat(words.small()).isEqualTo("Rod shell. The right part is on the bench.");
    assertThat(words.advice())
        .isEqualTo("The right part is 0085 49. Or put this one at rod 8, lower: scan that card.");
    assertThat(words.first()).isEqualTo(WayOut.SCAN_RIGHT_PART);
    for (Verdict stop : stops()) {
      VerdictWords said = stop.words(NAMES);
      assertThat(String.join(" ", said.lines()) + " " + said.told())
          .as(stop.word())
          .doesNotContainPattern("\\b[RM]\\d (UP|LO)\\b");
    }
  }

  @Test
  void eachKindOfStopHasItsOwnWayOut() {
    assertThat(first(new Verdict.PlaceTaken(pushrod, pushrod.home(), other)))
        .isEqualTo(WayOut.MAKE_ROOM);
    assertThat(first(new Misplaced.WrongEnd(pushrod, pushrod.home(), Orientation.TOP_END)))
        .isEqualTo(WayOut.TURN_IT);
    assertThat(first(mustBeNew())).isEqualTo(WayOut.NEW_PART);
    assertThat(first(new Verdict.Retired(pushrod, Optional.of(other))))
        .isEqualTo(WayOut.SCAN_NEW_PART);
    assertThat(first(new Verdict.FittedBut(pushrod, pushrod.home(), mustBeNew(), false)))
        .isEqualTo(WayOut.NEW_PART);
    assertThat(first(new Verdict.FittedBut(shell, shell.home(), wrongPlace(), true)))
        .isEqualTo(WayOut.PAGE);
    assertThat(first(new Verdict.NotCleared(pushrod, pushrod.home(), Hold.LOST, "lost", "")))
        .isEqualTo(WayOut.FOUND);
  }

  private static WayOut first(Verdict verdict) {
    return verdict.words(NAMES).first();
  }

  @Test
  void whatIsNotClearedSaysWhatWasFound() {
    Verdict held =
        new Verdict.NotCleared(pushrod, pushrod.home(), Hold.FOUND_BAD, "a check failed", "");
    assertThat(held.words(NAMES).lines())
        .containsExactly("Not cleared: 3 EX", "pushrod: not decided", "Found: fail");
    assertThat(held.words(NAMES).small()).isEqualTo("Is it straight? fail.");
    Verdict away =
        new Verdict.NotCleared(pushrod, pushrod.home(), Hold.WASHING, "it is off (basket 4)", "");
    assertThat(away.words(NAMES).lines()).containsExactly("Not cleared: 3 EX", "pushrod: washing");
    assertThat(away.words(NAMES).small()).isEqualTo("It is off (basket 4).");
  }

  @Test
  void whereTheListWantsACapTheKindIsSaidAndNotThePlace() {
    Verdict wrong =
        new Misplaced.WrongKind(
            pushrod, cap.home().spot(), Optional.of(PartKind.ROD_CAP), Optional.of(cap));
    assertThat(wrong.words(NAMES).lines())
        .containsExactly("Here: rod 3, cap", "You hold: a pushrod", "Right part: 0034 49");
    assertThat(wrong.words(NAMES).small()).isEqualTo("The pushrod came from 3 EX.");
  }
}
