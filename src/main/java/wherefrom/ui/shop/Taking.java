package wherefrom.ui.shop;

import java.util.Optional;
import wherefrom.engine.Spot;
import wherefrom.inspection.Subject;
import wherefrom.job.PartRecord;
import wherefrom.job.tags.CodeLookup;
import wherefrom.parts.Action;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.TagType;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TypedCode;

/** Hands codes and taps to a taker, and keeps what came of the last. */
final class Taking {
  private final ScreenContext context;
  private final PartReceiver taker;
  private String said = "";
  private long saidAt;

  Taking(ScreenContext context, PartReceiver taker) {
    this.context = context;
    this.taker = taker;
  }

  /** What came of the last one, or what to do now; a step since then, as UNDO, ends it. */
  String words() {
    if (said.isEmpty() || saidAt != context.getJob().sequence()) {
      return context.touch().brief(taker.prompt(), taker.briefPrompt());
    }
    return context.touch().isLarge() ? said : said + " " + taker.prompt();
  }

  void forget() {
    say("");
  }

  private void say(String words) {
    said = words;
    saidAt = context.getJob().sequence();
  }

  /** Takes a scanned or typed code. */
  void scan(Scanned scanned) {
    CodeLookup found = scanned.getFound();
    found
        .<Runnable>match(
            part -> () -> came(taker.take(part.part())),
            spot -> () -> refuse(found),
            card -> () -> act(card.action()),
            basket -> () -> came(taker.basket(basket.number())),
            bag -> () -> beside(new Subject.Beside(TagType.BAG, bag.number()), found),
            bigPart ->
                () -> beside(new Subject.Beside(TagType.BIG_PART, bigPart.part().number()), found),
            refused -> () -> refuse(found))
        .run();
  }

  private void beside(Subject.Beside what, CodeLookup found) {
    context.attempt(() -> taker.beside(what).ifPresentOrElse(this::came, () -> refuse(found)));
  }

  private void refuse(CodeLookup found) {
    forget();
    context.refuse(found, "Scan the tag on a part.");
  }

  private void act(Action action) {
    say(action == Action.UNDO ? context.getJob().undo().sentence() : "");
  }

  /** Takes the part that belongs at a spot, or sits there. */
  void tap(PartKind kind, Spot spot) {
    Optional<PartRecord> part =
        Optional.of(spot)
            .filter(at -> Place.canLive(kind, at))
            .map(at -> new Place(kind, at))
            .flatMap(place -> context.state().findOwner(place))
            .map(Part::item)
            .flatMap(context.state()::findPart);
    part.ifPresent(found -> context.attempt(() -> came(taker.take(found))));
  }

  private void came(ScanOutcome came) {
    if (!came.taken()) {
      forget();
      context.refuse("Not taken", came.sentence());
      return;
    }
    say(came.sentence());
    context.sounds().play(came.cue());
  }

  /** Asks for the six digits on a tag. */
  void askCode() {
    TypedCode.ask(context, this::scan);
  }
}
