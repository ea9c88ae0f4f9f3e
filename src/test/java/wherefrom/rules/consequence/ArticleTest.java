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
  void whatNoRuleKnowsKeepsTheNameThatItWasGiven() {
    assertThat(Article.read(" Oil pump ").words()).isEqualTo("Oil pump");
    assertThat(Article.read("Oil pump"))
        .isEqualTo(Article.read("oil pump"))
        .hasSameHashCodeAs(Article.read("oil pump"))
        .isEqualByComparingTo(Article.read("oil pump"))
        .isNotEqualTo(Article.read("oil pumps"));
  }
}
