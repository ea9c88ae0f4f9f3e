package wherefrom.job.bags;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.BagFilled;
import wherefrom.job.entry.BagMoved;
import wherefrom.job.entry.BoltHole;
import wherefrom.parts.TagCode;
import wherefrom.parts.Whereabouts;
import wherefrom.text.Words;

/** Bags of fasteners: what they held, where they lie, and whether all of it came back. */
public final class Bags {
  /** More than any bag of an engine holds. */
  public static final int MOST_PIECES = 999;

  /** Nobody has more tags printed ahead, or written by hand. */
  private static final int MOST_AHEAD = 200;

  private static final int MOST_LETTERS = 80;

  private static final Set<Whereabouts> OFF =
      EnumSet.of(Whereabouts.OUT, Whereabouts.WASHING, Whereabouts.AT_SHOP);

  /** From where a bag can go there. */
  private static final Map<Whereabouts, Set<Whereabouts>> FROM =
      Map.of(
          Whereabouts.WASHING, EnumSet.of(Whereabouts.OUT),
          Whereabouts.AT_SHOP, EnumSet.of(Whereabouts.OUT),
          Whereabouts.LOST, OFF,
          Whereabouts.FITTED, EnumSet.of(Whereabouts.OUT),
          Whereabouts.OUT, EnumSet.complementOf(EnumSet.of(Whereabouts.OUT)));

  private final OpenJob job;

  public Bags(OpenJob job) {
    this.job = job;
  }

  private BagBook book() {
    return BagBook.of(job.state());
  }

  /** Says what is in a bag; of one that is used up, what is in it anew. */
  public BagOutcome fill(BagFilled filled) {
    return job.asOne(() -> fillOnce(filled));
  }

  /** Says what is in a bag that held nothing when it was taken; another bench may be first. */
  public BagOutcome fillEmpty(BagFilled filled) {
    return job.asOne(
        () ->
            book()
                .findBag(filled.number())
                .filter(bag -> bag.where() != Whereabouts.FITTED)
                .<BagOutcome>map(bag -> new BagOutcome.Refused(taken(bag)))
                .orElseGet(() -> fillOnce(filled)));
  }

  private static String taken(Bag bag) {
    String what = bag.filled().what();
    return "Bag " + bag.filled().number() + " holds " + what + " by now. Take another bag.";
  }

  private BagOutcome fillOnce(BagFilled filled) {
    Optional<String> fault = fault(filled);
    if (fault.isPresent()) {
      return new BagOutcome.Refused(fault.get());
    }
    job.record(filled);
    return new BagOutcome.Logged(
        "Bag " + filled.number() + " holds " + Words.count(filled.pieces(), "piece") + ".");
  }

  /**
   * Mends what was said of a bag, wherever it is: one that is used up stays so, for its fasteners
   * are in the engine whatever they are called.
   */
  public BagOutcome mend(BagFilled mended) {
    return job.asOne(() -> mendOnce(mended));
  }

  private BagOutcome mendOnce(BagFilled mended) {
    boolean used =
        book()
            .findBag(mended.number())
            .filter(bag -> bag.where() == Whereabouts.FITTED)
            .isPresent();
    return job.asOne(
        () -> {
          BagOutcome came = fill(mended);
          if (used && came instanceof BagOutcome.Logged) {
            job.record(new BagMoved(mended.number(), Whereabouts.FITTED, 0, "mended"));
          }
          return came;
        });
  }

  private Optional<String> fault(BagFilled filled) {
    if (filled.number() < 1 || filled.number() > TagCode.MOST_ITEM) {
      return Optional.of("Bags are numbered from 1. Choose one.");
    }
    if (filled.number() > book().nextTag() + MOST_AHEAD) {
      return Optional.of("No bag has so high a number. The next is " + book().nextTag() + ".");
    }
    if (filled.what().isBlank()) {
      return Optional.of("Say what is in the bag.");
    }
    if (filled.what().length() > MOST_LETTERS || filled.where().length() > MOST_LETTERS) {
      return Optional.of("Say it in " + MOST_LETTERS + " letters; the rest goes in a note.");
    }
    if (filled.pieces() < 1 || filled.pieces() > MOST_PIECES) {
      return Optional.of("1 to " + MOST_PIECES + " pieces can be in a bag. Count them.");
    }
    if (filled.bigPart() != 0 && book().findBigPart(filled.bigPart()).isEmpty()) {
      return Optional.of("This job has no big part " + filled.bigPart() + ".");
    }
    return isRenamedAway(filled)
        ? Optional.of("It is at the machine shop by this name. Mend it when it is back.")
        : holeFault(filled.holes());
  }

  /** The slip goes by its name. */
  private boolean isRenamedAway(BagFilled filled) {
    return book()
        .findBag(filled.number())
        .filter(bag -> bag.where() == Whereabouts.AT_SHOP)
        .filter(bag -> !bag.filled().what().equals(filled.what()))
        .isPresent();
  }

  private static Optional<String> holeFault(List<BoltHole> holes) {
    long numbers = holes.stream().map(BoltHole::hole).distinct().count();
    boolean counted = holes.stream().allMatch(hole -> hole.hole() >= 1);
    return counted && numbers == holes.size()
        ? Optional.empty()
        : Optional.of("Each hole has a number of its own, from 1.");
  }

  /**
   * A bag goes somewhere.
   *
   * @param to anything but {@link Whereabouts#IN_ENGINE} and {@link Whereabouts#RETIRED}
   * @param counted how many pieces were counted now; 0 where nobody counted
   * @param note says why where a count is short; with it, the bag goes all the same
   */
  public BagOutcome move(int number, Whereabouts to, int counted, String note) {
    return job.asOne(() -> moveOnce(number, to, counted, note));
  }

  private BagOutcome moveOnce(int number, Whereabouts to, int counted, String note) {
    Optional<Bag> found = book().findBag(number);
    if (found.isEmpty()) {
      return new BagOutcome.Refused("Nothing is in bag " + number + " yet. Say what it holds.");
    }
    Bag bag = found.get();
    if (!FROM.getOrDefault(to, Set.of()).contains(bag.where())) {
      boolean again = bag.where() == to;
      String sentence = "Bag " + number + " is " + bag.where().words();
      return new BagOutcome.Refused(sentence + (again ? " already." : ". Log it as back first."));
    }
    Optional<BigPartRecord> under =
        book().findBigPart(bag.filled().bigPart()).filter(part -> !part.isOn());
    if (to == Whereabouts.FITTED && under.isPresent() && note.isBlank()) {
      return new BagOutcome.Asked(early(bag, under.get()));
    }
    int held = bag.filled().pieces();
    if (counted != 0 && counted != held && note.isBlank()) {
      return new BagOutcome.Asked(miscounted(bag, counted));
    }
    job.record(new BagMoved(number, to, counted, note.strip()));
    return new BagOutcome.Logged(Words.sentence(bag.words() + " is " + to.words()));
  }

  private static String early(Bag bag, BigPartRecord under) {
    return "Bag "
        + bag.number()
        + " belongs to the "
        + under.words()
        + ", which is "
        + under.where().words()
        + ". Put that on first.";
  }

  private static String miscounted(Bag bag, int counted) {
    int held = bag.filled().pieces();
    String off =
        counted < held
            ? Words.count(held - counted, "piece") + " short. Look for them"
            : Words.count(counted - held, "piece") + " too many. Look where they belong";
    return "Bag " + bag.number() + " held " + held + ", you counted " + counted + ": " + off + ".";
  }
}
