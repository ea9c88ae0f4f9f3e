package wherefrom.job.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.job.BenchJob;
import wherefrom.job.Benches;
import wherefrom.job.pages.RecordLine;
import wherefrom.job.puttogether.Fitting;

/** Each part stands on one sheet, at the place where it is; at its home it is told where. */
class RecordLinesTest {
  private final BenchJob bench = BenchJob.v8().reuseAll();
  private final Fitting fitting = new Fitting(bench.job);

  private List<String> at(String place) {
    return new RecordLines(bench.job.state())
        .of(Benches.place(place)).stream().map(RecordLinesTest::words).toList();
  }

  private static String words(RecordLine line) {
    return line.name() + ": " + line.told();
  }

  @Test
  void aPartThatIsOutStandsAtItsHome() {
    assertThat(at("pushrod@3EX")).containsExactly("pushrod: reuse");
  }

  @Test
  void aPartThatIsFittedElsewhereStandsThereAndTheOneOfThatPlaceIsNotIn() {
    fitting.fitOnPurpose(bench.part("pushrod@3EX"), Benches.spot("5EX"), "matched pair");
    assertThat(at("pushrod@3EX")).containsExactly("pushrod, own: fitted at 5 EX");
    assertThat(at("pushrod@5EX"))
        .containsExactly("pushrod, from 3 EX: reuse", "pushrod, own, not in: reuse");
  }

  @Test
  void twoThatChangedPlacesEachTellWhereTheOtherIs() {
    fitting.fitOnPurpose(bench.part("pushrod@3EX"), Benches.spot("5EX"), "matched pair");
    fitting.fitOnPurpose(bench.part("pushrod@5EX"), Benches.spot("3EX"), "matched pair");
    assertThat(at("pushrod@3EX"))
        .containsExactly("pushrod, from 5 EX: reuse", "pushrod, own: fitted at 5 EX");
    assertThat(at("pushrod@5EX"))
        .containsExactly("pushrod, from 3 EX: reuse", "pushrod, own: fitted at 3 EX");
  }
}
