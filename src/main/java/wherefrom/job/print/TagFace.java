package wherefrom.job.print;

import wherefrom.parts.Orientation;
import wherefrom.parts.TagCode;

/**
 * What a tag or card shows, so that it also serves with no computer.
 *
 * @param code what its symbol says
 * @param figures the place in large print, such as {@code 3 EX}
 * @param kind what it is on, in words: {@code pushrod}, {@code place card}
 * @param words the place or the use in words; may be empty
 * @param jobName free text; may be empty
 * @param orientation what must not be turned; only {@link Orientation#TOP_END} has an arrow
 * @param pieces how many pieces hang on it, at least 1
 * @param fresh true of a replacement part, which is marked NEW
 */
public record TagFace(
    TagCode code,
    String figures,
    String kind,
    String words,
    String jobName,
    Orientation orientation,
    int pieces,
    boolean fresh)
    implements Face {
  public TagFace {
    if (pieces < 1) {
      throw new IllegalArgumentException("pieces out of range: " + pieces);
    }
  }
}
