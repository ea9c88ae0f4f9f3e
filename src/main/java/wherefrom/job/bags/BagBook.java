package wherefrom.job.bags;

import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.job.EntryFold;
import wherefrom.job.entry.BagFilled;
import wherefrom.job.entry.BagMoved;
import wherefrom.job.entry.BigPartDecided;
import wherefrom.job.entry.BigPartMarked;
import wherefrom.job.entry.BigPartMoved;
import wherefrom.job.entry.BigPartsNamed;
import wherefrom.job.entry.GasketsListed;
import wherefrom.job.entry.TagsPrinted;
import wherefrom.parts.BigPart;
import wherefrom.parts.BigPartName;
import wherefrom.parts.TagType;
import wherefrom.parts.Whereabouts;

/** The bags and the big parts of a job: the fold over the entries that speak of them. */
public final class BagBook {
  private static final EntryFold<BagBook> READS =
      EntryFold.<BagBook>none()
          .on(TagsPrinted.class, BagBook::print)
          .on(BagFilled.class, BagBook::fill)
          .on(
              BagMoved.class,
              (book, moved) -> book.bag(moved.number(), bag -> bag.at(moved.to(), moved.note())))
          .on(BigPartsNamed.class, BagBook::name)
          .on(
              BigPartMoved.class,
              (book, moved) ->
                  book.bigPart(moved.number(), part -> part.at(moved.to(), moved.note())))
          .on(
              BigPartMarked.class,
              (book, marked) -> book.bigPart(marked.number(), part -> part.marked(marked.marks())))
          .on(GasketsListed.class, (book, it) -> book.gasketsListed = it.listed())
          .on(
              BigPartDecided.class,
              (book, made) ->
                  book.bigPart(
                      made.number(), part -> part.decided(made.decision(), made.reason())));

  private boolean gasketsListed;
  private final NavigableSet<Integer> tags = new TreeSet<>();
  private final Map<Integer, Bag> bags = new TreeMap<>();
  private final Map<Integer, BigPartRecord> bigParts = new TreeMap<>();

  private BagBook() {}

  public static BagBook of(EngineJob job) {
    return job.remember(BagBook.class, state -> READS.all(new BagBook(), state.standing()));
  }

  private void print(TagsPrinted printed) {
    if (printed.type() == TagType.BAG) {
      tags.addAll(printed.items());
    }
  }

  /** Filled again, it lies where it lay; a bag that was used up is a new one. */
  private void fill(BagFilled filled) {
    tags.add(filled.number());
    Bag before = bags.get(filled.number());
    bags.put(
        filled.number(),
        before == null || before.where() == Whereabouts.FITTED
            ? new Bag(filled, Whereabouts.OUT, "")
            : before.holding(filled));
  }

  private void name(BigPartsNamed named) {
    int number = named.first();
    for (BigPartName name : named.names()) {
      bigParts.put(number, BigPartRecord.of(new BigPart(number, name)));
      number++;
    }
  }

  private void bag(int number, UnaryOperator<Bag> change) {
    bags.computeIfPresent(number, (same, bag) -> change.apply(bag));
  }

  private void bigPart(int number, UnaryOperator<BigPartRecord> change) {
    bigParts.computeIfPresent(number, (same, part) -> change.apply(part));
  }

  /** The numbers of all bags whose tags can hang somewhere: printed ones, and what was filled. */
  public NavigableSet<Integer> tags() {
    return Collections.unmodifiableNavigableSet(tags);
  }

  /** The first number that is on no tag yet. */
  public int nextTag() {
    return tags.isEmpty() ? 1 : tags.last() + 1;
  }

  /** The number of the first bag that is to be filled: one that is printed, or else the next. */
  public int nextEmpty() {
    return tags.stream()
        .filter(number -> !bags.containsKey(number))
        .findFirst()
        .orElseGet(this::nextTag);
  }

  /** Every bag that was filled, by number. */
  public Collection<Bag> bags() {
    return Collections.unmodifiableCollection(bags.values());
  }

  public Optional<Bag> findBag(int number) {
    return Optional.ofNullable(bags.get(number));
  }

  /** Every big part, in the order in which they were named. */
  public Collection<BigPartRecord> bigParts() {
    return Collections.unmodifiableCollection(bigParts.values());
  }

  public Optional<BigPartRecord> findBigPart(int number) {
    return Optional.ofNullable(bigParts.get(number));
  }

  /** {@code bag 3: head bolts, long}, {@code left head}. */
  public String words(Subject.Beside beside) {
    return beside.type() == TagType.BAG
        ? findBag(beside.number()).map(Bag::words).orElse(beside.words())
        : findBigPart(beside.number()).map(BigPartRecord::words).orElse(beside.words());
  }

  /** Whether the job has it: a bag that is printed or filled, or a big part that is kept. */
  public boolean has(Subject.Beside beside) {
    return beside.type() == TagType.BAG
        ? tags.contains(beside.number())
        : bigParts.containsKey(beside.number());
  }

  /** The bags that belong to a big part, by number. */
  public List<Bag> bagsOf(int bigPart) {
    return bags.values().stream().filter(bag -> bag.filled().bigPart() == bigPart).toList();
  }

  /** The bags that are not used up, by number. */
  public List<Bag> openBags() {
    return bags.values().stream().filter(bag -> bag.where() != Whereabouts.FITTED).toList();
  }

  /** The open bags that nothing holds up any more: what they belong to is on, or is no big part. */
  public List<Bag> bagsDue() {
    return openBags().stream()
        .filter(bag -> findBigPart(bag.filled().bigPart()).map(BigPartRecord::isOn).orElse(true))
        .toList();
  }

  /** The big parts that are off and go on again. */
  public List<BigPartRecord> bigPartsOff() {
    return bigParts.values().stream().filter(part -> !part.isOn()).toList();
  }

  /** Whether what is always new stands on the list of what to buy. */
  public boolean areGasketsListed() {
    return gasketsListed;
  }

  /** What a bag belongs to, in words; empty where nobody said. */
  public String belongsTo(Bag bag) {
    return findBigPart(bag.filled().bigPart())
        .map(BigPartRecord::words)
        .orElse(bag.filled().where());
  }
}
