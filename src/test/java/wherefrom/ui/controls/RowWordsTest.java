package wherefrom.ui.controls;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What is read page by page parts where a line ends, and says where it goes on. */
class RowWordsTest {
  private static final String WORDS =
      "Wipe it and look. Never use a scraper, it marks the shell. Lower shells wear first.";

  private static RowWords row(String heading, String... lines) {
    return new RowWords(heading, List.of(lines), EvenLetters::ends, EvenLetters::ends);
  }

  private static String start(RowWords row, int end, double width) {
    return String.join("|", row.piece(0, end, width).lines());
  }

  @Test
  void whatEndsWithinASentenceSaysSoByDotsOrByTheMarkThatStandsThere() {
    RowWords row = row("How", WORDS);
    List<Integer> ends = row.ends(0, 20, 1);
    assertThat(ends.stream().map(end -> start(row, end, 20)).toList())
        .containsExactly(
            "",
            "Wipe it and look.",
            "Wipe it and look. Never use a scraper,",
            "Wipe it and look. Never use a scraper, it marks the shell.",
            "Wipe it and look. Never use a scraper, it marks the shell. Lower shells wear …");
  }

  @Test
  void whatGoesOnBeginsWithDotsUnderItsHeading() {
    RowWords row = row("How", WORDS);
    int end = row.ends(0, 16, 2).get(0);
    assertThat(start(row, end, 20)).isEqualTo("Wipe it and look. Never …");
    RowWords.Said rest = row.piece(end, row.count(), 20);
    assertThat(rest.heading()).isEqualTo("How");
    assertThat(rest.lines())
        .containsExactly("… use a scraper, it marks the shell. Lower shells wear first.");
    assertThat(rest.goesOn()).isFalse();
    assertThat(row.piece(0, end, 20).goesOn()).isTrue();
  }

  /** A list that ends with one of its lines would pass for all of it. */
  @Test
  void aListThatGoesOnSaysSoByDots() {
    RowWords row = row("Still to look at", "Main 1", "Main 2", "Main 3.");
    int end = "Still to look atMain 1Main 2".length();
    assertThat(row.piece(0, end, 40).lines()).containsExactly("Main 1", "Main 2 …");
    assertThat(row.piece(end, row.count(), 40).lines()).containsExactly("Main 3.");
    assertThat(row.piece(0, row.count(), 40).lines()).endsWith("Main 3.");
  }

  @Test
  void aLongHeadingIsSaidAgainInOneLine() {
    RowWords row = row("Everything that must be dry before it is closed", WORDS);
    RowWords.Said rest = row.piece(row.count() - 20, row.count(), 20);
    assertThat(rest.heading()).isEqualTo("Everything that …");
  }

  @Test
  void twoLinesStandTogetherOnEitherSideOfAPagesEnd() {
    assertThat(row("How", "one two three").ends(0, 8, 2)).isEmpty();
    assertThat(row("How", "one two three four five six").ends(0, 8, 2)).isNotEmpty();
  }

  @Test
  void aHeadingDoesNotStandAloneWhereAPageHoldsMore() {
    assertThat(row("How", "oiled", "dry").ends(0, 20, 2)).containsExactly("Howoiled".length());
    assertThat(row("How", "oiled", "dry").ends(0, 20, 1)).contains("How".length());
  }

  @Test
  void aHeadingThatIsATextMayStandWithoutWhatIsSaidOfIt() {
    assertThat(row("one two three four", "dry").ends(0, 5, 2))
        .contains("one two three four".length());
    assertThat(row("one two", "dry").ends(0, 5, 2)).isEmpty();
  }

  @Test
  void noWordIsParted() {
    RowWords row = row("", WORDS);
    for (int width = 4; width < WORDS.length(); width++) {
      for (int end : row.ends(0, width, 1)) {
        String told = String.join(" ", row.piece(0, end, width).lines()).replace(" …", "");
        String rest = String.join(" ", row.piece(end, row.count(), width).lines());
        assertThat(told + " " + rest.replaceFirst("^… ", "")).isEqualTo(WORDS);
      }
    }
  }
}
