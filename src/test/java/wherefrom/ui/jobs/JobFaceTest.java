package wherefrom.ui.jobs;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.drawing.Asked;
import wherefrom.drawing.BelowPanRail;
import wherefrom.drawing.Bounds;
import wherefrom.drawing.CarriersAsTheyAre;
import wherefrom.drawing.Drawing;
import wherefrom.drawing.DrawnAs;
import wherefrom.drawing.EngineAbove;
import wherefrom.drawing.EngineGeometry;
import wherefrom.drawing.Glass;
import wherefrom.drawing.PartState;
import wherefrom.drawing.View;
import wherefrom.job.bags.BagBook;
import wherefrom.job.bags.BigParts;
import wherefrom.job.shelf.Standing;
import wherefrom.parts.BigPartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;
import wherefrom.ui.sample.SampleJob;

/** The small drawing on a job's tag says the same of the heads as the large one. */
class JobFaceTest {
  private final SampleJob sample = SampleJob.whole();

  private Standing headAtTheShop() {
    BigParts parts = new BigParts(sample.job);
    parts.nameUsual();
    int head =
        BagBook.of(sample.job.state()).bigParts().stream()
            .filter(part -> part.words().equals("left head"))
            .findFirst()
            .orElseThrow()
            .number();
    parts.off(head, "for the test");
    parts.move(head, Whereabouts.AT_SHOP, "");
    return Standing.of(sample.job);
  }

  private Drawing small() {
    EngineGeometry at =
        EngineGeometry.of(
            sample.job.state().layout(),
            View.ABOVE,
            new Bounds(0, 0, 480, 240),
            Glass.screen(5.9, 1),
            BelowPanRail.NONE);
    return JobFace.bare(EngineAbove.of(at, Asked.of(sample.job.state().kinds())));
  }

  @Test
  void aHeadThatIsOffIsOneContourWithoutAMark() {
    Drawing drawn = small();
    var off = CarriersAsTheyAre.off(drawn, JobFace.states(headAtTheShop()));
    assertThat(off.values()).containsExactly(PartState.AT_SHOP);
    assertThat(off.keySet()).extracting(one -> one.kind()).containsExactly(BigPartKind.HEAD);
    CarriersAsTheyAre castings = CarriersAsTheyAre.of(drawn, off);
    assertThat(castings.outlines()).hasSize(1);
    assertThat(castings.marks()).isEmpty();
  }

  @Test
  void whatWentWithItIsOutAndTheOtherBankIsIn() {
    Standing standing = headAtTheShop();
    assertThat(look(standing, "rocker@3EX")).isEqualTo(DrawnAs.OUT);
    assertThat(look(standing, "rocker@4EX")).isEqualTo(DrawnAs.IN);
  }

  private static DrawnAs look(Standing standing, String place) {
    return JobFace.states(standing).apply(Place.find(place).orElseThrow()).look();
  }
}
