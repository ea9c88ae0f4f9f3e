package wherefrom.ui.puttogether;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.scene.layout.Region;
import wherefrom.rules.WayOut;
import wherefrom.ui.controls.Touch;

/**
 * The keys of a stop beside its tag.
 *
 * @param tight whether the largest letters leave room for one alone
 */
record StopKeys(Touch touch, WaysOut ways, boolean tight) {
  private static final Set<WayOut> TAKES_OUT = EnumSet.of(WayOut.TAKE_OUT, WayOut.MAKE_ROOM);

  /** What overrules the stop, then what takes out what stands in the way: apart from all else. */
  List<Region> of(PutTogetherModel model) {
    List<Region> made = made(model);
    made.forEach(key -> key.getProperties().put(Touch.DISCARDS, true));
    return made;
  }

  private List<Region> made(PutTogetherModel model) {
    List<Region> made = new ArrayList<>();
    boolean fitted = model.stopped().isFittedBut();
    Optional<String> reason = model.reason().filter(words -> model.stopped().canFitOnPurpose());
    if (reason.isPresent()) {
      made.add(touch.hold("Hold: " + reason.get(), ways::onPurpose));
      if (!tight) {
        made.add(touch.key("Other reason", ways::chooseReason));
      }
      return made;
    }
    if (model.stopped().canFitOnPurpose()) {
      boolean taken = model.stopped().isPlaceTaken();
      String here = taken ? "Swap it in on purpose" : "Fit it here on purpose";
      String words = fitted ? "Leave it, with a reason" : here;
      String brief = fitted ? "Leave it" : "On purpose";
      made.add(touch.key(touch.brief(words, brief), ways::chooseReason));
    }
    if (model.stopped().canTakeOut() && !TAKES_OUT.contains(model.stopped().first())) {
      made.add(
          fitted
              ? touch.key("It is taken out", ways::tookOut)
              : touch.hold(touch.brief("Hold: that one is out", "Hold: it is out"), ways::tookOut));
    }
    return made;
  }
}
