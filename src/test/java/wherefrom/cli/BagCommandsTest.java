package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bags and big parts, as a script sees them. */
class BagCommandsTest {
  @TempDir Path folder;
  private Shop shop;
  private String job;

  @BeforeEach
  void begin() {
    shop = new Shop(folder);
    job = shop.begin("engine");
  }

  private String code(String words) {
    return shop.right("big", "list", "--job", job).rows().stream()
        .filter(row -> row[2].equals(words))
        .findFirst()
        .orElseThrow()[1];
  }

  @Test
  void aBagIsFilledForAHeadAndCountedWhenItIsUsed() {
    shop.right("big", "add", "--job", job);
    String head = code("left head");
    shop.right(
        "bag",
        "fill",
        "--job",
        job,
        "--what",
        "head bolts, long",
        "--count",
        "10",
        "--for",
        head,
        "--with",
        "sealer",
        "--hole",
        "1@10:50=2.5in",
        "2",
        "--",
        "3");
    String[] row = shop.right("bag", "list", "--job", job).rows().get(0);
    assertThat(row).startsWith("bag 3").endsWith("head bolts, long", "left head", "10", "out");
    Shop.Outcome short9 = shop.run("bag", "used", "--job", job, "--count", "9", row[1]);
    assertThat(short9.status()).isEqualTo(1);
    assertThat(short9.out()).contains("1 piece short", "--note");
    shop.right("bag", "used", "--job", job, "--count", "10", row[1]);
    assertThat(shop.right("bag", "list", "--job", job, "--to-fit").lines()).isEmpty();
    assertThat(shop.right("bag", "list", "--job", job, "--json").out())
        .contains("\"hole\":1,\"across\":10,\"down\":50,\"length\":\"2.5 in\"")
        .contains("\"threads\":\"thread sealer\"");
  }

  @Test
  void aHeadIsAskedAboutUntilWhatIsOverItIsOff() {
    shop.right("big", "add", "--job", job);
    shop.takeApart(job);
    Shop.Outcome asked = shop.run("big", "off", "--job", job, code("left head"));
    assertThat(asked.status()).isEqualTo(1);
    assertThat(asked.out()).startsWith("Usually off first: left exhaust manifold");
    shop.right(
        "big",
        "off",
        "--job",
        job,
        code("left exhaust manifold"),
        code("carburetor"),
        code("intake manifold"),
        code("left valve cover"),
        code("left head"));
    shop.right("big", "mark", "--job", job, "--text", "cast 1234", code("left head"));
    shop.right(
        "big", "decide", "--job", job, "--as", "machine", "--reason", "warped", code("left head"));
    shop.right("big", "shop", "--job", job, code("left head"));
    assertThat(shop.right("big", "list", "--job", job, "--to-fit").rows())
        .anySatisfy(
            row ->
                assertThat(row)
                    .contains("left head", "at the machine shop", "machine", "cast 1234"));
    assertThat(shop.right("big", "gaskets", "--job", job).rows())
        .contains(new String[] {"1", "head gasket", "left head"});
  }

  @Test
  void tagsOfBothArePrintedAndAnUnknownOneIsABadInput() throws IOException {
    shop.right("big", "add", "--job", job);
    String pdf = shop.path("tags.pdf");
    shop.right("tags", "--job", job, "--stock", "roll-2x1", "--out", pdf, "--cards", "bags");
    assertThat(text(pdf)).contains("BAG 1", "BAG 8");
    String big = shop.path("big.pdf");
    shop.right("tags", "--job", job, "--stock", "roll-2x1", "--out", big, "--cards", "big-parts");
    assertThat(text(big)).contains("FRONT COVER", "LEFT HEAD");
    assertThat(shop.run("big", "off", "--job", job, "99").status()).isEqualTo(2);
    assertThat(shop.run("bag", "used", "--job", job, "5").err()).contains("Nothing is in bag 5");
  }

  private static String text(String pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(Path.of(pdf).toFile())) {
      return new PDFTextStripper().getText(document);
    }
  }
}
