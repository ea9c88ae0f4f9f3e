package wherefrom.ui.changes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.engine.ReadyLayouts;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.rules.consequence.Reach;

/** Whose tag is scanned, when it is asked where a change is: the part's spot, or what holds it. */
class WherePlacesTest {
  private static final String V8 = "v8-odd-even";

  private static Optional<String> answer(WherePlaces places, String home) {
    return places.around(Place.find(home).orElseThrow()).map(place -> places.keys().get(place));
  }

  @ParameterizedTest
  @CsvSource({
    "VALVE, pushrod@3EX, 3EX",
    "VALVE, piston@B3,",
    "CYLINDER, pushrod@3EX, B3",
    "CYLINDER, piston@B3, B3",
    "CYLINDER, rod-cap@R3L, B3",
    "CYLINDER, main-shell@M2U,",
    "ROD_OR_MAIN, rod-cap@R3L, R3",
    "ROD_OR_MAIN, rod-shell@R3U, R3",
    "ROD_OR_MAIN, piston@B3, R3",
    "ROD_OR_MAIN, main-shell@M2L, M2",
    "ROD_OR_MAIN, pushrod@3EX,",
  })
  void aTagAnswersWithThePlaceThatHoldsItsPart(Reach reach, String home, String answer) {
    WherePlaces places = WherePlaces.of(ReadyLayouts.find(V8).orElseThrow(), reach);
    assertThat(answer(places, home)).isEqualTo(Optional.ofNullable(answer));
  }

  @ParameterizedTest
  @CsvSource({"pushrod@3EX", "piston@B3", "rod-cap@R3L"})
  void anyPartOfACylinderAnswersForItsBank(String home) {
    var layout = ReadyLayouts.find(V8).orElseThrow();
    String bank =
        layout.banks().stream()
            .filter(one -> one.cylinders().contains(3))
            .findFirst()
            .orElseThrow()
            .name();
    assertThat(answer(WherePlaces.of(layout, Reach.BANK), home)).contains(bank);
  }

  /** A piston lies between two rocker arms: which one is meant it does not say. */
  @ParameterizedTest
  @CsvSource({
    "ROCKER, pushrod@3EX, 3EX",
    "ROCKER, piston@B3,",
    "ROD_SHELL, rod-shell@R3U, R3U",
    "ROD_SHELL, piston@B3,",
    "ROD_CAP, rod-shell@R3U, R3L",
  })
  void aKindAtASpotIsTakenOnlyWhereOneIsMeant(PartKind kind, String home, String answer) {
    WherePlaces places = WherePlaces.of(ReadyLayouts.find(V8).orElseThrow(), kind);
    assertThat(answer(places, home)).isEqualTo(Optional.ofNullable(answer));
  }
}
