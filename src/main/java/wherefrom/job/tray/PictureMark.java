package wherefrom.job.tray;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.reader.Corner;
import wherefrom.job.reader.Unread;
import wherefrom.rules.PartNames;

/**
 * Something to be drawn on a picture: an outline and a few words beside it.
 *
 * @param outline its corners in pixels of the picture
 * @param words beside it; may be empty
 * @param read whether it was read; what was not is drawn with a broken line
 */
public record PictureMark(List<Corner> outline, String words, boolean read) {
  public PictureMark {
    outline = List.copyOf(outline);
  }

  /** The marks of a tray: parts and cards that were read with their figures, and what was not. */
  public static List<PictureMark> of(Tray tray) {
    List<PictureMark> marks = new ArrayList<>();
    for (Tray.Lying lying : tray.parts()) {
      String words = PartNames.NUMBERS.named(lying.part().part().home());
      marks.add(new PictureMark(lying.sighting().corners(), words, true));
    }
    for (Tray.Other other : tray.others()) {
      marks.add(new PictureMark(other.sighting().corners(), "", true));
    }
    for (Unread unread : tray.unread()) {
      marks.add(new PictureMark(unread.outline(), "?", false));
    }
    return marks;
  }
}
