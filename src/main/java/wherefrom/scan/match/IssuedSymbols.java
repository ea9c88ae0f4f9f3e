package wherefrom.scan.match;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import wherefrom.parts.SymbolLayout;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagSymbol;
import wherefrom.parts.TagType;

/**
 * The symbols of every tag that was issued, and of their relatives that were not: other issues of
 * the same items, and items of the same engine that are not on the list or come after its last. A
 * relative that fits better speaks against the issued one.
 */
public final class IssuedSymbols {
  private static final int LATER_ISSUES = 1;

  /** Parts with numbers after the last one's that may lie about, from a job that lost its end. */
  private static final int LATER_PARTS = 400;

  private static final int EARLIER_ITEMS = 1_000;

  private final List<TagCode> codes = new ArrayList<>();
  private final List<byte[]> modules = new ArrayList<>();
  private final int issued;
  private final Set<String> digits = new HashSet<>();

  public IssuedSymbols(Collection<TagCode> tags) {
    this(tags, List.of());
  }

  /**
   * @param others tags that may lie there and are not asked for
   */
  public IssuedSymbols(Collection<TagCode> tags, Collection<TagCode> others) {
    Set<TagCode> known = new LinkedHashSet<>(tags);
    known.forEach(this::add);
    issued = codes.size();
    codes.forEach(code -> digits.add(code.digits()));
    Set<TagCode> relatives = new LinkedHashSet<>();
    known.forEach(code -> otherIssues(code, relatives));
    lastItems(known).values().forEach(last -> otherItems(last, relatives));
    relatives.addAll(others);
    relatives.removeAll(known);
    relatives.forEach(this::add);
  }

  private static void otherIssues(TagCode code, Set<TagCode> relatives) {
    int last = Math.min(TagCode.MOST_ISSUE, code.issue() + LATER_ISSUES);
    for (int issue = 1; issue <= last; issue++) {
      relatives.add(new TagCode(code.type(), code.engine(), code.item(), issue));
    }
  }

  private static void otherItems(TagCode last, Set<TagCode> relatives) {
    int later = last.type() == TagType.PART ? LATER_PARTS : 0;
    int end = Math.min(TagCode.MOST_ITEM, last.item() + later);
    for (int item = Math.max(1, last.item() - EARLIER_ITEMS); item <= end; item++) {
      relatives.add(new TagCode(last.type(), last.engine(), item, 1));
    }
  }

  /** The tag with the highest item number of each type and engine. */
  private static Map<String, TagCode> lastItems(Set<TagCode> known) {
    Map<String, TagCode> last = new HashMap<>();
    for (TagCode code : known) {
      last.merge(
          code.type() + "/" + code.engine(),
          code,
          (one, other) -> one.item() >= other.item() ? one : other);
    }
    return last;
  }

  private void add(TagCode code) {
    codes.add(code);
    modules.add(modules(TagSymbol.of(code)));
  }

  /** One bit for each data module, in the order of the codewords' bits: 1 is dark. */
  static byte[] modules(TagSymbol symbol) {
    byte[] modules = new byte[SymbolLayout.DATA_BITS / 8];
    for (int bit = 0; bit < SymbolLayout.DATA_BITS; bit++) {
      int module = SymbolLayout.dataModule(bit);
      if (symbol.dark(module / SymbolLayout.SIZE, module % SymbolLayout.SIZE)) {
        modules[bit / 8] |= (byte) (1 << bit % 8);
      }
    }
    return modules;
  }

  public boolean isEmpty() {
    return issued == 0;
  }

  /** How many were issued. */
  public int issued() {
    return issued;
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

  byte[] modules(int number) {
    return modules.get(number);
  }
}
