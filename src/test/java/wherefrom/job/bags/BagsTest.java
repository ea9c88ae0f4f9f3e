package wherefrom.job.bags;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.job.BenchJob;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.AtAssembly;
import wherefrom.job.entry.BagFilled;
import wherefrom.job.entry.BoltHole;
import wherefrom.job.tags.CodeLookup;
import wherefrom.job.tags.TagBook;
import wherefrom.parts.Whereabouts;

/** What a bag held is counted when it comes back and when it is used. */
class BagsTest {
  private final OpenJob job = BenchJob.v8().job;
  private final Bags bags = new Bags(job);

  private static BagFilled headBolts(int number, int pieces) {
    return new BagFilled(
        number, "head bolts, long", 0, "left head", pieces, List.of(), "", AtAssembly.SEALER);
  }

  private static BoltHole hole(int number) {
    return new BoltHole(number, Optional.empty(), Optional.empty(), Optional.empty());
  }

  private Bag bag(int number) {
    return BagBook.of(job.state()).findBag(number).orElseThrow();
  }

  @Test
  void aShortCountIsAskedAboutAndAWholeOneIsNot() {
    bags.fill(headBolts(1, 10));
    assertThat(bags.move(1, Whereabouts.FITTED, 9, ""))
        .isEqualTo(
            new BagOutcome.Asked("Bag 1 held 10, you counted 9: 1 piece short. Look for them."));
    assertThat(bag(1).where()).isEqualTo(Whereabouts.OUT);
    assertThat(bags.move(1, Whereabouts.FITTED, 10, "")).isInstanceOf(BagOutcome.Logged.class);
    assertThat(bag(1).where()).isEqualTo(Whereabouts.FITTED);
  }

  @Test
  void aBagWhosePartIsStillOffIsAskedAboutAndOneThatIsInIsInAlready() {
    BigParts parts = new BigParts(job);
    parts.nameUsual();
    parts.off(8, "");
    bags.fill(new BagFilled(1, "bolts", 8, "", 6, List.of(), "", AtAssembly.NOT_SAID));
    assertThat(bags.move(1, Whereabouts.FITTED, 6, ""))
        .isEqualTo(
            new BagOutcome.Asked(
                "Bag 1 belongs to the left valve cover, which is out, on the bench."
                    + " Put that on first."));
    assertThat(BagBook.of(job.state()).bagsDue()).isEmpty();
    parts.on(8, "for the test");
    assertThat(BagBook.of(job.state()).bagsDue()).containsExactly(bag(1));
    assertThat(bags.move(1, Whereabouts.FITTED, 6, "")).isInstanceOf(BagOutcome.Logged.class);
    assertThat(bags.move(1, Whereabouts.FITTED, 6, ""))
        .isEqualTo(new BagOutcome.Refused("Bag 1 is fitted already."));
    assertThat(BagBook.of(job.state()).openBags()).isEmpty();
  }

  @Test
  void aBagThatWasEmptyWhenItWasTakenIsNotFilledOverWhatAnotherBenchSaid() {
    assertThat(bags.fillEmpty(headBolts(1, 10))).isInstanceOf(BagOutcome.Logged.class);
    assertThat(bags.fillEmpty(headBolts(1, 4)))
        .isEqualTo(
            new BagOutcome.Refused("Bag 1 holds head bolts, long by now. Take another bag."));
    assertThat(bag(1).filled().pieces()).isEqualTo(10);
    bags.move(1, Whereabouts.FITTED, 10, "");
    assertThat(bags.fillEmpty(headBolts(1, 4))).as("used up").isInstanceOf(BagOutcome.Logged.class);
  }

  @Test
  void tooManyAreAsWrongAsTooFew() {
    bags.fill(headBolts(1, 10));
    assertThat(bags.move(1, Whereabouts.FITTED, 11, "").sentence()).contains("1 piece too many");
    assertThat(bags.move(1, Whereabouts.FITTED, 11, "one is a spare"))
        .isInstanceOf(BagOutcome.Logged.class);
  }

  @Test
  void filledAgainItIsMendedWhereItLies() {
    bags.fill(headBolts(1, 10));
    bags.move(1, Whereabouts.WASHING, 0, "");
    bags.fill(headBolts(1, 9));
    assertThat(bag(1).where()).isEqualTo(Whereabouts.WASHING);
    assertThat(bag(1).filled().pieces()).isEqualTo(9);
  }

  @Test
  void aBagThatIsUsedUpTakesOtherThings() {
    bags.fill(headBolts(1, 10));
    bags.move(1, Whereabouts.FITTED, 10, "");
    bags.fill(new BagFilled(1, "nuts", 0, "", 4, List.of(), "", AtAssembly.NOT_SAID));
    assertThat(bag(1).where()).isEqualTo(Whereabouts.OUT);
  }

  /** The machine shop's slip goes by the name. */
  @Test
  void aBagThatIsAtTheShopKeepsItsName() {
    bags.fill(headBolts(1, 10));
    bags.move(1, Whereabouts.AT_SHOP, 0, "");
    BagFilled other = new BagFilled(1, "studs", 0, "", 10, List.of(), "", AtAssembly.NOT_SAID);
    assertThat(bags.mend(other)).isInstanceOf(BagOutcome.Refused.class);
    assertThat(bags.mend(headBolts(1, 9))).isInstanceOf(BagOutcome.Logged.class);
    assertThat(bag(1).where()).isEqualTo(Whereabouts.AT_SHOP);
  }

  @Test
  void aWordMendedOfABagThatIsUsedUpLeavesItUsedUp() {
    bags.fill(headBolts(1, 10));
    bags.move(1, Whereabouts.FITTED, 10, "");
    long before = job.sequence();
    assertThat(bags.mend(headBolts(1, 9))).isInstanceOf(BagOutcome.Logged.class);
    assertThat(bag(1).where()).isEqualTo(Whereabouts.FITTED);
    assertThat(bag(1).filled().pieces()).isEqualTo(9);
    assertThat(BagBook.of(job.state()).openBags()).isEmpty();
    assertThat(job.sequence()).as("one act").isEqualTo(before + 1);
    job.undo();
    assertThat(bag(1).filled().pieces()).isEqualTo(10);
    assertThat(bag(1).where()).isEqualTo(Whereabouts.FITTED);
  }

  @Test
  void itsTagIsKnownBeforeAnythingIsInIt() {
    TagBook book = new TagBook(job.state(), engine -> Optional.empty());
    assertThat(book.find(book.bag(7).digits())).isEqualTo(new CodeLookup.ABag(7, Optional.empty()));
    bags.fill(headBolts(7, 10));
    assertThat(
            new TagBook(job.state(), engine -> Optional.empty()).find(book.bag(7).digits()).words())
        .isEqualTo("bag 7: head bolts, long");
    assertThat(BagBook.of(job.state()).nextEmpty()).isEqualTo(8);
  }

  @Test
  void whatCannotBeIsRefusedAndChangesNothing() {
    int entries = job.history().size();
    assertThat(bags.fill(headBolts(0, 10))).isInstanceOf(BagOutcome.Refused.class);
    assertThat(bags.fill(headBolts(1, 0))).isInstanceOf(BagOutcome.Refused.class);
    assertThat(bags.move(1, Whereabouts.FITTED, 0, "")).isInstanceOf(BagOutcome.Refused.class);
    List<BoltHole> twice = List.of(hole(1), hole(1));
    assertThat(bags.fill(new BagFilled(1, "bolts", 0, "", 2, twice, "", AtAssembly.DRY)))
        .isInstanceOf(BagOutcome.Refused.class);
    assertThat(bags.fill(new BagFilled(1, "bolts", 9, "", 2, List.of(), "", AtAssembly.DRY)))
        .isInstanceOf(BagOutcome.Refused.class);
    assertThat(job.history()).hasSize(entries);
  }
}
