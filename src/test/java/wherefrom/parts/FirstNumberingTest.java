package wherefrom.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;
import wherefrom.engine.Spot;
import wherefrom.engine.Spots;

/**
 * What numbers stand for in the first logbooks, against lists that were written by the first
 * version: tags printed then hang on parts now, so no list is ever written anew.
 */
class FirstNumberingTest {
  private static final Path LISTS = Path.of("src", "test", "resources", "numbering");

  static Stream<Layout> layouts() {
    return ReadyLayouts.all().stream();
  }

  private static List<String> printed(Layout layout, String which) throws IOException {
    List<String> keys = Files.readAllLines(LISTS.resolve(layout.name() + "-" + which + ".txt"));
    assertThat(keys).hasSizeGreaterThan(28).doesNotHaveDuplicates();
    return keys;
  }

  private static List<String> keys(List<Place> places) {
    return places.stream().map(Place::key).toList();
  }

  @ParameterizedTest
  @MethodSource("layouts")
  void itemsAreAsTheyWerePrinted(Layout layout) throws IOException {
    assertThat(keys(FirstNumbering.items(layout, PartKind.all())))
        .isEqualTo(printed(layout, "all"));
    assertThat(keys(FirstNumbering.items(layout, PartKind.alwaysOn())))
        .isEqualTo(printed(layout, "default"));
  }

  @ParameterizedTest
  @MethodSource("layouts")
  void cardsAreAsTheyWerePrinted(Layout layout) throws IOException {
    assertThat(FirstNumbering.cards(layout).stream().map(Spot::key).toList())
        .isEqualTo(printed(layout, "cards"));
  }

  /** No place and no card was added to a ready layout or taken away, in whatever order. */
  @ParameterizedTest
  @MethodSource("layouts")
  void theReadyLayoutsHaveTheSamePlacesAndCards(Layout layout) throws IOException {
    assertThat(keys(Places.of(layout, PartKind.all())))
        .containsExactlyInAnyOrderElementsOf(printed(layout, "all"));
    assertThat(keys(Places.of(layout, PartKind.alwaysOn())))
        .containsExactlyInAnyOrderElementsOf(printed(layout, "default"));
    assertThat(Spots.all(layout).stream().map(Spot::key).toList())
        .containsExactlyInAnyOrderElementsOf(printed(layout, "cards"));
  }

  @Test
  void fewerKindsLeaveTheOthersInTheirOrder() throws IOException {
    Layout v8 = ReadyLayouts.find("v8-odd-even").orElseThrow();
    for (PartKind kind : PartKind.all()) {
      assertThat(keys(FirstNumbering.items(v8, java.util.EnumSet.of(kind))))
          .isEqualTo(
              printed(v8, "all").stream().filter(key -> key.startsWith(kind.key() + "@")).toList());
    }
  }
}
