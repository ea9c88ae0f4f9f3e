package wherefrom.ui.photos;

import java.util.List;
import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.job.photos.Photograph;
import wherefrom.parts.Place;
import wherefrom.ui.app.ScreenContext;

/** The photographs of a place as it was before: one press away where a part is fitted. */
public final class PhotosOf {
  private PhotosOf() {}

  /** Those of every part that came out of a place, and of what carries no tag there. */
  public static List<Photograph> list(EngineJob job, Place place) {
    return Photograph.listAll(job).stream()
        .filter(photo -> photo.subject().filter(of -> isOf(job, of, place)).isPresent())
        .toList();
  }

  private static boolean isOf(EngineJob job, Subject subject, Place place) {
    return subject.match(
        part ->
            job.findPart(part.item()).filter(one -> one.part().home().equals(place)).isPresent(),
        at -> at.isAt(place.spot()),
        beside -> false);
  }

  /** Whether there is one. */
  public static boolean isAny(EngineJob job, Place place) {
    return !list(job, place).isEmpty();
  }

  /** Shows the oldest of them large; the others follow it. */
  public static void open(ScreenContext context, Place place) {
    context.navigator().open(() -> new PhotoScreen(context, () -> list(context.state(), place), 0));
  }
}
