package wherefrom.ui.numbers;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.job.OpenJob;
import wherefrom.job.numbers.NumbersSample;
import wherefrom.job.numbers.WorkingBook;
import wherefrom.ui.sample.SampleJob;
import wherefrom.workings.AmountInput;
import wherefrom.workings.catalogue.compression.CompressionRatio;

class SolveModelTest {
  private final SampleJob sample = SampleJob.apart();
  private final WorkingBook book = book(sample.job);
  private final SolveModel model = new SolveModel(book);

  private static WorkingBook book(OpenJob job) {
    return new WorkingBook(new CompressionRatio(), Optional.of(job));
  }

  private void know(String... without) {
    NumbersSample.figures()
        .forEach(
            (key, text) -> {
              if (book.working().card().findInput(key).isPresent()
                  && !java.util.List.of(without).contains(key)) {
                book.set(key, text);
              }
            });
  }

  private void find(String key) {
    AmountInput input =
        model.unknowns().stream().filter(each -> each.key().equals(key)).findFirst().orElseThrow();
    model.find(input);
  }

  private String first() {
    return model.rows().get(0).heading();
  }

  @Test
  void asksWhatIsLookedForThenWhatIsWanted() {
    know("chamber");
    find("chamber");
    assertThat(model.result().orElseThrow().key()).isEqualTo("ratio");
    assertThat(first()).isEqualTo("Which value?");
    assertThat(model.answer()).isEmpty();
    assertThat(model.findText()).isEmpty();
  }

  @Test
  void findsTheChamberThatGivesTheRatioWithItsBand() {
    know("chamber");
    find("chamber");
    model.want("9.5");
    // 638.0298/8.5 less gasket 8.114, deck 4.819, piston 6: 56.13 cc, worked by hand.
    assertThat(first()).startsWith("Chamber: 56.13").contains("±");
    assertThat(model.findText().orElseThrow()).startsWith("56.129").endsWith("cc");
    assertThat(model.rows().get(1).heading()).startsWith("Compression ratio: 9.5");
  }

  @Test
  void whatWasFoundGivesTheWantedRatioWhenItIsPutIn() {
    know("deck");
    find("deck");
    model.want("9");
    book.set("deck", model.findText().orElseThrow());
    assertThat(ResultRows.of(book.answer()).get(0).heading()).startsWith("Compression ratio: 9.0");
  }

  @Test
  void saysThatThereIsNoAnswer() {
    know("deck");
    find("deck");
    model.want("0.5");
    assertThat(first()).isEqualTo("There is no answer");
    assertThat(model.rows().get(0).lines().get(0)).contains("deck");
    assertThat(model.findText()).isEmpty();
  }

  @Test
  void asksForTheOtherFiguresThatAreMissing() {
    know("chamber", "stroke");
    find("chamber");
    assertThat(first()).startsWith("Still needed: ");
    assertThat(model.rows()).anyMatch(row -> row.heading().equals("Still needed: stroke"));
  }

  @Test
  void whatIsNoFigureIsSaidAndNothingIsFound() {
    know("chamber");
    find("chamber");
    model.want("nine");
    assertThat(first()).isEqualTo("This cannot be");
    assertThat(model.rows().get(0).lines().get(0)).contains("\"nine\"");
    model.want("1,234.5");
    assertThat(model.rows().get(0).lines().get(0)).contains("no thousands mark");
    model.want("9,5");
    assertThat(first()).startsWith("Chamber: 56.13");
  }
}
