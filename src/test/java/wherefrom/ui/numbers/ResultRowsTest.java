package wherefrom.ui.numbers;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.job.numbers.WorkingBook;
import wherefrom.workings.Working;
import wherefrom.workings.catalogue.valvetrain.CoilBind;

class ResultRowsTest {
  private static final Working WORKING = new CoilBind();
  private final WorkingBook book = new WorkingBook(WORKING, Optional.empty());

  private List<ResultRows.Row> rows() {
    return ResultRows.of(book.answer());
  }

  @Test
  void everyMissingFigureIsAskedForWithWhatItMeans() {
    book.set("lift", "0.450 in");
    assertThat(rows())
        .extracting(ResultRows.Row::heading)
        .containsExactly("Still needed: installed height");
    book.set("installed-height", "1.700 in");
    assertThat(rows())
        .extracting(ResultRows.Row::heading)
        .containsExactly("Still needed: solid height");
    assertThat(rows()).allMatch(row -> !row.lines().get(0).isBlank());
  }

  @Test
  void aResultShowsItsBandWhatToMeasureBetterAndWhatWasTakenAsExact() {
    book.set("lift", "0.450 in±0.002 in");
    book.set("installed-height", "1.700 in±0.010 in");
    book.set("solid-height", "1.150 in");
    // 1.700 − 1.150 − 0.450; the height's 0.010² is 96 % of 0.010² + 0.002².
    assertThat(rows().get(0).heading()).endsWith(": 0.100 in ± 0.010 in");
    assertThat(rows().get(0).lines())
        .containsExactly("Most of the ± comes from: installed height (96 %).");
    assertThat(rows())
        .anySatisfy(
            row -> {
              assertThat(row.heading()).isEqualTo("Taken as exact");
              assertThat(row.lines().get(0)).contains("solid height");
            });
  }

  @Test
  void aMarginUnderTheUsualLeastIsSaidWithItsSource() {
    book.set("lift", "0.530 in");
    book.set("installed-height", "1.700 in");
    book.set("solid-height", "1.150 in");
    assertThat(rows())
        .anySatisfy(
            row -> {
              assertThat(row.heading()).isEqualTo("Caution");
              assertThat(row.lines()).contains("Source: from memory, unverified");
            });
  }

  @Test
  void whatCannotBeIsSaid() {
    book.set("lift", "0.530 in");
    book.set("installed-height", "1.100 in");
    book.set("solid-height", "1.150 in");
    assertThat(rows())
        .singleElement()
        .satisfies(
            row -> {
              assertThat(row.heading()).isEqualTo("This cannot be");
              assertThat(row.lines().get(0)).matches("[A-Z].*\\.");
            });
  }
}
