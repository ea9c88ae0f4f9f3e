package wherefrom.job.reader;

import java.util.List;

/**
 * Something that looks like a tag and could not be read.
 *
 * @param cause why, as far as can be told
 * @param outline its four corners on the picture
 */
public record Unread(Cause cause, List<Corner> outline) {

  /** Why a tag was not read; each is a hint for the person. */
  public enum Cause {
    TOO_DARK("Too dark. Turn on a light."),
    TOO_SMALL("Too far away. Move closer."),
    GLARE("Glare on the tag. Tilt it."),
    BLURRED("Not sharp. Hold still, or move back a little."),
    CRUMPLED("The tag is crumpled. Flatten it."),
    DIRTY("Wipe the tag, or type the six digits.");

    private final String hint;

    Cause(String hint) {
      this.hint = hint;
    }

    public String hint() {
      return hint;
    }
  }

  public Unread {
    outline = List.copyOf(outline);
  }
}
