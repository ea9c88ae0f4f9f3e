package wherefrom.job.money;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.job.entry.GoodsMeasured;
import wherefrom.job.entry.GoodsWay;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.size.GoodsSize;

/** What one measures against the size that the list asks for; own examples, worked out by hand. */
class OneMeasuredTest {

  private static OneMeasured one(
      String what, GoodsWay way, String reading, String off, String standard, String step) {
    return new OneMeasured(
        new GoodsMeasured(
            Article.read(what),
            GoodsSize.none(),
            way,
            inch(reading),
            inch(off),
            inch(standard),
            inch(step),
            inch(way == GoodsWay.WALL ? "0.0010" : "0.0020")));
  }

  private static Amount inch(String figure) {
    return Amount.of(figure, Unit.INCH);
  }

  /**
   * A shell of 0.010 in under is 0.005 in thicker on each side of the journal; its inside diameter
   * is 0.010 in smaller. A piston of 0.030 in over is 0.030 in larger.
   */
  @ParameterizedTest
  @CsvSource({
    "rod shells, WALL, 0.0725, 0.010, 0.0775",
    "rod shells, INSIDE, 2.2420, 0.010, 2.2320",
    "pistons, DIAMETER, 3.8690, 0.030, 3.8990",
    "head gaskets, THICKNESS, 0.0410, 0, 0.0410"
  })
  void theSizeIsWhereItShows(
      String what, GoodsWay way, String standard, String step, String expected) {
    OneMeasured one = one(what, way, expected, "0.0001", standard, step);
    assertThat(one.expected().number()).isEqualByComparingTo(expected);
    assertThat(one.isAccepted()).isTrue();
  }

  /** Wanted 0.0775 within 0.0010 in, ± 0.0001: the guard is 1.65 · 0.0001 = 0.000165 in. */
  @ParameterizedTest
  @CsvSource({
    "0.0783, Right",
    "0.0784, Undecided",
    "0.0785, Undecided",
    "0.0786, Undecided",
    "0.0787, Wrong",
    "0.0767, Right",
    "0.0763, Wrong",
  })
  void nearTheEdgeItIsUndecided(String reading, String ruling) {
    OneMeasured one = one("rod shells", GoodsWay.WALL, reading, "0.0001", "0.0725", "0.010");
    assertThat(one.sentence()).startsWith(ruling + ": wall at the crown " + reading + " in");
  }

  /** Walls of 0.0725, 0.0825 in are standard and twenty under where 0.0725 in is standard. */
  @ParameterizedTest
  @CsvSource({
    "rod shells, WALL, 0.0725, 0.0725, It measures like standard.",
    "rod shells, WALL, 0.0825, 0.0725, It measures like 0.020 in under.",
    "main shells, INSIDE, 2.5920, 2.6120, It measures like 0.020 in under.",
    "rod shells, WALL, 0.0665, 0.0725, It is near no usual size.",
    "pistons, DIAMETER, 3.8890, 3.8690, It measures like 0.020 in over."
  })
  void whatIsWrongIsNamed(
      String what, GoodsWay way, String reading, String standard, String sentence) {
    OneMeasured one = one(what, way, reading, "0.0001", standard, "0.010");
    assertThat(one.isAccepted()).isFalse();
    assertThat(one.sentence()).startsWith("Wrong: ").endsWith(sentence);
  }

  @Test
  void millimetresAndInchesAreOneSize() {
    OneMeasured one =
        new OneMeasured(
            new GoodsMeasured(
                Article.read("rod shells"),
                GoodsSize.none(),
                GoodsWay.WALL,
                Amount.of("1.969", Unit.MILLIMETRE),
                Amount.of("0.003", Unit.MILLIMETRE),
                inch("0.0725"),
                Amount.of("0.254", Unit.MILLIMETRE),
                Amount.of("0.02", Unit.MILLIMETRE)));
    assertThat(one.expected().number()).isEqualByComparingTo("0.0775");
    assertThat(one.isAccepted()).isTrue();
  }
}
