package wherefrom.job.entry;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.engine.LifterType;
import wherefrom.parts.PartKind;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Goods;

class PartSortTest {
  @Test
  void aLifterIsFlatOrRoller() {
    assertThat(PartSort.of(" Roller").lifters()).contains(LifterType.ROLLER);
    assertThat(PartSort.of("roller").text()).isEqualTo("roller");
    assertThat(PartSort.of("flat").article(PartKind.LIFTER))
        .isEqualTo(new Article.Known(Goods.FLAT_LIFTERS));
  }

  @Test
  void theNameOfAllSuchLiftersIsReadToo() {
    assertThat(PartSort.of("roller lifters")).isEqualTo(PartSort.of("roller"));
  }

  @Test
  void anyOtherPartKeepsTheNameThatItWasGiven() {
    assertThat(PartSort.of("longer").article(PartKind.PUSHROD))
        .isEqualTo(new Article.Named("longer pushrods"));
    assertThat(PartSort.of("light rods").article(PartKind.ROD))
        .isEqualTo(new Article.Named("light rods"));
    assertThat(PartSort.of("roller").article(PartKind.ROCKER))
        .isEqualTo(new Article.Named("roller rockers"));
  }

  @Test
  void whatNobodySaidIsTheSame() {
    assertThat(PartSort.of(" ")).isEqualTo(PartSort.SAME);
    assertThat(PartSort.of("longer").isSame()).isFalse();
  }
}
