package wherefrom.ui.takeapart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.job.bags.BigPartRecord;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;

/** The keys of taking apart. Large text leaves room for four: the others stand under More. */
final class StepKeys {
  private final Touch touch;
  private final PartActs acts;
  private final BigPartStep bigParts;

  StepKeys(ScreenContext context, PartActs acts, BigPartStep bigParts) {
    this.touch = context.touch();
    this.acts = acts;
    this.bigParts = bigParts;
  }

  /**
   * While a tagged part comes out or has come out, in few words.
   *
   * @param lead the big part that comes off next; empty for none
   */
  List<TouchKey> plain(Optional<BigPartRecord> lead) {
    return ofPart("", lead);
  }

  /**
   * The same, where each says which part it means.
   *
   * @param part {@code 1 IN rocker}
   */
  List<TouchKey> named(String part, Optional<BigPartRecord> lead) {
    return ofPart(part.isEmpty() ? "" : " " + part.replaceFirst(" ", "\u00a0"), lead);
  }

  /**
   * One key for the part, where there is room for no more: which part it means is worth more than
   * keys for all that can be said of it. The others stand under More.
   *
   * @param part {@code 1 IN rocker}
   * @param broken whether the words may go on in a second line
   */
  List<TouchKey> brief(String part, Optional<BigPartRecord> lead, boolean broken) {
    List<TouchKey> keys = new ArrayList<>();
    String means = part.replace(' ', '\u00a0');
    keys.add(touch.key("Suspect" + (broken ? " " : "\u00a0") + means, acts::suspect).tight());
    return besides(keys, lead, acts::moreOfPart);
  }

  private List<TouchKey> ofPart(String means, Optional<BigPartRecord> lead) {
    List<TouchKey> keys = new ArrayList<>();
    keys.add(touch.key("Suspect" + means, acts::suspect).tight());
    if (!NextView.isNamedOnTag(touch)) {
      keys.add(touch.key("Photo" + means, acts::photo).tight());
    }
    keys.add(touch.key("Note" + means, acts::note).tight());
    return besides(keys, lead, acts::more);
  }

  private List<TouchKey> besides(List<TouchKey> keys, Optional<BigPartRecord> lead, Runnable more) {
    if (!touch.isLarge() && lead.isPresent()) {
      keys.add(touch.key("Later: " + lead.get().words(), () -> bigParts.pass(lead.get())));
      keys.add(touch.key("New bag", () -> bigParts.bag(lead.get())));
    } else if (!touch.isLarge()) {
      keys.add(touch.key("Type code", acts::typeCode));
      keys.add(touch.key("Cautions", acts::sources));
    }
    keys.add(touch.key("More", more));
    return keys;
  }

  /** While a big part comes off. */
  List<TouchKey> of(BigPartRecord part) {
    List<TouchKey> keys = new ArrayList<>();
    keys.add(touch.key("Later", () -> bigParts.pass(part)));
    keys.add(touch.key("New bag", () -> bigParts.bag(part)));
    if (!touch.isLarge()) {
      keys.add(touch.key("Photo", () -> bigParts.photo(part)));
      keys.add(touch.key("Its page", () -> bigParts.page(part)));
      keys.add(touch.key("Type code", acts::typeCode));
      keys.add(touch.key("Cautions", () -> acts.sources(part)));
    }
    keys.add(touch.key("More", acts::more));
    return keys;
  }
}
