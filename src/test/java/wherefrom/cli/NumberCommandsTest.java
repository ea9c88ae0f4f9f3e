package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.job.money.MoneyBook;
import wherefrom.job.numbers.PlanBook;
import wherefrom.rules.consequence.Article;
import wherefrom.workings.catalogue.Workings;

class NumberCommandsTest {
  /** Circle Track, "Compression Ratio Rules", May 2004: the example with every term, 9.01. */
  private static final List<String> MAGAZINE =
      List.of(
          "bore=4.00in",
          "stroke=3.48in",
          "chamber=70cc",
          "gasket-bore=4.00in",
          "gasket-thickness=0.020in",
          "deck=0.050in",
          "piston-volume=5cc");

  @TempDir Path folder;
  private Shop shop;

  @BeforeEach
  void begin() {
    shop = new Shop(folder);
  }

  private Shop.Outcome workings(String name, List<String> figures, String... more) {
    List<String> words = new ArrayList<>(List.of("workings", name));
    words.addAll(List.of(more));
    words.addAll(figures);
    return shop.run(words.toArray(String[]::new));
  }

  @Test
  void listsEveryWorking() {
    assertThat(shop.right("workings").lines()).hasSize(Workings.all().size());
    assertThat(shop.right("workings", "coil-bind", "--about").out())
        .contains("Source: ", "Not known: ", "solid-height");
  }

  @Test
  void worksTheRatioOfTheMagazine() throws IOException {
    Shop.Outcome outcome = workings("compression-ratio", MAGAZINE, "--json");
    JsonNode ratio = new ObjectMapper().readTree(outcome.out()).path("results").get(0);
    assertThat(ratio.path("key").asText()).isEqualTo("ratio");
    assertThat(ratio.path("value").asDouble()).isCloseTo(9.0146, within(5e-5));
  }

  @Test
  void tellsTheBandAndWhatToMeasureBetter() {
    List<String> figures = new ArrayList<>(MAGAZINE);
    figures.set(2, "chamber=70cc±0.5cc");
    figures.set(5, "deck=0.050in+-0.0005in");
    assertThat(workings("compression-ratio", figures).lines().get(0))
        .startsWith("ratio\t9.0")
        .contains("±")
        .contains("comes from: chamber");
  }

  @Test
  void solvesForAnyOneUnknownAndSaysWhenThereIsNoAnswer() {
    for (int at : new int[] {2, 4, 5, 6}) {
      List<String> known = new ArrayList<>(MAGAZINE);
      String unknown = known.remove(at).split("=", 2)[0];
      known.add("ratio=9.0146");
      Shop.Outcome outcome = workings("compression-ratio", known, "--solve", unknown);
      assertThat(outcome.status()).as(outcome.err()).isZero();
      assertThat(outcome.lines().get(0)).startsWith(unknown + "\t");
      assertThat(outcome.lines().get(1)).startsWith("ratio\t9.0146");
    }
    List<String> known = new ArrayList<>(MAGAZINE);
    known.remove(5);
    known.add("ratio=0.5");
    Shop.Outcome none = workings("compression-ratio", known, "--solve", "deck");
    assertThat(none.status()).isEqualTo(1);
    assertThat(none.out()).contains("No value of deck");
  }

  @Test
  void solvesForTheCutOfHeadAndDeck() {
    List<String> known = new ArrayList<>(MAGAZINE);
    known.addAll(List.of("opening=0.165cc/thou", "deck-cut=0in", "ratio=9.5"));
    Shop.Outcome head = workings("ratio-after-cut", known, "--solve", "head-cut");
    assertThat(head.out()).startsWith("head-cut\t0.0");
    known.set(8, "head-cut=0in");
    Shop.Outcome deck = workings("ratio-after-cut", known, "--solve", "deck-cut");
    assertThat(deck.out()).startsWith("deck-cut\t0.0");
  }

  @Test
  void saysWhatIsMissingOrWrong() {
    Shop.Outcome missing = shop.run("workings", "retainer-to-seal", "lift=0.450in");
    assertThat(missing.status()).isEqualTo(2);
    assertThat(missing.err()).contains("Still needed: seal gap.");
    assertThat(shop.run("workings", "no-such").err()).contains("no working \"no-such\"");
    assertThat(shop.run("workings", "coil-bind", "lift=5").err()).contains("has no unit");
    assertThat(workings("compression-ratio", MAGAZINE, "--solve", "color").err())
        .contains("not a figure");
    assertThat(workings("compression-ratio", MAGAZINE, "--solve", "deck").err())
        .contains("RESULT=VALUE");
    assertThat(
            shop.run("workings", "coil-bind", "--solve", "lift", "x=1in", "solid-height=1in").err())
        .isNotEmpty();
  }

  @Test
  void plansSideBySide() {
    Shop.Outcome outcome =
        shop.right(
            "plan",
            "numbers",
            "--now",
            String.join(",", MAGAZINE) + ",opening=0.165cc/thou",
            "--idea",
            "target=9.5",
            "target=10,deck-cut=0.010in");
    assertThat(outcome.out()).contains("== now", "== idea 1", "== idea 2", "The heads are milled.");
    assertThat(outcome.lines().stream().filter(line -> line.startsWith("ratio\t")).toList())
        .hasSize(3)
        .element(1)
        .asString()
        .startsWith("ratio\t9.5000");
    assertThat(shop.run("plan", "numbers", "--now", "bore=3.87").err()).contains("has no unit");
    assertThat(shop.run("plan", "numbers").status()).isEqualTo(2);
    assertThat(shop.run("plan", "numbers", "--now", "bore=3.87in", "--idea", "a", "b").status())
        .isEqualTo(2);
  }

  @Test
  void showsTheKeptPlanWithPartsAndMoneyAndPrintsItsPlots() throws IOException {
    String job = shop.begin("engine");
    shop.change(
        job,
        open -> {
          PlanBook book = new PlanBook(open);
          MAGAZINE.forEach(f -> book.set(0, f.split("=", 2)[0], f.split("=", 2)[1]));
          book.set(0, "opening", "0.165 cc/thou");
          book.add(1);
          book.set(1, "target", "9.5");
          new MoneyBook(open).setPrice(Article.read("head gaskets"), "20");
        });
    Shop.Outcome outcome = shop.right("plan", "numbers", "--job", job);
    assertThat(outcome.out())
        .contains("2 × head gaskets, 40.00 (rule 14)")
        .contains("2 × head milled, no price typed (rule 14)")
        .contains("cost\t40.00");
    Path pdf = folder.resolve("record.pdf");
    shop.right("record", "--job", job, "--out", pdf.toString());
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      assertThat(new PDFTextStripper().getText(document))
          .contains("Idea 1: Compression ratio against the cut", "cut off the head, in");
    }
  }

  private static List<String> withCommas(List<String> figures) {
    return figures.stream().map(figure -> figure.replace('.', ',')).toList();
  }

  @Test
  void aDecimalCommaIsReadLikeAPoint() {
    assertThat(workings("compression-ratio", withCommas(MAGAZINE), "--json").out())
        .isEqualTo(workings("compression-ratio", MAGAZINE, "--json").out());
    List<String> uncertain = List.of("lift=11,4mm±0,05", "installed-height=43,2mm+-0,1mm max");
    List<String> all = new ArrayList<>(uncertain);
    all.add("solid-height=29,2mm");
    List<String> points = all.stream().map(figure -> figure.replace(',', '.')).toList();
    assertThat(workings("coil-bind", all).out()).isEqualTo(workings("coil-bind", points).out());
  }

  @Test
  void aPlanTellsTheCommaOfAFigureFromTheCommaBetweenTwo() {
    String[] points = {
      "plan",
      "numbers",
      "--now",
      String.join(",", MAGAZINE) + ", opening=0.165cc/thou",
      "--idea",
      "target=9.5",
      "target=10.5,deck-cut=0.010in"
    };
    String[] commas = {
      "plan",
      "numbers",
      "--now",
      String.join(",", withCommas(MAGAZINE)) + ", opening=0,165cc/thou,",
      "--idea",
      "target=9,5",
      "target=10,5,deck-cut=0,010in"
    };
    assertThat(shop.right(commas).out()).isEqualTo(shop.right(points).out());
    assertThat(shop.right(commas).out()).contains("ratio\t10.5");
  }

  @Test
  void aThousandsMarkIsRefusedWithASentence() {
    for (String figure : List.of("lift=1,234.5mm", "lift=1.234,5mm", "lift=1 234mm")) {
      Shop.Outcome working = shop.run("workings", "coil-bind", figure);
      Shop.Outcome plan = shop.run("plan", "numbers", "--now", figure.replace("lift", "stroke"));
      for (Shop.Outcome outcome : List.of(working, plan)) {
        assertThat(outcome.status()).as(figure).isEqualTo(2);
        assertThat(outcome.err()).contains("no thousands mark");
      }
    }
    assertThat(shop.run("plan", "numbers", "--now", "bore=3.87in,5").status()).isEqualTo(2);
  }

  @Test
  void everyOtherTypedNumberTakesADecimalCommaToo() {
    String job = shop.begin("engine");
    shop.right(
        "tool",
        "add",
        "--job",
        job,
        "--name",
        "mic",
        "--step",
        "0,0001in",
        "--error",
        "0,0001in",
        "--repeat",
        "0,0001in");
    shop.right("tool", "zero", "--job", job, "--name", "mic", "--shows", "0,0003in");
    assertThat(shop.right("tool", "list", "--job", job).out()).contains("zero: 0.0003 in");
    shop.right(
        "limit",
        "set",
        "--job",
        job,
        "--plan",
        "main-journal",
        "--result",
        "taper",
        "--upper",
        "0,0005in",
        "--source",
        "manual, page 6-12");
    shop.right("money", "price", "--job", job, "--what", "lifters", "--amount", "12,50");
    assertThat(shop.right("money", "effect", "--job", job, "--change", "new-flat-cam").out())
        .contains("+16 lifters, +1 cam (no price typed)", "Total at least 230.00 USD");
    assertThat(
            shop.run("money", "price", "--job", job, "--what", "cam", "--amount", "1,234.50")
                .status())
        .isEqualTo(2);
    String[] sizes = {"2,6100in", "2,6099in/2,6101in", "2,6100in", "2,6100in"};
    List<String> words =
        new ArrayList<>(
            List.of("measure", "--job", job, "--plan", "main-journal", "--tool", "mic"));
    words.add("main-journal@M2");
    words.addAll(List.of(sizes));
    assertThat(shop.right(words.toArray(String[]::new)).out()).contains("2.6100");
  }
}
