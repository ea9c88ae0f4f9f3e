package wherefrom.ui.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.job.entry.TagsPrinted;
import wherefrom.job.print.Nudge;
import wherefrom.job.print.PrintOrder;
import wherefrom.job.print.PrintOutcome;
import wherefrom.job.print.Stock;
import wherefrom.job.print.TagChoice;
import wherefrom.job.settings.Settings.UsedSheet;
import wherefrom.job.shelf.JobDay;
import wherefrom.job.shelf.Standing;
import wherefrom.parts.TagType;
import wherefrom.print.PdfSheetPrinter;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleServices;

class PrintTagsModelTest {
  /** What a machine keeps of the sheet, as its settings do. */
  private static final class Kept implements SheetMemory {
    private Optional<UsedSheet> sheet = Optional.empty();

    @Override
    public Optional<UsedSheet> used() {
      return sheet;
    }

    @Override
    public void keep(Optional<UsedSheet> used) {
      sheet = used;
    }
  }

  private final SampleJob sample = SampleJob.whole();
  private final Kept kept = new Kept();
  private final PrintTagsModel model = open();

  private PrintTagsModel open() {
    return new PrintTagsModel(
        sample.job,
        new SampleServices().all().printer(),
        new TagChoice.NotYetPrinted(),
        Locale.UK,
        kept);
  }

  private String print() {
    PrintOrder order = model.order(false).orElseThrow();
    return model.printed(order, new PrintOutcome.Printed(model.labels(), model.pages()));
  }

  /** The cards are asked for, one after the other; what is on paper is not offered again. */
  @Test
  void afterThePartsTagsComeThePlaceCardsThenTheActionCards() {
    assertThat(model.isDone()).isFalse();
    assertThat(model.next()).isEmpty();
    print();
    assertThat(Standing.of(sample.job).open(JobDay.TAGS)).isEqualTo(42);
    assertThat(model.next()).contains(new TagChoice.PlaceCards());
    model.choose(model.next().orElseThrow());
    assertThat(model.isDone()).isFalse();
    assertThat(model.many()).isEqualTo("42 cards");
    assertThat(print()).startsWith("Printed: 42 cards on ");
    assertThat(model.isDone()).isTrue();
    assertThat(Standing.of(sample.job).open(JobDay.TAGS)).isZero();
    model.choose(model.next().orElseThrow());
    assertThat(model.choice()).isEqualTo(new TagChoice.ActionCards());
    print();
    assertThat(model.isDone()).isTrue();
    assertThat(model.next()).isEmpty();
    model.choose(new TagChoice.PlaceCards());
    assertThat(model.isDone()).as("who asks for them gets them again").isFalse();
  }

  @Test
  void whoPrintsOneTagAgainGoesBackToTheWork() {
    model.choose(new TagChoice.OnePart(3));
    print();
    assertThat(model.isDone()).isTrue();
    assertThat(model.next()).isEmpty();
  }

  @Test
  void theSheetThatIsUsedInPartIsGoneOnWithAfterClosing() {
    model.choose(new TagChoice.OnePart(3));
    print();
    assertThat(open().start()).isEqualTo(2);
    assertThat(open().warning()).isEqualTo("The sheet is used up to label 1.");
    model.choose(new TagChoice.Baskets(23));
    assertThat(print()).endsWith(" The last sheet is full.");
    assertThat(open().start()).isEqualTo(1);
    assertThat(open().warning()).isEmpty();
  }

  @Test
  void saysHowManyLabelsOnHowManyPages() {
    assertThat(model.count()).isEqualTo("74 labels on 4 pages.");
    model.startAt(24);
    assertThat(model.count()).isEqualTo("74 labels on 5 pages.");
    model.choose(new TagChoice.OnePart(3));
    assertThat(model.count()).isEqualTo("1 label on 1 page.");
  }

  @Test
  void whatIsPrintedIsLoggedAndTheNextSheetBeginsAfterIt() {
    model.choose(new TagChoice.Baskets(5));
    model.startAt(22);
    PrintOrder order = model.order(false).orElseThrow();
    assertThat(order.setup().start()).isEqualTo(22);
    assertThat(model.printed(order, new PrintOutcome.Printed(5, 2)))
        .isEqualTo("Printed: 5 labels on 2 pages.");
    assertThat(model.start()).isEqualTo(3);
    assertThat(sample.job.history().get(1).entry()).isInstanceOf(TagsPrinted.class);
  }

  @Test
  void aSavedFileIsNotPrintedUntilSomebodySaysSo() {
    PrintOrder order = model.order(false).orElseThrow();
    assertThat(model.saved(order, new PrintOutcome.Printed(74, 4)))
        .isEqualTo("Saved, not printed yet: 74 labels on 4 pages.");
    assertThat(model.isSaved()).isTrue();
    assertThat(model.labels()).isEqualTo(74);
    assertThat(sample.job.history()).hasSize(1);
    assertThat(model.onPaper()).isEqualTo("Printed: 74 labels on 4 pages.");
    assertThat(model.labels()).isZero();
    assertThat(model.isSaved()).isFalse();
    assertThat(sample.job.history()).hasSize(2);
  }

  @Test
  void whatIsSavedIsForgottenWithAnotherChoice() {
    model.saved(model.order(false).orElseThrow(), new PrintOutcome.Printed(74, 4));
    model.choose(new TagChoice.PlaceCards());
    assertThat(model.isSaved()).isFalse();
  }

  @Test
  void everyPageIsTurnedToAndThenTheFirstAgain() {
    assertThat(model.pageWords()).isEqualTo("1 of 4");
    model.turn();
    model.turn();
    model.turn();
    assertThat(model.pageWords()).isEqualTo("4 of 4");
    model.turn();
    assertThat(model.page()).isEqualTo(1);
    model.turn();
    model.choose(new TagChoice.OnePart(3));
    assertThat(model.pageWords()).isEmpty();
    assertThat(model.page()).isEqualTo(1);
  }

  @Test
  void thePaperThatIsUsualComesFirst() {
    List<Stock> ready = new PdfSheetPrinter().listStocks();
    assertThat(UsualPaper.first(ready, Locale.UK).get(0).title()).startsWith("A4 sheet");
    List<Stock> there = UsualPaper.first(ready, Locale.US);
    assertThat(there.get(0).title()).startsWith("Letter sheet");
    assertThat(there.get(1).title()).startsWith("Letter plain card");
    assertThat(there).hasSameElementsAs(ready);
  }

  @Test
  void nothingIsLoggedOfAPrintThatWasGivenUpOrOfATestPage() {
    PrintOrder order = model.order(false).orElseThrow();
    model.printed(order, new PrintOutcome.Cancelled());
    model.printed(order, new PrintOutcome.Refused(List.of("Too small.")));
    model.printed(model.order(true).orElseThrow(), new PrintOutcome.Printed(0, 1));
    assertThat(sample.job.history()).hasSize(1);
  }

  @Test
  void theNudgeGoesInHalfMillimetresAndStopsAtItsEnd() {
    model.nudge(1, -1);
    assertThat(NudgeScreen.words(model.nudge())).isEqualTo("0.5 mm right, 0.5 mm up");
    model.nudge(1000, 0);
    assertThat(model.nudge()).isEqualTo(new Nudge(Nudge.MOST, -1));
  }

  @Test
  void aStockThatCannotBeUsedIsSaidAndTheOldOneStays() {
    String before = model.stockWords();
    model.chooseStock("no-such");
    assertThat(model.trouble()).contains("no-such");
    assertThat(model.stockWords()).isEqualTo(before);
  }

  @Test
  void bagsThatAnotherBenchPrintedMeanwhileAreNotPrintedTwice() {
    model.choose(TagChoice.BagTags.more(2));
    PrintOrder order = model.order(false).orElseThrow();
    TagsPrinted others = new TagsPrinted(TagType.BAG, List.of(1, 2, 3), "theirs");
    sample.job.record(others);
    long before = sample.job.sequence();
    assertThat(model.printed(order, new PrintOutcome.Printed(2, 1)))
        .isEqualTo("Another bench printed these numbers. Throw this sheet away; print again.");
    assertThat(sample.job.sequence()).isEqualTo(before);
    PrintOrder anew = model.order(false).orElseThrow();
    assertThat(model.printed(anew, new PrintOutcome.Printed(2, 1))).startsWith("Printed: ");
    assertThat(sample.job.history())
        .last()
        .satisfies(last -> assertThat(((TagsPrinted) last.entry()).items()).containsExactly(4, 5));
    model.choose(new TagChoice.BagTags(4, 1));
    PrintOrder lost = model.order(false).orElseThrow();
    assertThat(model.printed(lost, new PrintOutcome.Printed(1, 1))).startsWith("Printed: ");
  }
}
