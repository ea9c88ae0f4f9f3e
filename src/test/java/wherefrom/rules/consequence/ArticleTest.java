package wherefrom.rules.consequence;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.parts.PartKind;

class ArticleTest {
  @Test
  void everyThingIsReadBackFromItsId() {
    for (Goods goods : Goods.values()) {
      assertThat(Article.ofId(goods.id())).isEqualTo(new Article.Known(goods));
      assertThat(Article.read(goods.words())).isEqualTo(new Article.Known(goods));
    }
  }

  @Test
  void aKindIsReadByItsKeyItsWordAndItsPlural() {
    for (PartKind kind : PartKind.values()) {
      Article parts = new Article.Known(Goods.of(kind));
      assertThat(Article.read(kind.key())).isEqualTo(parts);
      assertThat(Article.read(" " + kind.word())).isEqualTo(parts);
      assertThat(Article.read(kind.plural().toUpperCase(java.util.Locale.ROOT))).isEqualTo(parts);
    }
  }

  @Test
  void thingsAreCountedAsTheyAreSpokenOf() {
    assertThat(new Article.Known(Goods.HEAD_GASKETS).counted(1)).isEqualTo("1 head gasket");
    assertThat(new Article.Known(Goods.HEAD_GASKETS).counted(2)).isEqualTo("2 head gaskets");
    assertThat(new Article.Known(Goods.OVERSIZE_RING_SETS).counted(1))
        .isEqualTo("1 piston ring set, oversize");
    assertThat(new Article.Known(Goods.KEEPER_PAIRS).counted(1)).isEqualTo("1 keeper pair");
    assertThat(new Article.Known(Goods.SEALS).counted(1)).isEqualTo("seals");
    assertThat(Article.read("front seal").counted(1)).isEqualTo("1 front seal");
    assertThat(Article.read("front seal").counted(3)).isEqualTo("3 × front seal");
  }

  /** Many of a thing is what the thing is called; one of it differs, save where nobody counts. */
  @Test
  void everyThingThatIsCountedIsOneOrMany() {
    for (Goods goods : Goods.values()) {
      Article what = new Article.Known(goods);
      boolean times = what.counted(2).contains("×");
      assertThat(what.counted(1).equals(what.counted(2))).isEqualTo(!what.isCounted());
      assertThat(what.counted(2).startsWith("2 ")).isEqualTo(what.isCounted());
      assertThat(times && what.counted(1).contains("sets")).isFalse();
    }
  }

  @Test
  void whatNoRuleKnowsKeepsTheNameThatItWasGiven() {
    assertThat(Article.read(" Oil pump ").words()).isEqualTo("Oil pump");
    assertThat(Article.read("Oil pump"))
        .isEqualTo(Article.read("oil pump"))
        .hasSameHashCodeAs(Article.read("oil pump"))
        .isEqualByComparingTo(Article.read("oil pump"))
        .isNotEqualTo(Article.read("oil pumps"));
  }
}
