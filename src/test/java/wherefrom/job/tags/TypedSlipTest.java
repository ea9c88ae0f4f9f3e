package wherefrom.job.tags;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wherefrom.engine.ReadyLayouts;
import wherefrom.job.Benches;
import wherefrom.job.MemoryLogbook;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.takeapart.TakeApart;
import wherefrom.parts.Action;
import wherefrom.parts.Mistyping;
import wherefrom.parts.PartKind;
import wherefrom.quantity.UnitSystem;
import wherefrom.rules.CodeVerdict;
import wherefrom.rules.Verdict;

/** Typed figures with a slip in them: they do nothing that was not asked about. */
class TypedSlipTest {

  private static OpenJob v8(int engine) {
    MemoryLogbook logbook = new MemoryLogbook();
    logbook.append(
        Instant.EPOCH,
        JobOpened.of(
            "Typed",
            engine,
            ReadyLayouts.find("v8-odd-even").orElseThrow(),
            PartKind.all(),
            UnitSystem.INCH));
    return new OpenJob(logbook, Clock.fixed(Instant.EPOCH, ZoneOffset.UTC));
  }

  /** Each digit as each other, and each two neighbors swapped. */
  private static List<String> slips(String digits) {
    List<String> all = new ArrayList<>();
    for (int at = 0; at < digits.length(); at++) {
      for (char other = '0'; other <= '9'; other++) {
        all.add(digits.substring(0, at) + other + digits.substring(at + 1));
      }
      if (at > 0) {
        String before = digits.substring(0, at - 1);
        String swapped = "" + digits.charAt(at) + digits.charAt(at - 1);
        all.add(before + swapped + digits.substring(at + 1));
      }
    }
    all.removeIf(digits::equals);
    return all;
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 1234567, 9182635})
  void noSingleSlipInThePartsOfAV8DoesAnythingUnasked(int engine) {
    OpenJob job = v8(engine);
    TagBook book = new TagBook(job.state(), Benches.NO_NAMES);
    int asked = 0;
    for (PartRecord part : job.state().parts()) {
      String typed = part.part().code(engine).typed().replace(" ", "");
      for (String slip : slips(typed)) {
        CodeLookup found = book.find(slip);
        assertThat(found).as(typed + " as " + slip).isInstanceOf(CodeLookup.Refused.class);
        Verdict verdict = ((CodeLookup.Refused) found).verdict();
        if (verdict instanceof CodeVerdict.AlsoFits question) {
          assertThat(question.near()).containsKey(part.part().code(engine).digits());
          asked++;
        }
      }
    }
    assertThat(asked).as("questions, of which some must come").isPositive();
  }

  /** What a part's own figures stand for is never asked about. */
  @Test
  void thePartsThemselvesAreTakenAsTheyAre() {
    OpenJob job = v8(6408615);
    TagBook book = new TagBook(job.state(), Benches.NO_NAMES);
    for (PartRecord part : job.state().parts()) {
      assertThat(book.find(part.part().code(6408615).typed()))
          .isEqualTo(new CodeLookup.APart(part));
    }
  }

  @Test
  void aTypedActionCardIsRefusedAndLeavesNoEntry() {
    OpenJob job = v8(1234567);
    TagBook book = new TagBook(job.state(), Benches.NO_NAMES);
    int before = job.state().standing().size();
    for (Action action : Action.values()) {
      CodeLookup typed = book.find(action.code().typed());
      TakeApart.Answer answer = new TakeApart(job).out(typed);
      assertThat(answer).isInstanceOf(TakeApart.Answer.Refused.class);
      assertThat(typed.words()).contains("is the card " + action.name());
      assertThat(book.find(action.code().digits())).isEqualTo(new CodeLookup.AnAction(action));
    }
    assertThat(book.find("000148").words()).isEqualTo("000148 is the card UNDO: press UNDO.");
    assertThat(job.state().standing()).hasSize(before);
  }

  @Test
  void aSlipIsOneDigitOrTwoNeighbors() {
    assertThat(Mistyping.isOne("000147", "000148")).isTrue();
    assertThat(Mistyping.isOne("000147", "000174")).isTrue();
    assertThat(Mistyping.isOne("100147", "900147")).isTrue();
    assertThat(Mistyping.isOne("000147", "000147")).isFalse();
    assertThat(Mistyping.isOne("000147", "000158")).isFalse();
    assertThat(Mistyping.isOne("102147", "201147")).isFalse();
    assertThat(Mistyping.isOne("102147", "012174")).isFalse();
    assertThat(Mistyping.isOne("000147", "00014")).isFalse();
  }
}
