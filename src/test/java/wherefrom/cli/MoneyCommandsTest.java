package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The money, as a script sees it. */
class MoneyCommandsTest {
  @TempDir Path folder;
  private Shop shop;
  private String job;

  @BeforeEach
  void begin() {
    shop = new Shop(folder);
    job = shop.begin("engine");
    money("budget", "--amount", "500", "--contingency", "20", "--currency", "EUR");
  }

  private Shop.Outcome money(String verb, String... rest) {
    return shop.right(words(verb, rest));
  }

  private String[] words(String verb, String... rest) {
    String[] words = new String[4 + rest.length];
    words[0] = "money";
    words[1] = verb;
    words[2] = "--job";
    words[3] = job;
    System.arraycopy(rest, 0, words, 4, rest.length);
    return words;
  }

  @Test
  void aNewCamIsReckonedBeforeItIsBought() {
    money("price", "--what", "lifters", "--amount", "12.50");
    money("note", "--what", "gaskets", "--state", "quoted", "--amount", "150");
    // (150 + 16 · 12.50) · 1.2 = 420.00
    assertThat(money("effect", "--change", "new-flat-cam").out())
        .startsWith("+16 lifters, +1 cam (no price typed).")
        .contains("Total at least 420.00 EUR; at most 80.00 EUR left.");
    assertThat(money("list").lines())
        .containsExactly(
            "1\tgaskets\t\tquoted\t150.00 EUR\t", "Total 180.00 EUR; 320.00 EUR left.");
    assertThat(money("move", "--line", "1", "--state", "paid").out()).contains("180.00");
    assertThat(shop.right("money", "list", "--job", job, "--json").out())
        .contains("\"paid\":\"150.00\"", "\"quoted\":\"0.00\"");
  }

  @Test
  void aPlanTheListOfPlansAndTheBudgetSayTheSameMoney() {
    money("price", "--what", "head gaskets", "--amount", "46");
    money("price", "--what", "head milled", "--amount", "115");
    assertThat(money("effect", "--change", "head-milled", "--where", "left").out())
        .startsWith("+1 head milled, +1 head gaskets, +1 intake faces or manifold cut (no price");
    assertThat(shop.right("plan", "change", "--job", job, "head-milled", "--where", "left").lines())
        .last()
        .asString()
        // (46 + 115) · 1.2 = 193.20
        .startsWith("money\t+1 head milled, +1 head gaskets")
        .contains("Total at least 193.20 EUR");
    assertThat(shop.right("plan", "list", "--job", job).lines())
        .containsExactly("1\tplanned\thead milled, left bank\t161.00 EUR, 1 without a price");
    assertThat(money("list").lines())
        .containsExactly(
            "-\t1 × head milled, 115.00 (rule 14)\t\tto buy",
            "-\t1 × head gaskets, 46.00 (rule 14)\t\tto buy",
            "Total at least 193.20 EUR; at most 306.80 EUR left.");
  }

  @Test
  void linesGoOutAsATableAndComeIntoAnotherJob() throws IOException {
    money("note", "--what", "boring, \"all\"", "--state", "quoted", "--amount", "150.01");
    Path csv = folder.resolve("lines.csv");
    money("out", "--out", csv.toString());
    String first = job;
    job = shop.begin("second");
    money("budget", "--amount", "500", "--currency", "EUR");
    assertThat(money("in", csv.toString()).out()).contains("Lines added: 1.");
    assertThat(money("list").lines().get(0)).contains("boring, \"all\"").contains("150.01 EUR");
    assertThat(first).isNotEqualTo(job);
  }

  @Test
  void aWrongRowIsNamedAndNothingIsAdded() throws IOException {
    Path csv = folder.resolve("lines.csv");
    Files.writeString(
        csv, "what,about,state,amount,note,currency\ngood,,paid,1,,EUR\nbad,,paid,1,,USD\n");
    Shop.Outcome refused = shop.run(words("in", csv.toString()));
    assertThat(refused.status()).isEqualTo(2);
    assertThat(refused.err()).contains("Row 3 is in USD, and the job is in EUR. Nothing was added");
    assertThat(money("list").lines()).hasSize(1);
  }

  @Test
  void aCurrencyWithoutSmallCoinsTakesNone() {
    job = shop.begin("third");
    money("budget", "--amount", "150000", "--currency", "JPY");
    assertThat(shop.run(words("note", "--what", "x", "--state", "paid", "--amount", "12.50")).err())
        .contains("Type it like 1250");
    // 15 % of 1,250 is 187.5, by halves up 188.
    assertThat(money("note", "--what", "x", "--state", "paid", "--amount", "1250").out())
        .contains("Total 1438 JPY; 148562 JPY left.");
    assertThat(shop.run(words("budget", "--amount", "5", "--currency", "EUR")).err())
        .contains("Amounts are not converted");
  }

  @Test
  void whatIsNoCurrencyIsRefused() {
    assertThat(shop.run(words("budget", "--amount", "5", "--currency", "ABC")).err())
        .contains("three capital letters");
  }
}
