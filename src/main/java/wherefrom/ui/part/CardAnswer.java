package wherefrom.ui.part;

import wherefrom.engine.Spot;
import wherefrom.job.EngineJob;
import wherefrom.job.puttogether.WhereTo;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;
import wherefrom.rules.Belonging;

/**
 * What a place card says beside a part that nobody fits now: whether the part came out of there.
 * Nothing is recorded of it.
 *
 * @param matches whether it is the card of the part's own place
 * @param headline in a few words
 * @param sentence where the part is from, or where it belongs
 */
record CardAnswer(boolean matches, String headline, String sentence) {

  static CardAnswer of(EngineJob job, Part part, Spot card) {
    Place own = Belonging.of(job.bench(), part).place();
    if (!own.spot().equals(card)) {
      String elsewhere = "The card is of " + card.brief() + ". " + WhereTo.words(job, part);
      return new CardAnswer(false, "Not its place", elsewhere);
    }
    return new CardAnswer(true, "Its own place", "It matches: " + from(job, part, own) + ".");
  }

  private static String from(EngineJob job, Part part, Place own) {
    Whereabouts where = job.getPart(part.item()).where();
    String at = own.spot().brief();
    if (where == Whereabouts.RETIRED) {
      return "it was at " + at + ", and is retired";
    }
    boolean moved = !own.equals(part.home());
    if (part.fresh() || moved) {
      return "it goes to " + at;
    }
    return (where == Whereabouts.IN_ENGINE ? "it is still in the engine at " : "it came out of ")
        + at;
  }
}
