package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.engine.ReadyLayouts;
import wherefrom.logbook.Written;
import wherefrom.parts.PartKind;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;
import wherefrom.quantity.UnitSystem;

/**
 * Two engines on one shelf whose numbers are alike modulo 97: every typed code of one is right in
 * the other's job, so it is asked whose it is.
 */
class TypedCodeTest {
  private static final int OURS = 3681950;
  private static final int THEIRS = 8044137;
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-03-01T10:00:00Z"), ZoneOffset.UTC);

  @TempDir Path folder;
  private Shop shop;
  private String job;
  private String other;
  private Shop.Codes codes;
  private String typedTag;
  private String typedCard;

  @BeforeEach
  void begin() {
    shop = new Shop(folder);
    job = engine("ours", OURS);
    other = engine("theirs", THEIRS);
    codes = shop.codes(job, "cylinder 3, exhaust, pushrod");
    typedTag = TagCode.find(codes.tag()).orElseThrow().typed().replace(" ", "");
    typedCard = TagCode.find(codes.card()).orElseThrow().typed().replace(" ", "");
  }

  private String engine(String name, int engine) {
    Written.job(
        folder.resolve(name),
        CLOCK,
        wherefrom.job.entry.JobOpened.of(
            name,
            engine,
            ReadyLayouts.find("v8-odd-even").orElseThrow(),
            PartKind.alwaysOn(),
            UnitSystem.INCH));
    return shop.path(name);
  }

  private long entries() {
    long[] count = new long[1];
    shop.change(job, open -> count[0] = open.history().size());
    return count[0];
  }

  @Test
  void theCodesOfTheTwoAreTheSame() {
    Shop.Codes theirs = shop.codes(other, "cylinder 3, exhaust, pushrod");
    assertThat(TagCode.find(theirs.tag()).orElseThrow().typed().replace(" ", ""))
        .isEqualTo(typedTag);
  }

  @Test
  void aTypedCodeIsNoRightPlaceUntilItIsConfirmed() {
    shop.right("out", "--job", job, codes.tag());
    long before = entries();
    Shop.Outcome asked = shop.run("fit", "--job", job, typedTag, typedCard);
    assertThat(entries()).as("a question is no stop").isEqualTo(before);
    assertThat(asked.status()).isEqualTo(1);
    assertThat(asked.lines().get(0)).isEqualTo("which engine");
    assertThat(asked.lines().get(1))
        .contains("is cylinder 3, exhaust, pushrod; it also fits job theirs.")
        .contains("Scan the tag, or confirm it is this engine's.")
        .contains("--this-engine");
    assertThat(shop.state(job, "cylinder 3, exhaust, pushrod")).isEqualTo("out");
    Shop.Outcome half = shop.run("fit", "--job", job, codes.tag(), typedCard);
    assertThat(half.lines().get(0)).isEqualTo("which engine");
    assertThat(shop.right("fit", "--job", job, "--this-engine", typedTag, typedCard).lines().get(0))
        .isEqualTo("right place");
  }

  @Test
  void theSixteenDigitsNeedNoWord() {
    shop.right("out", "--job", job, codes.tag());
    assertThat(shop.right("fit", "--job", job, codes.tag(), codes.card()).lines().get(0))
        .isEqualTo("right place");
  }

  @Test
  void takingApartAsksToo() {
    long before = entries();
    Shop.Outcome asked = shop.run("out", "--job", job, typedTag);
    assertThat(entries()).as("a question is no stop").isEqualTo(before);
    assertThat(asked.status()).isEqualTo(1);
    assertThat(asked.out()).contains("which engine");
    assertThat(shop.state(job, "cylinder 3, exhaust, pushrod")).isEqualTo("in");
    shop.right("out", "--job", job, "--this-engine", typedTag);
    assertThat(shop.state(job, "cylinder 3, exhaust, pushrod")).isEqualTo("out");
  }

  /**
   * Whatever command takes a code: nothing is logged, status 1, and with the word it goes through.
   */
  @Test
  void everyCommandThatTakesACodeAsks() {
    shop.right("out", "--job", job, codes.tag());
    assertThat(shop.run("where", "--job", job, typedTag).out()).contains("which engine");
    String[][] calls = {
      {"wash", "--basket", "2"},
      {"lost"},
      {"found"},
      {"note", "--text", "x"},
      {"decide", "--as", "reuse", "--reason", "x"},
      {"decide propose"},
      {"inspect"},
      {"measure"},
      {"photo"},
      {"shop send", "--visit", "1", "--wanted", "x"},
      {"shop back"},
      {"leave-empty", "--reason", "x"},
      {"reprint", "--reason", "tag lost"},
    };
    for (String[] call : calls) {
      long before = entries();
      Shop.Outcome asked = run(call);
      assertThat(asked.status()).as(String.join(" ", call) + asked).isEqualTo(1);
      assertThat(asked.err()).contains("it also fits job theirs", "--this-engine");
      assertThat(entries()).isEqualTo(before);
      assertThat(run(call, "--this-engine").status()).as(String.join(" ", call)).isZero();
    }
  }

  private Shop.Outcome run(String[] call, String... more) {
    java.util.List<String> words = new java.util.ArrayList<>(java.util.List.of(call[0].split(" ")));
    words.addAll(java.util.List.of("--job", job));
    words.addAll(java.util.List.of(call).subList(1, call.length));
    words.addAll(java.util.List.of(more));
    words.add(typedTag);
    return shop.run(words.toArray(String[]::new));
  }

  /** A code that only this engine has asks nothing, and the other job may grow meanwhile. */
  @Test
  void onlyCodesThatTheOtherJobHasAsk() {
    shop.right("out", "--job", job, codes.tag());
    String fresh =
        shop.right("replace", "--job", job, "--reason", "worn", codes.tag()).rows().get(0)[0];
    String typed = TagCode.find(fresh).orElseThrow().typed().replace(" ", "");
    assertThat(shop.run("where", "--job", job, typed).status()).isZero();
    Shop.Codes theirs = shop.codes(other, "cylinder 3, exhaust, pushrod");
    shop.right("replace", "--job", other, "--reason", "worn", theirs.tag());
    assertThat(shop.run("where", "--job", job, typed).status()).isEqualTo(1);
  }

  /** The same six digits on an own tag and on an action card. */
  @Test
  void aCodeWithTwoMeaningsInThisJobIsNotGuessed() {
    String action = new TagCode(TagType.ACTION_CARD, 0, 1, 1).typed().replace(" ", "");
    int engine = 1;
    while (!TagCode.typedAlike(engine, TagType.PART, 0, TagType.ACTION_CARD)) {
      engine++;
    }
    String third = engine("third", engine);
    Shop.Outcome asked = shop.run("where", "--job", third, action);
    assertThat(asked.status()).isEqualTo(1);
    assertThat(asked.out())
        .contains("cylinder 1, intake, rocker, or action card: UNDO")
        .contains("Scan the tag, or type its sixteen digits.");
    assertThat(shop.run("where", "--job", third, "--this-engine", action).status()).isEqualTo(1);
  }

  @Test
  void aNewJobIsDrawnApartFromWhatIsOnTheShelf() {
    for (int at = 0; at < 4; at++) {
      String begun = shop.begin("new-" + at);
      Shop.Codes drawn = shop.codes(begun, "cylinder 3, exhaust, pushrod");
      String typed = TagCode.find(drawn.tag()).orElseThrow().typed().replace(" ", "");
      assertThat(shop.run("where", "--job", begun, typed).status()).isZero();
      assertThat(shop.run("where", "--job", job, typed).status()).isEqualTo(1);
    }
  }
}
