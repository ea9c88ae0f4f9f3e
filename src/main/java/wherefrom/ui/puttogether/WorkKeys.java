package wherefrom.ui.puttogether;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.job.bags.BigPartRecord;
import wherefrom.job.puttogether.FitMode;
import wherefrom.job.puttogether.ToFit;
import wherefrom.rules.Cue;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;

/** The keys of putting together, in an order that never changes. */
final class WorkKeys {

  /** What they do. */
  interface Deeds {
    void choose(FitMode mode);

    void typeCode();

    void missing();

    /** How many parts would be stopped at their places. */
    int held();

    /** What leads out of it, part by part. */
    void showHeld();

    void skip();

    void print();

    /** The part that is to be scanned has no tag: it is told by something else. */
    void noTag();

    /** The part that is recorded as fitted is in the hand. */
    void hold();

    void decide();

    /** Back to the stop that waits. */
    void stop();

    void turnOver();

    /** Whether there is a photograph of the place as it was. */
    boolean hasPhoto();

    /** Shows it large. */
    void photo();

    /** The big part that goes on now. */
    Optional<BigPartRecord> bigPart();

    /** Opens the page of a big part. */
    void show(BigPartRecord part);

    /** All of them on a page: the largest letters leave no room for them here. */
    void ways();
  }

  /** What a person says of a part that is recorded as fitted. */
  static final String HOLD = "It is in my hand";

  static final String HOLD_BRIEF = "In my hand";

  private final Touch touch;
  private final Deeds deeds;
  private boolean cramped;

  WorkKeys(Touch touch, Deeds deeds) {
    this.touch = touch;
    this.deeds = deeds;
  }

  /** Says whether the room is cramped: large letters then leave the engine none beside all keys. */
  void cramped(boolean isCramped) {
    cramped = isCramped;
  }

  /** With the largest letters, and with large ones in a cramped room, one key leads to all. */
  private boolean isTight() {
    return touch.scale().textFactor() >= 2 || (touch.isLarge() && cramped);
  }

  /** How the halves are named, and what else there is to do: the last row. */
  List<TouchKey> row(PutTogetherModel model) {
    if (isTight()) {
      return List.of(touch.key("More", deeds::ways));
    }
    String last = ToFit.isNothing(model.state()) ? "Finish" : "Missing";
    return List.of(
        mode(model, FitMode.FOLLOW_THE_LIST, "Follow list"),
        mode(model, FitMode.SCAN_BOTH, "Scan both"),
        mode(model, FitMode.WHERE_DOES_THIS_GO, "Where to?"),
        touch.key("Type code", deeds::typeCode),
        touch.key(last, deeds::missing));
  }

  private TouchKey mode(PutTogetherModel model, FitMode mode, String words) {
    return touch.key(words, () -> deeds.choose(mode)).select(mode == model.mode());
  }

  /** What comes first where parts wait for a decision; scanning one needs no key. */
  Optional<TagKey> head(PutTogetherModel model) {
    String waiting = model.answer().headline();
    return model
        .decisionsWait()
        .map(
            many ->
                touch.tag(
                    touch.brief(waiting, many + " to decide"),
                    touch.brief("decide, or scan a part", "or scan a part"),
                    deeds::decide));
  }

  private TouchKey bigPart(BigPartRecord part) {
    return touch.key("On: " + part.words(), () -> deeds.show(part));
  }

  /** What is to do just now, and the other side of the engine. */
  List<TouchKey> side(PutTogetherModel model) {
    List<TouchKey> made = new ArrayList<>();
    if (model.mode() == FitMode.FOLLOW_THE_LIST) {
      made.add(touch.key("Skip", deeds::skip));
      int held = deeds.held();
      if (held > 0) {
        made.add(touch.key("Held: " + held, deeds::showHeld));
      }
    }
    if (!touch.isLarge()) {
      deeds.bigPart().ifPresent(part -> made.add(bigPart(part)));
    }
    if (model.recordedAsIn().isPresent()) {
      made.add(touch.key(touch.brief(HOLD, HOLD_BRIEF), deeds::hold));
    }
    if (model.stopped().waiting() > 0) {
      made.add(touch.key("A stop waits", deeds::stop));
    }
    boolean asks = model.answer().cue().filter(Cue.ASK::equals).isPresent();
    if (asks && model.dueHalves().held().isEmpty()) {
      made.add(touch.key(touch.brief("Print a tag again", "Print tag"), deeds::print));
    }
    if (!isTight() && model.dueHalves().asksForPart()) {
      made.add(touch.key(touch.brief("No tag on it", "No tag"), deeds::noTag));
    }
    if (!isTight() && deeds.hasPhoto()) {
      made.add(touch.key("Photo before", deeds::photo));
    }
    if (!isTight()) {
      made.add(touch.key("Turn over", deeds::turnOver));
    }
    return made;
  }
}
