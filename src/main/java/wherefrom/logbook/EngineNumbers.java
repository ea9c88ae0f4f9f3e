package wherefrom.logbook;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.function.IntSupplier;
import wherefrom.job.LogbookException;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;

/** Numbers that tell one engine's tags from another's. */
final class EngineNumbers {
  private static final int MOST_TRIES = 2_000;
  private static final int ACTION_CARDS = 0;

  /**
   * A typed code of a bag or a big part that fits two jobs is asked about, as any is; only so many
   * engines can differ in all their codes.
   */
  private static final Set<TagType> ON_EVERY_BENCH =
      EnumSet.of(TagType.PART, TagType.PLACE_CARD, TagType.ACTION_CARD, TagType.BASKET);

  private final IntSupplier random;

  /**
   * @param random any numbers, evenly spread
   */
  EngineNumbers(IntSupplier random) {
    this.random = random;
  }

  /**
   * A number from 1 to 9,999,999 that is not in use; 0 is that of the action cards. First one is
   * looked for whose parts, place cards and baskets have typed codes that are those of no tag of
   * these types, nor of an action card, of the engines in use. Else its codes are no other engine's
   * for the same type of tag: with the action cards, 97 numbers can differ so. Where all 97 are
   * taken the number alone differs, and a typed code is asked about.
   */
  int next(Set<Integer> inUse) {
    Set<Integer> known = new TreeSet<>(inUse);
    known.add(ACTION_CARDS);
    return draw(number -> known.stream().noneMatch(other -> sharesAny(number, other)))
        .or(() -> draw(number -> known.stream().noneMatch(other -> sharesType(number, other))))
        .or(() -> draw(number -> !known.contains(number)))
        .orElseThrow(
            () ->
                new LogbookException(
                    "No free engine number was found. Keep the jobs on two shelves."));
  }

  private Optional<Integer> draw(IntPredicate free) {
    for (int tries = 0; tries < MOST_TRIES; tries++) {
      int number = 1 + Math.floorMod(random.getAsInt(), TagCode.MOST_ENGINE);
      if (free.test(number)) {
        return Optional.of(number);
      }
    }
    return Optional.empty();
  }

  private static boolean sharesType(int engine, int other) {
    return TagCode.typedAlike(engine, TagType.PART, other, TagType.PART);
  }

  private static boolean sharesAny(int engine, int other) {
    return ON_EVERY_BENCH.stream()
        .anyMatch(
            type ->
                ON_EVERY_BENCH.stream()
                    .anyMatch(otherType -> TagCode.typedAlike(engine, type, other, otherType)));
  }
}
