package wherefrom.ui.takeapart;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.bags.BigPartRecord;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;

/** The keys of taking apart. Large text leaves room for three: the others stand under More. */
final class StepKeys {
  private final Touch touch;
  private final PartActs acts;
  private final BigPartStep bigParts;

  StepKeys(ScreenContext context, PartActs acts, BigPartStep bigParts) {
    this.touch = context.touch();
    this.acts = acts;
    this.bigParts = bigParts;
  }

  /** The panel of what has just come out. */
  OutPanel panel(Runnable undone) {
    List<TouchKey> keys = new ArrayList<>();
    keys.add(touch.key("Note", acts::note));
    if (!touch.isLarge()) {
      keys.add(touch.key("Photo", acts::photo));
    }
    keys.add(touch.key("Suspect", acts::suspect));
    TouchKey undo = touch.key(touch.brief("Undo this", "Undo"), undone);
    return new OutPanel(touch, undo, keys.toArray(TouchKey[]::new));
  }

  /** While a tagged part comes out. */
  List<TouchKey> ofPart() {
    List<TouchKey> keys = new ArrayList<>();
    keys.add(touch.key("Suspect", acts::suspect));
    if (!touch.isLarge()) {
      keys.add(touch.key("Photo", acts::photo));
    }
    keys.add(touch.key("Note", acts::note));
    if (!touch.isLarge()) {
      keys.add(touch.key("Type code", acts::typeCode));
      keys.add(touch.key("Care!", acts::sources));
    }
    keys.add(touch.key("More", acts::more));
    return keys;
  }

  /** While a big part comes off. */
  List<TouchKey> of(BigPartRecord part) {
    List<TouchKey> keys = new ArrayList<>();
    keys.add(touch.key("Later", () -> bigParts.pass(part)));
    keys.add(touch.key(touch.brief("New bag", "Bag"), () -> bigParts.bag(part)));
    if (!touch.isLarge()) {
      keys.add(touch.key("Photo", () -> bigParts.photo(part)));
      keys.add(touch.key("Its page", () -> bigParts.page(part)));
      keys.add(touch.key("Type code", acts::typeCode));
    }
    keys.add(touch.key("More", acts::more));
    return keys;
  }
}
