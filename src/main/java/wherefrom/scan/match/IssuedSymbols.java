package wherefrom.scan.match;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import wherefrom.parts.SymbolLayout;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagSymbol;

/**
 * The symbols of every tag that was issued, and of their near relatives that were not: other issues
 * of the same item. A relative that fits better speaks against the issued one.
 */
public final class IssuedSymbols {
  private static final int LATER_ISSUES = 1;
  private final List<TagCode> codes = new ArrayList<>();
  private final List<byte[]> signs = new ArrayList<>();
  private final int issued;
  private final Set<String> digits = new HashSet<>();

  public IssuedSymbols(Collection<TagCode> tags) {
    Set<TagCode> listed = new LinkedHashSet<>(tags);
    listed.forEach(this::add);
    issued = codes.size();
    codes.forEach(code -> digits.add(code.digits()));
    for (TagCode code : listed) {
      int last = Math.min(TagCode.MOST_ISSUE, code.issue() + LATER_ISSUES);
      for (int issue = 1; issue <= last; issue++) {
        TagCode relative = new TagCode(code.type(), code.engine(), code.item(), issue);
        if (!listed.contains(relative)) {
          add(relative);
        }
      }
    }
  }

  private void add(TagCode code) {
    codes.add(code);
    signs.add(signs(TagSymbol.of(code)));
  }

  /** For each data bit's module 1 when it is dark, -1 when it is light. */
  static byte[] signs(TagSymbol symbol) {
    byte[] signs = new byte[SymbolLayout.DATA_BITS];
    for (int bit = 0; bit < signs.length; bit++) {
      int module = SymbolLayout.dataModule(bit);
      boolean dark = symbol.dark(module / SymbolLayout.SIZE, module % SymbolLayout.SIZE);
      signs[bit] = (byte) (dark ? 1 : -1);
    }
    return signs;
  }

  public boolean isEmpty() {
    return issued == 0;
  }

  /** Whether these digits were issued. */
  public boolean contains(String sixteenDigits) {
    return digits.contains(sixteenDigits);
  }

  int size() {
    return codes.size();
  }

  boolean isIssued(int number) {
    return number < issued;
  }

  TagCode code(int number) {
    return codes.get(number);
  }

  byte[] signs(int number) {
    return signs.get(number);
  }
}
