package wherefrom.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class WordsTest {

  @Test
  void aLineBeginsWithACapital() {
    assertThat(Words.capital("rod 3")).isEqualTo("Rod 3");
    assertThat(Words.capital("3 IN")).isEqualTo("3 IN");
    assertThat(Words.capital("")).isEmpty();
  }

  @Test
  void aSentenceEndsOnce() {
    assertThat(Words.sentence("fit it")).isEqualTo("Fit it.");
    assertThat(Words.sentence("Fit it.")).isEqualTo("Fit it.");
    assertThat(Words.sentence("is it straight?")).isEqualTo("Is it straight?");
    assertThat(Words.sentence("")).isEmpty();
  }

  @Test
  void whatHasNoSourceIsNotCalledOne() {
    assertThat(Words.source("TM 9-8000")).isEqualTo("Source: TM 9-8000");
    assertThat(Words.source("common practice, no source")).isEqualTo("Common practice, no source");
  }

  @Test
  void oneIsNotMany() {
    assertThat(Words.count(1, "piece")).isEqualTo("1 piece");
    assertThat(Words.count(0, "piece")).isEqualTo("0 pieces");
    assertThat(Words.count(2, "entry", "entries")).isEqualTo("2 entries");
  }

  @Test
  void aNumberHasFourDigits() {
    assertThat(Words.number(12)).isEqualTo("0012");
    assertThat(Words.number(12345)).isEqualTo("12345");
  }
}
