package wherefrom.parts;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import wherefrom.engine.Bank;
import wherefrom.engine.Layout;

/**
 * What a big part is called.
 *
 * @param bank the name of the bank that it belongs to; empty where an engine has one of it
 * @param own the person's own word, of {@link BigPartKind#OWN} alone; else empty
 */
public record BigPartName(BigPartKind kind, String bank, String own) {
  public BigPartName {
    if (kind == BigPartKind.OWN && own.isBlank()) {
      throw new IllegalArgumentException("a big part of no usual kind needs a word");
    }
  }

  public static BigPartName own(String word) {
    return new BigPartName(BigPartKind.OWN, "", word);
  }

  /** What an engine of this layout usually has, in the order of coming off. */
  public static List<BigPartName> usual(Layout layout) {
    return Arrays.stream(BigPartKind.values())
        .filter(kind -> kind.isUsual(layout))
        .flatMap(kind -> of(kind, layout))
        .toList();
  }

  private static Stream<BigPartName> of(BigPartKind kind, Layout layout) {
    return kind.isOfABank() && layout.banks().size() > 1
        ? layout.banks().stream().map(bank -> new BigPartName(kind, bank.name(), ""))
        : Stream.of(new BigPartName(kind, "", ""));
  }

  /** {@code left head}, {@code front cover}. */
  public String words() {
    String word = kind == BigPartKind.OWN ? own : kind.word();
    return bank.isEmpty() ? word : bank + " " + word;
  }

  /** Whether it lies on this bank, or on no bank of its own. */
  public boolean isOver(Bank of) {
    return bank.isEmpty() || bank.equals(of.name());
  }

  /** Whether both lie on one bank, or one of them on no bank of its own. */
  public boolean isBeside(BigPartName other) {
    return bank.isEmpty() || other.bank.isEmpty() || bank.equals(other.bank);
  }
}
