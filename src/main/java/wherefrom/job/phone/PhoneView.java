package wherefrom.job.phone;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.rules.Cue;
import wherefrom.rules.Fact;

/**
 * What stands on a phone.
 *
 * @param cue how it is shown and sounded; empty where nothing is judged
 * @param headline a word or two
 * @param place to be read from afar, such as {@code 3 EX}; may be empty
 * @param what of it, such as {@code pushrod}; may be empty
 * @param facts the lines of a stop
 * @param small what to do now; may be empty
 * @param next what comes then, such as {@code 4 pushrods to fit}; may be empty
 * @param tag the one thing to do now; empty where it is done at the window
 * @param keys the further keys, UNDO and the code pad aside
 * @param choices what to choose from before anything else; may be none
 */
public record PhoneView(
    Optional<Cue> cue,
    String headline,
    String place,
    String what,
    List<Fact> facts,
    String small,
    String next,
    Optional<PhoneKey> tag,
    List<PhoneKey> keys,
    List<PhoneKey> choices) {

  public PhoneView {
    facts = List.copyOf(facts);
    keys = List.copyOf(keys);
    choices = List.copyOf(choices);
  }

  /** Words alone; the tag takes a photograph. */
  static PhoneView said(String headline, String small) {
    return new PhoneView(
        Optional.empty(),
        headline,
        "",
        "",
        List.of(),
        small,
        "",
        Optional.of(PhoneKey.PHOTOGRAPH),
        List.of(),
        List.of());
  }

  /** Something to choose from. */
  static PhoneView choice(String question, List<PhoneKey> choices) {
    return said(question, "").withCue(Cue.ASK).without().withChoices(choices);
  }

  PhoneView withCue(Cue sounded) {
    return new PhoneView(
        Optional.of(sounded), headline, place, what, facts, small, next, tag, keys, choices);
  }

  PhoneView at(String named, String kind) {
    return new PhoneView(cue, headline, named, kind, facts, small, next, tag, keys, choices);
  }

  PhoneView withFacts(List<Fact> lines) {
    return new PhoneView(cue, headline, place, what, lines, small, next, tag, keys, choices);
  }

  PhoneView then(String comes) {
    return new PhoneView(cue, headline, place, what, facts, small, comes, tag, keys, choices);
  }

  PhoneView saying(String words) {
    return new PhoneView(cue, headline, place, what, facts, words, next, tag, keys, choices);
  }

  PhoneView withTag(PhoneKey first) {
    return new PhoneView(
        cue, headline, place, what, facts, small, next, Optional.of(first), keys, choices);
  }

  /** Nothing is to be done first. */
  PhoneView without() {
    return new PhoneView(
        cue, headline, place, what, facts, small, next, Optional.empty(), keys, choices);
  }

  PhoneView and(List<PhoneKey> more) {
    List<PhoneKey> all = new ArrayList<>(keys);
    all.addAll(more);
    return new PhoneView(cue, headline, place, what, facts, small, next, tag, all, choices);
  }

  PhoneView withChoices(List<PhoneKey> all) {
    return new PhoneView(cue, headline, place, what, facts, small, next, tag, keys, all);
  }
}
