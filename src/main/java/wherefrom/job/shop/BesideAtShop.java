package wherefrom.job.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wherefrom.inspection.Subject;
import wherefrom.job.OpenJob;
import wherefrom.job.bags.Bag;
import wherefrom.job.bags.BagBook;
import wherefrom.job.bags.BigPartRecord;
import wherefrom.job.entry.BagMoved;
import wherefrom.job.entry.BigPartMoved;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.shop.MachineShop.Answer;
import wherefrom.parts.BigPartKind;
import wherefrom.parts.TagType;
import wherefrom.parts.Whereabouts;
import wherefrom.rules.consequence.ShopWork;
import wherefrom.text.Words;

/** Bags and big parts at the machine shop: each is a line of the slip and away with it. */
public final class BesideAtShop {
  private final OpenJob job;
  private final MachineShop shop;

  public BesideAtShop(OpenJob job) {
    this.job = job;
    this.shop = new MachineShop(job);
  }

  private BagBook book() {
    return BagBook.of(job.state());
  }

  /**
   * One goes, with what is wanted of it.
   *
   * @param wanted as for a line of the slip; its thing, places and count are those of what goes
   */
  public Answer send(int visit, Subject.Beside what, ShopOrder wanted) {
    return job.asOne(() -> sendOnce(visit, what, wanted));
  }

  private Answer sendOnce(int visit, Subject.Beside what, ShopOrder wanted) {
    Whereabouts where = where(what);
    if (where == Whereabouts.AT_SHOP && isOnSlip(what)) {
      return further(visit, what, wanted);
    }
    if (where != Whereabouts.OUT) {
      return new Answer.Refused(
          "Only what is off can go to the machine shop. "
              + Words.sentence(words(what) + " is " + where.words()));
    }
    return away(visit, what, wanted);
  }

  /** One goes for all this work, each a line of one slip. */
  public Answer send(int visit, Subject.Beside what, List<ShopOrder> wanted) {
    return job.asOne(() -> sendAll(visit, what, wanted), answer -> answer instanceof Answer.Done);
  }

  private Answer sendAll(int wished, Subject.Beside what, List<ShopOrder> wanted) {
    int visit = wished;
    Answer answer = new Answer.Refused("Say first what is wanted.");
    for (ShopOrder order : wanted) {
      answer = sendOnce(visit, what, order);
      if (!(answer instanceof Answer.Done done)) {
        return answer;
      }
      visit = done.visit().number();
    }
    return answer;
  }

  /** It is there already: what else is to be done with it goes onto the same slip. */
  private Answer further(int visit, Subject.Beside what, ShopOrder wanted) {
    ShopVisit there = findVisit(what).orElseThrow();
    if (visit != MachineShop.NEW_VISIT && visit != there.number()) {
      return new Answer.Refused(
          Words.sentence(words(what) + " is on the slip of visit " + there.number()));
    }
    ShopWork work = work(what, wanted.work());
    String words = wanted.wanted().strip();
    boolean same =
        there.lines().stream()
            .filter(line -> line.isOf(what))
            .map(ShopVisit.Line::line)
            .anyMatch(line -> line.work() == work && line.wanted().equals(words));
    return same
        ? new Answer.Refused(Words.sentence(words(what) + " is on the slip for that already"))
        : line(there.number(), what, wanted, false);
  }

  /** The work that is done on such a big part itself, in the order in which it is offered. */
  public static List<ShopWork> works(BigPartKind kind) {
    return switch (kind) {
      case HEAD -> List.of(ShopWork.MILL_HEAD, ShopWork.VALVES, ShopWork.STUD, ShopWork.CRACK_TEST);
      case CRANKSHAFT ->
          List.of(ShopWork.GRIND_RODS, ShopWork.GRIND_MAINS, ShopWork.POLISH, ShopWork.CRACK_TEST);
      default -> List.of(ShopWork.CRACK_TEST);
    };
  }

  /**
   * The work that comes back as a change with it. What goes along for other work, as the bolts with
   * their rods, has that in words alone: it is not what is worked on.
   */
  private ShopWork work(Subject.Beside what, ShopWork wanted) {
    boolean own =
        bigPart(what).filter(part -> works(part.part().name().kind()).contains(wanted)).isPresent();
    return own || wanted.change().isEmpty() ? wanted : ShopWork.OTHER;
  }

  private Answer away(int visit, Subject.Beside what, ShopOrder wanted) {
    return job.asOne(
        () -> {
          Answer answer = line(visit, what, wanted, true);
          if (answer instanceof Answer.Done) {
            job.record(moved(what, Whereabouts.AT_SHOP));
          }
          return answer;
        },
        answer -> answer instanceof Answer.Done);
  }

  /**
   * A line of the slip.
   *
   * @param keep whether it is listed among what must not get lost; one piece is listed once
   */
  private Answer line(int visit, Subject.Beside what, ShopOrder wanted, boolean keep) {
    ShopWork work = work(what, wanted.work());
    return shop.add(
        visit,
        new ShopOrder(
            work,
            places(what, work),
            words(what),
            pieces(what),
            wanted.wanted(),
            wanted.target(),
            wanted.tolerance(),
            keep,
            Optional.of(what)));
  }

  /** The bank of a head is where the work is done. */
  private List<String> places(Subject.Beside what, ShopWork work) {
    return bigPart(what).map(part -> part.part().name().bank()).stream()
        .filter(bank -> work.listWhere(job.state().layout()).contains(bank))
        .filter(bank -> !bank.isEmpty())
        .toList();
  }

  /** One is back, by its scan: its line is counted back. */
  public Answer back(Subject.Beside what) {
    return job.asOne(() -> backOnce(what));
  }

  private Answer backOnce(Subject.Beside what) {
    Optional<ShopVisit> visit = findVisit(what);
    if (visit.isEmpty()) {
      return new Answer.Refused(Words.sentence(words(what) + " is on no slip that is out"));
    }
    List<String> said = new ArrayList<>();
    Answer answer = new Answer.Refused("");
    for (ShopVisit.Line line : lines(visit.get(), what)) {
      answer = counted(visit.get().number(), line.line().line(), line.missing(), "", "");
      if (!(answer instanceof Answer.Done done)) {
        return answer;
      }
      said.add(done.sentence());
    }
    return told((Answer.Done) answer, said);
  }

  /** A thing that was there for several works is back once; each size is to be measured. */
  private static Answer told(Answer.Done last, List<String> said) {
    String all = said.stream().distinct().collect(Collectors.joining(" "));
    return new Answer.Done(last.visit(), all, last.good());
  }

  /** Whether a slip that is out has it. */
  public boolean isOnSlip(Subject.Beside what) {
    return findVisit(what).isPresent();
  }

  /** The last visit that has not brought it back. */
  private Optional<ShopVisit> findVisit(Subject.Beside what) {
    return shop.visits().stream()
        .filter(visit -> !lines(visit, what).isEmpty())
        .reduce((earlier, later) -> later);
  }

  private List<ShopVisit.Line> lines(ShopVisit visit, Subject.Beside what) {
    return visit.lines().stream().filter(line -> line.missing() > 0 && line.isOf(what)).toList();
  }

  /**
   * As {@link MachineShop#backByCount}; a bag or a big part lies here again once its last line is
   * counted back.
   */
  public Answer backByCount(int visit, int line, int count, String figure, String done) {
    return job.asOne(
        () -> counted(visit, line, count, figure, done), answer -> answer instanceof Answer.Done);
  }

  private Answer counted(int visit, int line, int count, String figure, String done) {
    Answer answer = shop.backByCount(visit, line, count, figure, done);
    if (answer instanceof Answer.Done came) {
      came.visit().lines().stream()
          .filter(one -> one.line().line() == line && one.missing() == 0)
          .flatMap(one -> one.beside().stream())
          .filter(what -> where(what) == Whereabouts.AT_SHOP)
          .filter(what -> lines(came.visit(), what).isEmpty())
          .forEach(what -> job.record(moved(what, Whereabouts.OUT)));
    }
    return answer;
  }

  private Optional<BigPartRecord> bigPart(Subject.Beside what) {
    return what.type() == TagType.BIG_PART ? book().findBigPart(what.number()) : Optional.empty();
  }

  private Optional<Bag> bag(Subject.Beside what) {
    return what.type() == TagType.BAG ? book().findBag(what.number()) : Optional.empty();
  }

  private String words(Subject.Beside what) {
    return book().words(what);
  }

  private int pieces(Subject.Beside what) {
    return bag(what).map(one -> one.filled().pieces()).orElse(1);
  }

  private Whereabouts where(Subject.Beside what) {
    return bigPart(what)
        .map(BigPartRecord::where)
        .or(() -> bag(what).map(Bag::where))
        .orElse(Whereabouts.RETIRED);
  }

  private static JobEntry moved(Subject.Beside what, Whereabouts to) {
    return what.type() == TagType.BAG
        ? new BagMoved(what.number(), to, 0, "")
        : new BigPartMoved(what.number(), to, "");
  }
}
