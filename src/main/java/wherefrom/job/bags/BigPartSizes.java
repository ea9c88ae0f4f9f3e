package wherefrom.job.bags;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wherefrom.engine.Layout;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.parts.BigPartKind;
import wherefrom.parts.BigPartName;

/** What is measured on a big part, or where it sits once it is off. */
public final class BigPartSizes {
  private BigPartSizes() {}

  /** The faces and shafts of one; of a head, the deck that it sits on as well. */
  public static List<Subject> of(Layout layout, BigPartName name) {
    return features(name.kind())
        .flatMap(
            feature ->
                feature.where(layout).stream()
                    .filter(where -> isOf(feature, where, name))
                    .<Subject>map(where -> new Subject.AFeature(feature, where)))
        .toList();
  }

  private static boolean isOf(Feature feature, String where, BigPartName name) {
    return feature.reach() != Feature.Reach.BANK
        || name.bank().isEmpty()
        || name.bank().equals(where);
  }

  private static Stream<Feature> features(BigPartKind kind) {
    Optional<Feature> one =
        switch (kind) {
          case DAMPER -> Optional.of(Feature.DAMPER);
          case FLYWHEEL -> Optional.of(Feature.FLYWHEEL);
          case OIL_PUMP -> Optional.of(Feature.OIL_PUMP);
          case TIMING_SET -> Optional.of(Feature.TIMING);
          case CAMSHAFT -> Optional.of(Feature.CAMSHAFT);
          case CRANKSHAFT -> Optional.of(Feature.CRANK);
          default -> Optional.empty();
        };
    return kind == BigPartKind.HEAD ? Stream.of(Feature.HEAD, Feature.DECK) : one.stream();
  }
}
