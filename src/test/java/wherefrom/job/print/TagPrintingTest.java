package wherefrom.job.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.job.handling.Handling;
import wherefrom.parts.PartKind;
import wherefrom.ui.sample.SampleJob;

class TagPrintingTest {
  private final SampleJob sample = SampleJob.whole();
  private final TagPrinting printing = new TagPrinting(sample.job);

  @Test
  void aWholeV8NeedsSeventyFourTagsAndFortyTwoPlaceCards() {
    assertThat(printing.faces(new TagChoice.AllParts())).hasSize(74);
    assertThat(printing.faces(new TagChoice.PlaceCards())).hasSize(42);
    assertThat(printing.faces(new TagChoice.OfKind(PartKind.PUSHROD))).hasSize(16);
    assertThat(printing.faces(new TagChoice.ActionCards())).hasSize(6);
    assertThat(printing.faces(new TagChoice.Baskets(5))).hasSize(5);
    assertThat(printing.faces(new TagChoice.ScannerSetUp())).containsExactly(ScannerFace.card());
  }

  @Test
  void whatIsPrintedIsNotPrintedAgainUntilItsTagIsLost() {
    TagChoice notYet = new TagChoice.NotYetPrinted();
    printing.printed(printing.faces(notYet), "hang-tag-5");
    assertThat(printing.faces(notYet)).isEmpty();
    new Handling(sample.job).reissue(12, "tag lost");
    List<Face> again = printing.faces(notYet);
    assertThat(again).hasSize(1);
    assertThat(((TagFace) again.get(0)).code().item()).isEqualTo(12);
    assertThat(((TagFace) again.get(0)).code().issue()).isEqualTo(2);
  }

  @Test
  void aNewPartsTagIsMarkedAndTheRetiredOneIsNotPrinted() {
    new Handling(sample.job).replace(12, "broken");
    assertThat(printing.faces(new TagChoice.AllParts())).hasSize(74);
    assertThat(printing.faces(new TagChoice.OnePart(12))).isEmpty();
    TagFace fresh = (TagFace) printing.faces(new TagChoice.OnePart(75)).get(0);
    assertThat(fresh.fresh()).isTrue();
  }
}
