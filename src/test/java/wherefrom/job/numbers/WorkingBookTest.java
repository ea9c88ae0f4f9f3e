package wherefrom.job.numbers;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.job.OpenJob;
import wherefrom.ui.sample.SampleJob;
import wherefrom.workings.MissingInputs;
import wherefrom.workings.Result;
import wherefrom.workings.catalogue.valvetrain.CoilBind;

class WorkingBookTest {
  private final SampleJob sample = SampleJob.apart();
  private final WorkingBook book = new WorkingBook(new CoilBind(), Optional.of(sample.job));

  private void typeAll() {
    book.set("lift", "11,43 mm±0,05");
    book.set("installed-height", "43.18 mm");
    book.set("solid-height", "1.150 in");
  }

  @Test
  void figuresStandAsTypedAndAreThereAfterARestart() {
    typeAll();
    OpenJob again = new OpenJob(sample.logbook, SampleJob.CLOCK);
    WorkingBook reopened = new WorkingBook(new CoilBind(), Optional.of(again));
    assertThat(reopened.sheet()).isEqualTo(book.sheet());
    assertThat(reopened.text(CoilBindInputs.find("lift"))).isEqualTo("11,43 mm±0,05");
    assertThat(reopened.answer()).isEqualTo(book.answer()).isInstanceOf(Result.class);
  }

  /** The card's inputs by key. */
  private static final class CoilBindInputs {
    static wherefrom.workings.InputSpec find(String key) {
      return new CoilBind().card().findInput(key).orElseThrow();
    }
  }

  @Test
  void whatIsRefusedLeavesTheFigureBeforeIt() {
    typeAll();
    FigureOutcome kept = book.set("lift", "1,234.5 mm");
    assertThat(kept).isInstanceOf(FigureOutcome.Refused.class);
    assertThat(((FigureOutcome.Refused) kept).sentence()).contains("no thousands mark");
    assertThat(book.text(CoilBindInputs.find("lift"))).isEqualTo("11,43 mm±0,05");
  }

  @Test
  void oneStepBackBringsTheFigureBeforeAndClearingCanBeTakenBackToo() {
    typeAll();
    book.set("lift", "12 mm");
    sample.job.undo();
    assertThat(book.text(CoilBindInputs.find("lift"))).isEqualTo("11,43 mm±0,05");
    book.clear();
    assertThat(book.answer()).isInstanceOf(MissingInputs.class);
    sample.job.undo();
    assertThat(book.answer()).isInstanceOf(Result.class);
  }

  @Test
  void withoutAJobTheFiguresLastAsLongAsTheBook() {
    WorkingBook loose = new WorkingBook(new CoilBind(), Optional.empty());
    loose.set("lift", "12 mm");
    assertThat(loose.text(CoilBindInputs.find("lift"))).isEqualTo("12 mm");
    assertThat(new WorkingBook(new CoilBind(), Optional.empty()).sheet().figures()).isEmpty();
  }

  @Test
  void aFigureThatThisVersionDoesNotKnowIsLeftAlone() {
    typeAll();
    Sheets sheets = new Sheets(sample.job);
    sheets.keep("working-coil-bind", book.sheet().with("of-a-later-version", "7 furlongs"));
    assertThat(book.answer()).isInstanceOf(Result.class);
    book.set("lift", "12 mm");
    assertThat(book.sheet().figures()).containsEntry("of-a-later-version", "7 furlongs");
  }

  @Test
  void aSheetThrownAwayIsGoneUntilTheStepIsTakenBack() {
    Sheets sheets = new Sheets(sample.job);
    sheets.keep("mine", new Sheet("Mine", Map.of("a", "1")));
    sheets.drop("mine");
    assertThat(sheets.find("mine")).isEmpty();
    int before = sample.job.history().size();
    sheets.drop("mine");
    assertThat(sample.job.history()).hasSize(before);
    sample.job.undo();
    assertThat(sheets.find("mine").orElseThrow().figures()).isEqualTo(Map.of("a", "1"));
  }

  @Test
  void whatWouldBeDoneIsNoFigureOfHowThingsAre() {
    List<String> now =
        List.of(PlanGroup.values()).stream()
            .flatMap(group -> group.inputs(0).stream())
            .map(wherefrom.workings.InputSpec::key)
            .toList();
    assertThat(now)
        .contains("bore", "chamber", "lobe-lift")
        .doesNotContain("target", "head-cut", "deck-cut", "seat-sink");
  }
}
