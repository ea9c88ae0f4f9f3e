package wherefrom.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What people read is spelled as in America, and has one word for one thing. */
class AmericanWordsTest {
  private static final Pattern BRITISH =
      Pattern.compile(
          "(?i)\\b(colour\\w*|centre\\w*|grey\\w*|aluminium|fibre\\w*|callip\\w+|\\w*metres?"
              + "|neighbour\\w*|\\w*(recogn|organ|real|minim|maxim|standard)is(e|es|ed|ing)"
              + "|licence\\w*|catalogue\\w*|petrol|anew|whilst|amongst|swarf|per cent"
              + "|judgement|burnt|towards|spanner\\w*|tyre\\w*|mould\\w*|kerb|programme"
              + "|(?<!-)round (the|it|its)|paraffin|circlips?|gudgeon|sump|analyse\\w*|defence)\\b");

  /**
   * Words that stand for another thing, or another word stands for theirs, and those that name one
   * build where an engine may have another: caps on studs, gears without a chain.
   */
  private static final Pattern BANNED =
      Pattern.compile(
          "(?i)\\b(shop folder|folder of jobs|take-back|still missing|usb stick"
              + "|what-ifs?|doubtful|all clean|not good|not passed|behind ±|behind \\+-"
              + "|(?<!\\bthere )\\bis no (?!longer|more|smaller|larger)\\w+|table (in|out)"
              + "|money (in|out)|close up|new rod: |who is who|loosen the other way"
              + "|between the days|main cap bolts(?! or)|chain(,| and) gears)\\b"
              + "|(?-i:\\bPut away\\b)|\\bR\\d+[:;)]|\\bRULE R\\d");

  /** Where older words are turned into those of today. */
  private static final List<String> READERS =
      List.of("cli/OldWords.java", "cli/Names.java", "workings/catalogue/Workings.java");

  @Test
  void noTextIsSpelledInTheBritishWay() {
    assertThat(offenders(BRITISH, ShownTexts.in())).isEmpty();
  }

  @Test
  void noTextHasAWordThatIsGivenUp() {
    assertThat(
            offenders(BANNED, ShownTexts.in().stream().filter(ShownTexts.Shown::isWords).toList()))
        .isEmpty();
  }

  @Test
  void theTextsAreFound() {
    assertThat(ShownTexts.in().stream().filter(ShownTexts.Shown::isWords).count())
        .as("the texts were found")
        .isGreaterThan(2_000);
  }

  @ParameterizedTest
  @ValueSource(strings = {"README.md", "src/site/markdown/command-line.md"})
  void neitherDoesAPage(String page) throws IOException {
    String text = Files.readString(Path.of(page)).replaceAll("\\s+", " ");
    assertThat(BRITISH.matcher(text).results().map(found -> found.group())).isEmpty();
    assertThat(BANNED.matcher(text).results().map(found -> found.group())).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Top dead centre",
        "even grey bands",
        "0.5 millimetres",
        "printed anew",
        "look round the seat"
      })
  void aBritishWordIsFound(String text) {
    assertThat(BRITISH.matcher(text).find()).isTrue();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"x\" is no place of this job",
        "Still missing",
        "a check is open (R11)",
        "main cap bolts"
      })
  void aWordThatIsGivenUpIsFound(String text) {
    assertThat(BANNED.matcher(text).find()).isTrue();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"There is no such visit", "out-of-round and taper", "It is no longer mated"})
  void aGoodTextPasses(String text) {
    assertThat(BRITISH.matcher(text).find() || BANNED.matcher(text).find()).isFalse();
  }

  private static List<String> offenders(Pattern words, List<ShownTexts.Shown> texts) {
    return texts.stream()
        .filter(shown -> !READERS.contains(shown.file()))
        .filter(shown -> words.matcher(shown.text()).find())
        .map(shown -> shown.file() + ": " + shown.text())
        .toList();
  }
}
