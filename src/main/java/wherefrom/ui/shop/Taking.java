package wherefrom.ui.shop;

import java.util.Optional;
import wherefrom.engine.Spot;
import wherefrom.job.PartRecord;
import wherefrom.job.tags.Found;
import wherefrom.job.tags.TagBook;
import wherefrom.parts.Action;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.TypedCode;

/** Hands codes and taps to a taker, and keeps what came of the last. */
final class Taking {
  private final Desk desk;
  private final Taker taker;
  private String said = "";

  Taking(Desk desk, Taker taker) {
    this.desk = desk;
    this.taker = taker;
  }

  /** What came of the last one, or what to do now. */
  String words() {
    if (said.isEmpty()) {
      return taker.prompt();
    }
    return desk.touch().isLarge() ? said : said + " " + taker.prompt();
  }

  void forget() {
    said = "";
  }

  /** Takes a scanned or typed code. */
  void scan(String code) {
    Found found = new TagBook(desk.state(), desk.shelf()).find(code);
    found
        .<Runnable>match(
            part -> () -> came(taker.take(part.part())),
            spot -> () -> refuse(found),
            card -> () -> act(card.action()),
            basket -> () -> came(taker.basket(basket.number())),
            refused -> () -> refuse(found))
        .run();
  }

  private void refuse(Found found) {
    forget();
    desk.refuse(found, "Scan the tag on a part.");
  }

  private void act(Action action) {
    said = action == Action.UNDO ? desk.getJob().undo().sentence() : "";
  }

  /** Takes the part that belongs at a spot, or sits there. */
  void tap(PartKind kind, Spot spot) {
    Optional<PartRecord> part =
        Optional.of(spot)
            .filter(at -> Place.canLive(kind, at))
            .map(at -> new Place(kind, at))
            .flatMap(place -> desk.state().findOwner(place))
            .map(Part::item)
            .flatMap(desk.state()::findPart);
    part.ifPresent(found -> desk.attempt(() -> came(taker.take(found))));
  }

  private void came(Came came) {
    said = came.sentence();
    desk.sounds().play(came.cue());
  }

  /** Asks for the six digits on a tag. */
  void askCode() {
    TypedCode.ask(
        desk,
        "The six digits on the tag.",
        digits -> {
          desk.attempt(() -> scan(digits));
          desk.navigator().changed();
        });
  }
}
