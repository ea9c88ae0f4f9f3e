package wherefrom.job.bags;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import wherefrom.inspection.Decision;
import wherefrom.job.EntryRows;
import wherefrom.job.EntryTable;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.BigPartDecided;
import wherefrom.job.entry.BigPartMarked;
import wherefrom.job.entry.BigPartMoved;
import wherefrom.job.entry.BigPartsNamed;
import wherefrom.job.entry.GasketsListed;
import wherefrom.parts.BigPartName;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.parts.TagCode;
import wherefrom.parts.Whereabouts;
import wherefrom.text.Words;

/** Big parts: named, taken off and put on in their order, marked, decided about. */
public final class BigParts {
  private static final int MOST_LETTERS = 40;

  /** The highest number that an entry gives out. */
  private static final EntryTable<Integer, Integer> LAST_NUMBER =
      EntryRows.<Integer, Integer>none()
          .on(BigPartsNamed.class, (none, it) -> it.first() + it.names().size() - 1)
          .others(0);

  private static final Set<Whereabouts> ON = EnumSet.of(Whereabouts.IN_ENGINE, Whereabouts.FITTED);

  /** From where a big part can go there. */
  private static final Map<Whereabouts, Set<Whereabouts>> FROM =
      Map.of(
          Whereabouts.WASHING, EnumSet.of(Whereabouts.OUT),
          Whereabouts.AT_SHOP, EnumSet.of(Whereabouts.OUT),
          Whereabouts.LOST, EnumSet.complementOf(EnumSet.of(Whereabouts.LOST)),
          Whereabouts.FITTED, EnumSet.of(Whereabouts.OUT),
          Whereabouts.OUT, EnumSet.complementOf(EnumSet.of(Whereabouts.OUT)));

  private final OpenJob job;

  public BigParts(OpenJob job) {
    this.job = job;
  }

  private BagBook book() {
    return BagBook.of(job.state());
  }

  private BigPartOrder order() {
    return new BigPartOrder(job.state(), book());
  }

  /** Keeps what an engine of this layout usually has, and is not kept yet. */
  public BagOutcome nameUsual() {
    return job.asOne(() -> nameUsualOnce());
  }

  private BagOutcome nameUsualOnce() {
    List<BigPartName> kept =
        book().bigParts().stream().map(record -> record.part().name()).toList();
    return name(
        BigPartName.usual(job.state().layout()).stream()
            .filter(name -> !kept.contains(name))
            .toList());
  }

  /** Keeps one more, by a word of the person's own. */
  public BagOutcome nameOwn(String word) {
    return job.asOne(() -> nameOwnOnce(word));
  }

  private BagOutcome nameOwnOnce(String word) {
    String own = word.strip();
    if (own.isEmpty() || own.length() > MOST_LETTERS) {
      return new BagOutcome.Refused("Name the part, in " + MOST_LETTERS + " letters at most.");
    }
    boolean kept =
        book().bigParts().stream().anyMatch(record -> record.words().equalsIgnoreCase(own));
    return kept
        ? new BagOutcome.Refused("This job has a " + own + " already. Say how this one differs.")
        : name(List.of(BigPartName.own(own)));
  }

  private BagOutcome name(List<BigPartName> names) {
    int first = nextNumber();
    if (names.isEmpty()) {
      return new BagOutcome.Refused("All the usual big parts are on the list already.");
    }
    if (first + names.size() - 1 > TagCode.MOST_ITEM) {
      return new BagOutcome.Refused("All numbers of big parts are used up in this job.");
    }
    job.record(new BigPartsNamed(first, names));
    return new BagOutcome.Logged(
        names.size() == 1
            ? Words.sentence(names.get(0).words() + " is on the list")
            : names.size() + " big parts are on the list.");
  }

  /** Numbers are never used twice, not even those of steps taken back: their tags may hang. */
  private int nextNumber() {
    return 1
        + job.history().stream()
            .map(LoggedEntry::entry)
            .mapToInt(entry -> LAST_NUMBER.of(0, entry))
            .max()
            .orElse(0);
  }

  /**
   * Takes one off the engine.
   *
   * @param note says why, where something is still over it or holds it; with it, it goes all the
   *     same
   */
  public BagOutcome off(int number, String note) {
    return job.asOne(() -> offOnce(number, note));
  }

  private BagOutcome offOnce(int number, String note) {
    return with(
        number,
        record -> {
          if (!record.isOn()) {
            return new BagOutcome.Refused(
                Words.sentence(record.words() + " is off already: " + record.where().words()));
          }
          Optional<String> first = offFirst(record);
          return first.isPresent() && note.isBlank()
              ? new BagOutcome.Asked(first.get())
              : move(record, Whereabouts.OUT, note);
        });
  }

  /** What comes off before it, or goes in before it, in a sentence; empty where nothing does. */
  public Optional<String> findFirst(BigPartRecord record) {
    return record.isOn() ? offFirst(record) : onFirst(record);
  }

  /** What usually comes off before it, in a sentence. */
  private Optional<String> offFirst(BigPartRecord record) {
    BigPartName name = record.part().name();
    return usually(
        "Usually off first: ",
        Stream.concat(
            order().over(name).stream().map(BigPartRecord::words),
            order().holding(name).stream().map(Part::words)));
  }

  /**
   * Puts one on the engine.
   *
   * @param note says why, where something belongs under it first; with it, it goes on all the same
   */
  public BagOutcome on(int number, String note) {
    return job.asOne(() -> onOnce(number, note));
  }

  private BagOutcome onOnce(int number, String note) {
    return with(
        number,
        record -> {
          Optional<String> first = onFirst(record);
          return first.isPresent() && note.isBlank() && record.where() == Whereabouts.OUT
              ? new BagOutcome.Asked(first.get())
              : go(record, Whereabouts.FITTED, note);
        });
  }

  private Optional<String> onFirst(BigPartRecord record) {
    BigPartName name = record.part().name();
    Optional<String> under =
        usually(
            "Goes in first: ",
            Stream.concat(
                order().under(name).stream().map(BigPartRecord::words),
                order().covered(name).stream().map(Place::words)));
    boolean old = record.decision().equals(Optional.of(Decision.REPLACE));
    return old
        ? Optional.of(
            Words.sentence(record.words() + " was to be replaced. Is this the new one?")
                + under.map(words -> " " + words).orElse(""))
        : under;
  }

  /** The first three are named, and how many there are. */
  private static Optional<String> usually(String words, Stream<String> what) {
    List<String> all = what.toList();
    if (all.isEmpty()) {
      return Optional.empty();
    }
    String more = all.size() > 3 ? " and " + (all.size() - 3) + " more" : "";
    return Optional.of(
        words + String.join("; ", all.subList(0, Math.min(3, all.size()))) + more + ".");
  }

  /** Sends one to be washed or to the machine shop, finds it lost, or has it back on the bench. */
  public BagOutcome move(int number, Whereabouts to, String note) {
    return job.asOne(() -> moveOnce(number, to, note));
  }

  private BagOutcome moveOnce(int number, Whereabouts to, String note) {
    return with(number, record -> go(record, to, note));
  }

  private BagOutcome go(BigPartRecord record, Whereabouts to, String note) {
    if (!FROM.getOrDefault(to, Set.of()).contains(record.where())) {
      boolean on = ON.contains(record.where());
      boolean again = record.where() == to || (on && to == Whereabouts.FITTED);
      String advice = on && !again ? " Take it off first." : "";
      String already = again ? " already" : "";
      return new BagOutcome.Refused(
          Words.sentence(record.words() + " is " + record.where().words() + already) + advice);
    }
    return move(record, to, note);
  }

  private BagOutcome move(BigPartRecord record, Whereabouts to, String note) {
    job.record(new BigPartMoved(record.number(), to, note.strip()));
    String anew = record.settled() && to != Whereabouts.FITTED ? " Decide about it again." : "";
    return new BagOutcome.Logged(Words.sentence(record.words() + ": " + to.words()) + anew);
  }

  /** Keeps marks and casting numbers as they are found. */
  public BagOutcome mark(int number, String marks) {
    return job.asOne(() -> markOnce(number, marks));
  }

  private BagOutcome markOnce(int number, String marks) {
    return with(
        number,
        record -> {
          job.record(new BigPartMarked(number, marks.strip()));
          return new BagOutcome.Logged(Words.sentence(record.words() + ": marks kept"));
        });
  }

  /** Keeps what becomes of one. */
  public BagOutcome decide(int number, Decision decision, String reason) {
    return job.asOne(() -> decideOnce(number, decision, reason));
  }

  private BagOutcome decideOnce(int number, Decision decision, String reason) {
    return with(
        number,
        record -> {
          job.record(new BigPartDecided(number, decision, reason.strip()));
          return new BagOutcome.Logged(Words.sentence(record.words() + ": " + decision.word()));
        });
  }

  /** Puts what is always new on the list of what to buy, or takes it off. */
  public BagOutcome listGaskets(boolean listed) {
    return job.asOne(() -> listGasketsOnce(listed));
  }

  private BagOutcome listGasketsOnce(boolean listed) {
    if (book().areGasketsListed() == listed) {
      return new BagOutcome.Refused(
          listed ? "They are on the list already." : "They are not on the list.");
    }
    job.record(new GasketsListed(listed));
    return new BagOutcome.Logged(
        listed
            ? "Gaskets and seals are on the list of what to buy."
            : "Gaskets and seals are off the list of what to buy.");
  }

  private BagOutcome with(int number, Function<BigPartRecord, BagOutcome> deed) {
    return book()
        .findBigPart(number)
        .map(deed)
        .orElseGet(() -> new BagOutcome.Refused("This job has no big part " + number + "."));
  }
}
