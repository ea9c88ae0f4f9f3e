package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A timing check on real files, beside lobes whose timing is known from their own formula. */
class TimingCommandsTest {
  private static final double FULL = 0.300;
  private static final double STATED = 0.050;

  @TempDir Path folder;
  private Shop shop;
  private String job;

  @BeforeEach
  void begin() {
    shop = new Shop(folder);
    job = shop.begin("engine");
  }

  private Shop.Outcome timing(String verb, String... rest) {
    List<String> words = new ArrayList<>(List.of("timing", verb, "--job", job));
    words.addAll(List.of(rest));
    return shop.run(words.toArray(String[]::new));
  }

  private String right(String verb, String... rest) {
    Shop.Outcome outcome = timing(verb, rest);
    assertThat(outcome.status()).as(outcome.toString()).isZero();
    return outcome.out().strip();
  }

  /** A raised cosine from seat to seat: its events follow from the inverse cosine alone. */
  private static double lift(double off, double seatToSeat) {
    return Math.abs(off) < seatToSeat / 2
        ? FULL / 2 * (1 + Math.cos(2 * Math.PI * off / seatToSeat))
        : 0;
  }

  private static double half(double seatToSeat) {
    return seatToSeat / (2 * Math.PI) * Math.acos(2 * STATED / FULL - 1);
  }

  private void lobe(String lobe, double centre, double seatToSeat, Random random) {
    StringBuilder lines = new StringBuilder();
    for (int wheel = (int) centre - 145; wheel <= centre + 145; wheel += 5) {
      double seen = lift(wheel - centre, seatToSeat) + 0.0003 * (random.nextDouble() * 2 - 1);
      lines.append(String.format(Locale.ROOT, "%d=%.4fin%n", wheel, seen));
    }
    String[] words = {"timing", "read", "--job", job, "--lobe", lobe, "-"};
    Shop.Outcome outcome = shop.runWith(lines.toString(), words);
    assertThat(outcome.status()).as(outcome.toString()).isZero();
  }

  private void set() {
    right(
        "set",
        "--checking-lift",
        "0.050in",
        "--wheel",
        "0.1deg",
        "--dial",
        "0.0003in",
        "--zero",
        "0.5deg");
  }

  private JsonNode value(String key) throws IOException {
    for (JsonNode row : new ObjectMapper().readTree(right("show", "--cylinder", "1", "--json"))) {
      if (row.path("value").asText().equals(key)) {
        return row;
      }
    }
    throw new AssertionError(key);
  }

  private void known(String key, double degrees) throws IOException {
    JsonNode row = value(key);
    double u = row.path("standardUncertainty").asDouble();
    assertThat(row.path("degrees").asDouble()).as(key).isCloseTo(degrees, within(4 * u + 0.1));
    assertThat(u).as(key).isBetween(0.01, 0.6);
  }

  @Test
  void aKnownCamIsFoundAndStandsBesideItsCard() throws IOException {
    Random random = new Random(11);
    lobe("1IN", 106, 270, random);
    assertThat(timing("show", "--cylinder", "1").status()).isEqualTo(1);
    set();
    assertThat(timing("show", "--cylinder", "1").out()).contains("exhaust: Take at least 9");
    lobe("1EX", -114, 276, random);
    known("intake-center", 106);
    known("intake-opening", 106 - half(270));
    known("intake-closing", 106 + half(270));
    known("intake-duration", 2 * half(270));
    known("exhaust-opening", -114 - half(276));
    known("exhaust-closing", -114 + half(276));
    known("overlap", -114 + half(276) - (106 - half(270)));
    known("lobe-separation", 110);
    known("advance", 4);
    assertThat(timing("card", "--source", " ", "overlap=3").err()).contains("where the card's");
    right("card", "--source", "cam card", "intake-center=106", "exhaust-center=-110");
    assertThat(value("intake-center").path("differs").asBoolean(true)).isFalse();
    assertThat(value("exhaust-center").path("verdict").asText()).startsWith("DIFFERS: 4.0 deg");
    assertThat(right("show", "--cylinder", "1")).contains("after top dead center");
  }

  @Test
  void readingsAreCorrectedRemovedAndTakenBack() {
    assertThat(right("read", "--lobe", "3ex", "10=0.0120in", "20=0.5mm", "-5.50=.003"))
        .contains("cylinder 3, exhaust, readings 3");
    right("read", "--lobe", "3EX", "10.0=0.0125in");
    assertThat(right("list", "--lobe", "3EX").lines().toList())
        .containsExactly("-5.5 deg\t0.003 in", "10 deg\t0.0125 in", "20 deg\t0.5 mm");
    right("remove", "--lobe", "3EX", "--at", "20");
    assertThat(right("list", "--lobe", "3EX").lines()).hasSize(2);
    shop.right("undo", "--job", job);
    assertThat(right("list", "--lobe", "3EX").lines()).hasSize(3);
    assertThat(timing("remove", "--lobe", "3EX", "--at", "21").err()).contains("no reading at 21");
  }

  @Test
  void whatIsNoReadingIsRefused() {
    assertThat(timing("read", "--lobe", "9IN", "1=1in").err()).contains("no lobe \"9IN\"");
    assertThat(timing("read", "--lobe", "1IN", "900=0.1in").err()).contains("two turns");
    assertThat(timing("read", "--lobe", "1IN", "10=4deg").err()).contains("is not a length");
    assertThat(timing("read", "--lobe", "1IN", "10").err()).contains("both sides");
    assertThat(timing("set", "--checking-lift", "0in").err()).contains("cannot be");
    assertThat(timing("card", "--source", "x", "speed=4").err()).contains("no card value");
    assertThat(timing("slack", "sideways=4deg").err()).contains("no figure \"sideways\"");
  }

  @Test
  void chainAndSlackStandInTheRecordAndWhatIsOpenStandsOut() throws IOException {
    assertThat(recordLines()).anyMatch(line -> line.contains("degree wheel,NOT CHECKED"));
    assertThat(right("chain", "inward=-0.2in", "outward=0.15in")).contains("0.35");
    assertThat(right("slack", "forward=8deg", "backward=2deg")).contains("6.00 deg", "5 to 7");
    right("read", "--lobe", "1IN", "10=0.0120in");
    assertThat(recordLines())
        .anyMatch(line -> line.contains("Deflection of the timing chain,0.3500 in"))
        .anyMatch(line -> line.contains("Slack from crank to cam,6.00 deg"))
        .anyMatch(line -> line.contains("cylinder 1") && line.contains("NOT CHECKED"));
  }

  private List<String> recordLines() throws IOException {
    Path csv = folder.resolve("record.csv");
    Path pdf = folder.resolve("record.pdf");
    shop.right(
        "record", "--job", job, "--out", pdf.toString(), "--csv", csv.toString(), "--replace");
    return Files.readAllLines(csv);
  }
}
