package wherefrom.ui.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import javafx.scene.shape.Rectangle;
import org.junit.jupiter.api.Test;
import wherefrom.drawing.Sign;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.Judgement;
import wherefrom.job.measure.Instruments;
import wherefrom.job.measure.Measuring;
import wherefrom.quantity.Dimension;
import wherefrom.ui.Toolkit;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;
import wherefrom.workings.catalogue.accept.Acceptance.Ruling;

class ReadingBarTest {
  /** The ring of "another part is fitted" would say something else than the record. */
  @Test
  void aReadingHasTheMarksOfTheRecord() {
    assertThat(ReadingBar.sign(Ruling.REJECT)).isEqualTo(Sign.FAILED);
    assertThat(ReadingBar.sign(Ruling.UNDECIDED)).isEqualTo(Sign.OPEN);
    assertThat(ReadingBar.sign(Ruling.ACCEPT)).isEqualTo(Sign.FITTED);
  }

  /** A reading far past its limit stands at the end of the line, and nothing of it beyond. */
  @Test
  void aReadingFarOffStaysWithinItsBar() {
    SampleJob sample = SampleJob.apart();
    new Instruments(sample.job).list("DIAL", Dimension.LENGTH, "0.0001", "0.0001", "0.0001");
    new Instruments(sample.job).limit("pushrod-runout", "value", "", "0.001", "manual, page 6");
    Subject pushrod = Subject.ofPart(sample.part("pushrod@3EX").item());
    new Measuring(sample.job)
        .take(
            new Measuring.Entry(
                pushrod, "pushrod-runout", "DIAL", Map.of("middle", List.of("0.0300")), true, ""));
    Judgement judged =
        sample.job.state().measures().listResults(pushrod).get(0).judgements().get(0);
    Toolkit.on(
        () -> {
          SampleWindow window = new SampleWindow(96, 100);
          ReadingBar bar = new ReadingBar(window.shell.context().touch(), judged);
          bar.resize(500, bar.minHeight(500));
          bar.layout();
          assertThat(bar.getChildrenUnmodifiable())
              .filteredOn(Rectangle.class::isInstance)
              .isNotEmpty()
              .allSatisfy(node -> assertThat(node.getBoundsInParent().getMaxX()).isLessThan(500.5));
          return 0;
        });
  }

  /** A long name stands above its figure, whole, where one line has no room for both. */
  @Test
  void theNameOfAReadingIsNotCut() {
    SampleJob sample = SampleJob.apart();
    new Instruments(sample.job).list("DIAL", Dimension.LENGTH, "0.0001", "0.0001", "0.0001");
    new Instruments(sample.job).limit("lifter-crown", "value", "0.0005", "", "manual, page 6-12");
    Subject lifter = Subject.ofPart(sample.part("lifter@3EX").item());
    new Measuring(sample.job)
        .take(
            new Measuring.Entry(
                lifter, "lifter-crown", "DIAL", Map.of("crown", List.of("0.0011")), true, ""));
    Judgement judged = sample.job.state().measures().listResults(lifter).get(0).judgements().get(0);
    Toolkit.on(
        () -> {
          SampleWindow window = new SampleWindow(96, 100);
          ReadingBar bar = new ReadingBar(window.shell.context().touch(), judged);
          bar.resize(300, bar.minHeight(300));
          bar.layout();
          FitText name = (FitText) bar.getChildrenUnmodifiable().get(0);
          FitText value = (FitText) bar.getChildrenUnmodifiable().get(1);
          assertThat(name.leastLineWidth()).isLessThanOrEqualTo(name.getWidth());
          assertThat(name.getBoundsInParent().getMaxY())
              .isLessThanOrEqualTo(value.getBoundsInParent().getMinY());
          bar.resize(160, bar.minHeight(160));
          bar.layout();
          assertThat(name.leastLines(name.getWidth())).isEqualTo(2);
          assertThat(name.getHeight()).isGreaterThan(1.9 * value.getHeight());
          return 0;
        });
  }
}
