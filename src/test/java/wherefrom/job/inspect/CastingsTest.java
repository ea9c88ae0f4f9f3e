package wherefrom.job.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.BenchJob;
import wherefrom.job.bags.BagBook;
import wherefrom.job.bags.BigParts;
import wherefrom.job.entry.FeatureDecided;
import wherefrom.job.entry.SubjectPhotographed;
import wherefrom.job.puttogether.FirstStart;
import wherefrom.job.record.BuildRecord;

/** Block and heads, from the first test to what becomes of them. */
class CastingsTest {
  private static final Subject BLOCK = new Subject.AFeature(Feature.BLOCK, "");

  private final BenchJob bench = BenchJob.v8();
  private final Castings castings = new Castings(bench.job);

  private Castings.Casting find(String subject) {
    return castings.find(subject).orElseThrow();
  }

  private void answer(String check, Look look) {
    assertThat(new Inspecting(bench.job).answer(BLOCK, check, look, "rear left"))
        .isInstanceOf(Inspecting.Answer.Kept.class);
  }

  @Test
  void aV8HasABlockAndTwoHeads() {
    assertThat(castings.list())
        .extracting(one -> one.subject().key())
        .containsExactly("block@", "head@left", "head@right");
  }

  @Test
  void aTestThatSpeaksAgainstItStaysOpenUntilSomeoneDecides() {
    find("block@").cards().forEach(card -> answer(card.check().key(), Look.PASS));
    assertThat(find("block@").isOpen()).isFalse();
    answer("block-threads", Look.FAIL);
    assertThat(find("block@").isOpen()).isTrue();
    assertThat(castings.decide("block@", Decision.MACHINE, " insert ")).isEmpty();
    assertThat(find("block@").isOpen()).isFalse();
    assertThat(find("block@").reason()).isEqualTo("insert");
  }

  @Test
  void aTestLeftIsOpenWhateverWasDecided() {
    castings.decide("block@", Decision.REUSE, "");
    assertThat(find("block@").isOpen()).isTrue();
  }

  @Test
  void aHeadThatIsABigPartHasOneDecisionForBoth() {
    castings.decide("head@left", Decision.REUSE, "");
    assertThat(last()).isInstanceOf(FeatureDecided.class);
    new BigParts(bench.job).nameUsual();
    castings.decide("head@left", Decision.MACHINE, "warped");
    assertThat(
            BagBook.of(bench.job.state()).bigParts().stream()
                .filter(part -> part.words().equals("left head"))
                .map(part -> part.decision().orElseThrow()))
        .containsExactly(Decision.MACHINE);
    assertThat(find("head@left").decision()).contains(Decision.MACHINE);
    assertThat(find("head@right").decision()).isEmpty();
  }

  /** With one head alone its big part names no bank, as the block names no place. */
  @Test
  void theBlockOfAnInlineEngineIsNotDecidedWithItsHead() {
    BenchJob inline = BenchJob.inline4();
    new BigParts(inline.job).nameUsual();
    Castings all = new Castings(inline.job);
    String head = all.list().get(1).subject().key();
    all.decide("block@", Decision.REPLACE, "cracked");
    assertThat(all.find("block@").orElseThrow().decision()).contains(Decision.REPLACE);
    assertThat(all.find(head).orElseThrow().decision()).isEmpty();
    all.decide(head, Decision.REUSE, "");
    assertThat(all.find("block@").orElseThrow().decision()).contains(Decision.REPLACE);
    assertThat(
            BagBook.of(inline.job.state()).bigParts().stream()
                .flatMap(part -> part.decision().stream()))
        .containsExactly(Decision.REUSE);
  }

  @Test
  void aTestThatFailsLaterOpensWhatWasToBeReused() {
    find("block@").cards().forEach(card -> answer(card.check().key(), Look.PASS));
    castings.decide("block@", Decision.REUSE, "sound");
    answer("block-crack", Look.FAIL);
    assertThat(find("block@").isOpen()).isTrue();
    assertThat(find("block@").decision()).isEmpty();
    assertThat(find("block@").decided()).isEqualTo("open again, was reuse");
    assertThat(new FirstStart(bench.job).points())
        .extracting(FirstStart.Point::words)
        .contains("Block: a test says fail.");
    castings.decide("block@", Decision.REUSE, "pinned, pressure tested");
    assertThat(find("block@").decision()).contains(Decision.REUSE);
    answer("block-threads", Look.SUSPECT);
    assertThat(find("block@").isOpen()).isTrue();
    answer("block-threads", Look.PASS);
    assertThat(find("block@").decision()).contains(Decision.REUSE);
  }

  @Test
  void aHeadThatComesOffAgainIsDecidedAnew() {
    BigParts parts = new BigParts(bench.job);
    parts.nameUsual();
    int head =
        BagBook.of(bench.job.state()).bigParts().stream()
            .filter(part -> part.words().equals("left head"))
            .findFirst()
            .orElseThrow()
            .number();
    parts.off(head, "with all on it");
    castings.decide("head@left", Decision.REUSE, "sound");
    parts.on(head, "bare");
    assertThat(find("head@left").decision()).contains(Decision.REUSE);
    parts.off(head, "it seeps");
    assertThat(find("head@left").decided()).isEqualTo("open again, was reuse");
    assertThat(find("head@left").isOpen()).isTrue();
    assertThat(new FirstStart(bench.job).points())
        .extracting(FirstStart.Point::words)
        .contains("Left head came off again: nobody has decided since.");
    castings.decide("head@left", Decision.MACHINE, "milled");
    assertThat(find("head@left").decision()).contains(Decision.MACHINE);
  }

  private Object last() {
    List<?> standing = bench.job.state().standing().stream().map(one -> one.entry()).toList();
    return standing.get(standing.size() - 1);
  }

  @Test
  void whatIsNoCastingIsNotDecidedAbout() {
    assertThat(castings.decide("lobe@3EX", Decision.REUSE, ""))
        .contains("This engine has no casting \"lobe@3EX\".");
  }

  @Test
  void photographsAreCountedAndTheRecordSaysAll() {
    bench.record(new SubjectPhotographed("block@", "block-crack", "a.jpg", ""));
    answer("block-crack", Look.FAIL);
    castings.decide("block@", Decision.REPLACE, "cracked");
    assertThat(find("block@").photographs()).isEqualTo(1);
    assertThat(
            BuildRecord.of(bench.job).sections().stream()
                .filter(section -> section.title().equals("Castings"))
                .flatMap(section -> section.rows().stream())
                .map(row -> String.join(" | ", row.cells())))
        .contains(
            "block | Any crack in the block? | fail | rear left",
            "block | Decided | replace | 1 photographed; cracked");
  }
}
