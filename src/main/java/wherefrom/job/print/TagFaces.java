package wherefrom.job.print;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import wherefrom.engine.Layout;
import wherefrom.engine.Spot;
import wherefrom.parts.Action;
import wherefrom.parts.BigPart;
import wherefrom.parts.Orientation;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.parts.Places;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;

/** The faces of tags and cards, from what a job knows. */
public final class TagFaces {
  private TagFaces() {}

  /** The tag of a part, whatever engine number its job has. */
  public static TagFace part(Part part, int engine, Layout layout, String jobName) {
    return part(
        part.code(engine),
        part.home(),
        Places.orientation(layout, part.kind()),
        jobName,
        part.pieces(),
        part.fresh());
  }

  /** The tag of a part that came out of a place. */
  public static TagFace part(
      TagCode code,
      Place home,
      Orientation orientation,
      String jobName,
      int pieces,
      boolean fresh) {
    require(code, TagType.PART);
    return new TagFace(
        code,
        home.figures(),
        home.kind().word(),
        home.spot().words(),
        jobName,
        orientation,
        pieces,
        fresh);
  }

  /** The card that is taped up at a spot of the engine. */
  public static TagFace placeCard(TagCode code, Spot spot, String jobName) {
    require(code, TagType.PLACE_CARD);
    return card(code, spot.figures(), spot.words(), jobName);
  }

  /** The tag of a basket, tray or box, counted from 1 as its code's item. */
  public static TagFace basket(TagCode code, String jobName) {
    require(code, TagType.BASKET);
    return card(code, "NO. " + code.item(), "keep together", jobName);
  }

  /** The tag of a bag, counted from 1 as its code's item; its contents are written on it. */
  public static TagFace bag(TagCode code, String jobName) {
    require(code, TagType.BAG);
    return card(code, "BAG " + code.item(), "say what is in it", jobName);
  }

  /** The tag of a big part. */
  public static TagFace bigPart(BigPart part, int engine, String jobName) {
    String figures = part.words().toUpperCase(Locale.ROOT);
    return card(part.code(engine), figures, "", jobName);
  }

  /** An action card; it serves every job. */
  public static TagFace action(Action action) {
    return card(action.code(), action.name(), action.words(), "");
  }

  /** Every action card, in the order of their numbers. */
  public static List<TagFace> actions() {
    return Arrays.stream(Action.values()).map(TagFaces::action).toList();
  }

  private static TagFace card(TagCode code, String figures, String words, String jobName) {
    return new TagFace(
        code, figures, code.type().word(), words, jobName, Orientation.NONE, 1, false);
  }

  private static void require(TagCode code, TagType type) {
    if (code.type() != type) {
      throw new IllegalArgumentException("not the code of a " + type.word() + ": " + code);
    }
  }
}
