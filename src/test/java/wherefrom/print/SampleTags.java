package wherefrom.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;
import wherefrom.engine.Spot;
import wherefrom.job.print.ScannerFace;
import wherefrom.job.print.TagFace;
import wherefrom.job.print.TagFaces;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Places;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;

/** Tags and cards of an invented V8 job. */
final class SampleTags {
  static final int ENGINE = 4_217_093;
  static final String JOB = "Launch V8, gray hull";

  private static final Layout V8 = ReadyLayouts.find("v8-odd-even").orElseThrow();

  private SampleTags() {}

  static List<Place> places() {
    return Places.of(V8, PartKind.alwaysOn());
  }

  /** The 74 part tags of the kinds that are always on. */
  static List<TagFace> parts() {
    return parts(JOB);
  }

  static List<TagFace> parts(String jobName) {
    List<TagFace> faces = new ArrayList<>();
    for (Place place : places()) {
      Part part = new Part(faces.size() + 1, place, 1, 1, false);
      faces.add(TagFaces.part(part, ENGINE, V8, jobName));
    }
    return faces;
  }

  static List<TagFace> placeCards() {
    return placeCards(V8, PartKind.alwaysOn());
  }

  /** The place cards of an engine of which these kinds are tracked. */
  static List<TagFace> placeCards(Layout layout, Set<PartKind> kinds) {
    List<Spot> spots = Places.spots(Places.of(layout, kinds));
    return IntStream.range(0, spots.size())
        .mapToObj(
            at ->
                TagFaces.placeCard(
                    new TagCode(TagType.PLACE_CARD, ENGINE, at + 1, 1), spots.get(at), JOB))
        .toList();
  }

  static List<TagFace> baskets(int count) {
    return IntStream.rangeClosed(1, count)
        .mapToObj(number -> TagFaces.basket(new TagCode(TagType.BASKET, ENGINE, number, 1), JOB))
        .toList();
  }

  /** A reprinted replacement part with several pieces: everything a tag can show. */
  static TagFace fullest() {
    Place place = Place.find("spring@7EX").orElseThrow();
    return TagFaces.part(
        new Part(188, place, 2, 3, true), ENGINE, V8, "Ö½° Señor Élan's straight-through rebuild");
  }

  static ScannerFace scanner() {
    return ScannerFace.card();
  }
}
