package wherefrom.job.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wherefrom.job.EngineJob;
import wherefrom.job.OpenJob;
import wherefrom.job.pages.RecordPicture;
import wherefrom.job.photos.Photograph;
import wherefrom.job.photos.Photos;

/** The job's photographs by the cylinder that they belong to. */
final class RecordPictures {
  /** None. */
  static final RecordPictures NONE = new RecordPictures();

  private final Map<Integer, List<RecordPicture>> byCylinder = new LinkedHashMap<>();
  private final List<RecordPicture> all = new ArrayList<>();

  private RecordPictures() {}

  RecordPictures(OpenJob job, Photos photos) {
    EngineJob state = job.state();
    for (Photograph photo : Photograph.listAll(state)) {
      String day = job.days().day(photo.time());
      String caption = photo.story().isEmpty() ? day : photo.story() + ", " + day;
      RecordPicture picture =
          RecordPicture.of(photo.words(state), caption, photos.locate(job.folder(), photo.file()));
      int cylinder = photo.subject().map(at -> OwnCylinder.cylinder(state, at)).orElse(0);
      byCylinder.computeIfAbsent(cylinder, key -> new ArrayList<>()).add(picture);
      all.add(picture);
    }
  }

  List<RecordPicture> all() {
    return all;
  }

  /** Those of a cylinder, or with 0 those of none. */
  List<RecordPicture> of(int cylinder) {
    return byCylinder.getOrDefault(cylinder, List.of());
  }
}
