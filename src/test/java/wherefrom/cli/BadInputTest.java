package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Calls that cannot be carried out: status 2, a sentence on standard error, nothing changed. */
class BadInputTest {
  @TempDir Path folder;
  private Shop shop;
  private String job;

  @BeforeEach
  void begin() {
    shop = new Shop(folder);
    job = shop.begin("engine");
  }

  /** JOB stands for the job, SHOP for its shop, PART and CARD for two codes of it. */
  private Shop.Outcome call(String line) {
    Shop.Codes codes = shop.codes(job, "cylinder 3, exhaust, pushrod");
    String[] words = line.split(" ");
    for (int at = 0; at < words.length; at++) {
      words[at] =
          switch (words[at]) {
            case "JOB" -> job;
            case "SHOP" -> folder.toString();
            case "PART" -> codes.tag();
            case "CARD" -> codes.card();
            case "EMPTY" -> "";
            default -> words[at].replace("SHOP/", folder + "/");
          };
    }
    return shop.run(words);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "fly",
        "job",
        "job sell",
        "job new --folder SHOP/x --name x",
        "job new --folder SHOP/x --layout v8-odd-even",
        "job new --layout v8-odd-even --name x",
        "job new --folder SHOP/x --layout v9 --name x",
        "job new --folder SHOP/x --layout-file SHOP/none.json --name x",
        "job new --folder SHOP/x --layout inline-4 --name x --track wheel",
        "job new --folder SHOP/x --layout inline-4 --name x --units furlong",
        "job new --folder SHOP/x --layout inline-4 --name EMPTY",
        "job new --folder JOB --layout inline-4 --name x",
        "job list --folder SHOP/none",
        "layouts v9",
        "layouts --color red",
        "stocks more",
        "places",
        "places --job SHOP/none",
        "places --job JOB --job JOB",
        "places --job JOB extra",
        "tags --job JOB --stock none --out SHOP/x.pdf",
        "tags --job JOB --stock roll-2x1",
        "tags --job JOB --stock roll-2x1 --out SHOP/x.pdf --only 999",
        "tags --job JOB --stock roll-2x1 --out SHOP/x.pdf --only CARD",
        "tags --job JOB --stock roll-2x1 --out SHOP/x.pdf --cards aces",
        "tags --job JOB --stock roll-2x1 --out SHOP/x.pdf --start 0",
        "tags --job JOB --stock roll-2x1 --out SHOP/x.pdf --start first",
        "tags --job JOB --stock a4-3x8-63.5x33.9 --out SHOP/x.pdf --start 25",
        "tags --job JOB --stock roll-2x1 --out SHOP/x.pdf --nudge 1",
        "tags --job JOB --stock roll-2x1 --out SHOP/x.pdf --nudge 1,99",
        "tags --job JOB --stock roll-2x1 --out SHOP/x.pdf --dpi 72",
        "tags --job JOB --stock roll-2x1 --out SHOP/x.pdf --cards places --new",
        "read",
        "read SHOP/none.png",
        "read SHOP/none.png --job SHOP/none",
        "out --job JOB",
        "out --job JOB CARD",
        "out PART",
        "where --job JOB",
        "wash --job JOB PART",
        "wash --job JOB --basket 0 PART",
        "wash --job JOB --basket 1 PART",
        "back --job JOB PART",
        "lost --job JOB PART",
        "found --job JOB PART",
        "note --job JOB PART",
        "note --job JOB --text EMPTY PART",
        "replace --job JOB PART",
        "replace --job JOB --reason EMPTY PART",
        "reprint --job JOB --reason EMPTY PART",
        "took-out --job JOB PART",
        "fit --job JOB",
        "fit --job JOB PART",
        "fit --job JOB PART PART",
        "fit --job JOB CARD CARD",
        "fit --job JOB PART CARD --on-purpose",
        "fit --job JOB PART CARD --on-purpose EMPTY",
        "undo --job JOB",
        "leave-empty --job JOB --reason EMPTY PART",
        "leave-empty --job JOB --reason x 123456",
        "finish --job JOB",
        "finish --job JOB doors",
        "check --job SHOP/none",
        "backup --job SHOP/none --to SHOP/stick",
        "backup --job JOB --to JOB",
        "export --job SHOP/none --out SHOP/x.zip",
        "export --job JOB",
        "import --folder SHOP",
        "import SHOP/none.zip --folder SHOP"
      })
  void isRefusedInASentence(String line) {
    Map<String, String> before = Shop.contents(folder);
    Shop.Outcome outcome = call(line);
    assertThat(outcome.status()).as(outcome.toString()).isEqualTo(2);
    assertThat(outcome.out()).isEmpty();
    assertThat(outcome.err().lines().findFirst().orElse("")).matches("[A-Z/\\-0-9].*[.]");
    assertThat(outcome.err()).doesNotContain("Exception", "\tat ", "fault in Wherefrom");
    assertThat(Shop.contents(folder)).isEqualTo(before);
  }

  @Test
  void nothingThatNeedsNoCallIsRefused() {
    assertThat(shop.run().status()).isZero();
    assertThat(shop.run("--help").out()).contains("Usage: wherefrom COMMAND");
    assertThat(shop.run("job", "--help").out()).contains("  new    Starts a job.");
  }
}
