package wherefrom.ui.camera;

import java.util.Optional;
import wherefrom.job.reader.LiveAnswer;
import wherefrom.job.reader.Unread;

/**
 * What to ask of the person, from what each frame gives. Asked only for what stays: a tag on its
 * way into the picture is blurred for a few frames, and that is no reason to call out.
 */
final class Hints {
  /** A third of a second at 30 frames a second. */
  static final int SEVERAL_STAY = 10;

  /** Most of a second: a hand that moves a tag about is no trouble yet. */
  static final int UNREAD_STAYS = 25;

  /** Gone for so many frames, it is over. */
  static final int OVER = 5;

  private int several;
  private int unread;
  private int gone;
  private boolean asked;

  /**
   * Takes what the next frame gave.
   *
   * @return what to ask now; an empty text when what was asked is no longer wanted; nothing when
   *     all stays as it was
   */
  Optional<String> accept(LiveAnswer answer) {
    return answer.match(
        nothing -> nothing.hint().map(this::unread).orElseGet(() -> over(false)),
        read -> over(true),
        still -> over(false),
        this::several);
  }

  private Optional<String> several(LiveAnswer.Several tags) {
    several++;
    gone = 0;
    return ask(several >= SEVERAL_STAY, tooMany(tags));
  }

  private Optional<String> unread(Unread.Cause cause) {
    unread++;
    gone = 0;
    return ask(unread >= UNREAD_STAYS, cause.hint());
  }

  static String tooMany(LiveAnswer.Several tags) {
    return tags.sightings().size() + " tags are in view. Cover all but one.";
  }

  private Optional<String> ask(boolean stays, String hint) {
    if (!stays || asked) {
      return Optional.empty();
    }
    asked = true;
    return Optional.of(hint);
  }

  private Optional<String> over(boolean read) {
    gone++;
    if (!read && gone < OVER) {
      return Optional.empty();
    }
    several = 0;
    unread = 0;
    boolean was = asked;
    asked = false;
    return was && !read ? Optional.of("") : Optional.empty();
  }
}
