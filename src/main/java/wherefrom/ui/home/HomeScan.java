package wherefrom.ui.home;

import java.util.Optional;
import wherefrom.job.PartRecord;
import wherefrom.job.shelf.NextDeed;
import wherefrom.job.tags.CodeLookup;
import wherefrom.parts.Whereabouts;
import wherefrom.ui.app.GoOn;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;

/** What a scan means on the first screens: it goes on with the work, or a part opens its page. */
public final class HomeScan {
  private HomeScan() {}

  /** Takes a code of the open job, of which nothing is being done. */
  public static void take(ScreenContext context, Scanned scanned) {
    take(context, scanned, Optional.empty());
  }

  /**
   * Takes a code of the open job.
   *
   * @param next the one thing to do, where that is shown: a tag that goes on with it does so
   */
  static void take(ScreenContext context, Scanned scanned, Optional<NextDeed> next) {
    CodeLookup found = scanned.getFound();
    if (found instanceof CodeLookup.APart part) {
      next.flatMap(deed -> work(context, deed, part.part()))
          .ifPresentOrElse(
              id -> GoOn.to(context, id, scanned),
              () -> context.navigator().show(ScreenId.PART_IN_HAND, part.part().part().item()));
    } else {
      context.refuse(found, "Scan the tag of a part. Or go on with the work first.");
    }
  }

  /** Where a part that is still in the engine comes out, or the one that is asked for goes in. */
  private static Optional<ScreenId> work(ScreenContext context, NextDeed next, PartRecord part) {
    boolean isIn = part.where() == Whereabouts.IN_ENGINE;
    boolean asked =
        next.place()
            .flatMap(place -> context.state().bench().findRightful(place))
            .filter(part.part()::equals)
            .isPresent();
    return switch (next.kind()) {
      case TAKE_OUT -> Optional.of(ScreenId.TAKE_APART).filter(id -> isIn);
      case FIT -> Optional.of(ScreenId.PUT_TOGETHER).filter(id -> asked && !isIn);
      default -> Optional.empty();
    };
  }
}
