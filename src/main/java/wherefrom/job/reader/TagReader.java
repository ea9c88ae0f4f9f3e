package wherefrom.job.reader;

import java.util.Collection;
import java.util.List;
import java.util.function.Supplier;
import wherefrom.job.image.GreyImage;
import wherefrom.parts.TagCode;

/** Reads tags on pictures. A wrong reading is far worse than none. */
public interface TagReader {

  /**
   * Reads one still picture, with all the time it takes.
   *
   * @param issued every tag that was printed for the open job, and the action cards; empty when no
   *     job is open
   */
  Reading read(GreyImage picture, Collection<TagCode> issued);

  /**
   * The same where a tag may be another job's.
   *
   * @param elsewhere the tags that other jobs printed, those that lie about most likely first;
   *     asked for only where nothing was read without them
   */
  default Reading read(
      GreyImage picture, Collection<TagCode> issued, Supplier<List<TagCode>> elsewhere) {
    return read(picture, issued);
  }

  /**
   * Codes of any make on a still picture, by ordinary decoding: those of parcels, tools, other
   * programs. Tags that {@link #read} gives may be among them.
   */
  default List<Sighting> listForeign(GreyImage picture) {
    return List.of();
  }

  /** A reader that follows a live picture. */
  LiveReader live(Collection<TagCode> issued);
}
