package wherefrom.rules.consequence;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wherefrom.parts.PartKind;

/** What is bought or paid for: a thing that the rules know, or one that a person has named. */
public sealed interface Article extends Comparable<Article> {
  /** A thing or a piece of work that rules ask for. */
  record Known(Goods goods) implements Article {
    @Override
    public String id() {
      return goods.id();
    }

    @Override
    public String words() {
      return goods.words();
    }
  }

  /** Anything else, under the name that a person gave it; capitals make no other thing of it. */
  record Named(String name) implements Article {
    @Override
    public boolean equals(Object other) {
      return other instanceof Named named && name.equalsIgnoreCase(named.name);
    }

    @Override
    public int hashCode() {
      return name.toLowerCase(Locale.ROOT).hashCode();
    }

    @Override
    public String id() {
      return name;
    }

    @Override
    public String words() {
      return name;
    }
  }

  /** As it stands in logbooks. */
  String id();

  /** As it is shown. */
  String words();

  /** {@code 3 head gaskets}, {@code seals}; of what a person has named, how many times. */
  default String counted(int pieces) {
    return findGoods()
        .map(goods -> goods.counted(pieces))
        .orElseGet(() -> pieces == 1 ? "1 " + words() : pieces + " × " + words());
  }

  /** Whether it is known how many are wanted. */
  default boolean isCounted() {
    return findGoods().map(Goods::isCounted).orElse(true);
  }

  /** The thing, where rules know it. */
  default Optional<Goods> findGoods() {
    return this instanceof Known known ? Optional.of(known.goods()) : Optional.empty();
  }

  @Override
  default int compareTo(Article other) {
    return id().compareToIgnoreCase(other.id());
  }

  /** What the rules know under this id, else what a person named so. */
  static Article ofId(String id) {
    return Goods.find(id).<Article>map(Known::new).orElseGet(() -> new Named(id));
  }

  /** What a person writes: the id of a thing, or the word, the plural or the key of a kind. */
  static Article read(String text) {
    String typed = text.strip();
    String small = typed.toLowerCase(Locale.ROOT);
    return Goods.read(small)
        .or(() -> findKind(small).map(Goods::of))
        .<Article>map(Known::new)
        .orElseGet(() -> new Named(typed));
  }

  private static Optional<PartKind> findKind(String text) {
    return Arrays.stream(PartKind.values())
        .filter(kind -> List.of(kind.key(), kind.word(), kind.plural()).contains(text))
        .findFirst();
  }
}
