package wherefrom.ui.home;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.job.EngineJob;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.change.Planning;
import wherefrom.job.decide.Deciding;
import wherefrom.job.inspect.Inspecting;
import wherefrom.job.measure.Undecided;
import wherefrom.job.money.Budget;
import wherefrom.job.money.MoneyBook;
import wherefrom.job.record.BuildRecord;
import wherefrom.job.timing.TimingBook;
import wherefrom.job.torque.TorqueBook;
import wherefrom.job.torque.TorqueRecord;
import wherefrom.parts.Whereabouts;
import wherefrom.text.Words;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.drawn.Signs;
import wherefrom.workings.catalogue.Workings;

/** What is done between taking apart and putting together, and what each area has open. */
final class BetweenModel {

  /** The areas, in the order of the work. */
  enum Kind {
    LOOK("Look", Signs.LOOK, ScreenId.INSPECT),
    MEASURE("Measure", Signs.MEASURE, ScreenId.MEASURE),
    PLAN("Changes", Signs.PLAN, ScreenId.CHANGES),
    DECIDE("Decide", Signs.DECIDE, ScreenId.DECIDE),
    AWAY("Machine shop", "Shop", Signs.AWAY, ScreenId.MACHINE_SHOP),
    MONEY("Money", Signs.MONEY, ScreenId.MONEY),
    NUMBERS("Numbers", Signs.NUMBERS, ScreenId.NUMBERS),
    TORQUE("Torque", Signs.TORQUE, ScreenId.TORQUE),
    TIMING("Timing", Signs.TIMING, ScreenId.TIMING),
    RECORD("Build record", Signs.RECORD, ScreenId.BUILD_RECORD);

    private final String word;
    private final String brief;
    private final Signs sign;
    private final ScreenId screen;

    Kind(String word, Signs sign, ScreenId screen) {
      this(word, word, sign, screen);
    }

    Kind(String word, String brief, Signs sign, ScreenId screen) {
      this.word = word;
      this.brief = brief;
      this.sign = sign;
      this.screen = screen;
    }

    String word() {
      return word;
    }

    /** For where the person's text is large. */
    String brief() {
      return brief;
    }

    Signs sign() {
      return sign;
    }

    ScreenId screen() {
      return screen;
    }
  }

  /**
   * An area as it stands.
   *
   * @param line what is open
   * @param brief the same in fewer words, for large letters
   * @param open how many things are
   * @param done the part that is done, 0 to 1; below 0 where that says nothing
   */
  record Area(Kind kind, String line, String brief, int open, double done) {
    Area(Kind kind, String line, int open, double done) {
      this(kind, line, line, open, done);
    }

    Area brief(String fewer) {
      return new Area(kind, line, fewer, open, done);
    }
  }

  private final OpenJob job;

  BetweenModel(OpenJob job) {
    this.job = job;
  }

  private EngineJob state() {
    return job.state();
  }

  List<Area> areas() {
    List<Area> areas = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      areas.add(area(kind));
    }
    return areas;
  }

  /** The first area with work in it, in the order of the work; the first where none has. */
  static Kind next(List<Area> areas) {
    Optional<Area> open = areas.stream().filter(area -> area.open() > 0).findFirst();
    return open.orElse(areas.get(0)).kind();
  }

  private Area area(Kind kind) {
    return switch (kind) {
      case LOOK -> look();
      case MEASURE -> counted(kind, undecided(), "undecided", "none open", -1);
      case PLAN -> counted(kind, checks(), "checks to do", "no check to do", -1);
      case DECIDE -> decide();
      case AWAY -> new Area(kind, awayWords(), away(), here());
      case MONEY -> money();
      case NUMBERS -> numbers();
      case TORQUE -> torque();
      case TIMING -> timing();
      case RECORD -> record();
    };
  }

  private static Area counted(Kind kind, int open, String words, String none, double done) {
    return new Area(kind, open == 0 ? none : open + " " + words, open, done);
  }

  private static Area numbers() {
    int count = Workings.all().size();
    return new Area(Kind.NUMBERS, count + " calculations", 0, -1).brief(count + " in all");
  }

  private Area look() {
    List<Inspecting.Unlooked> left = new Inspecting(job).listUnlooked();
    long out = count(Whereabouts.OUT);
    long parts =
        left.stream()
            .filter(one -> one.subject() instanceof wherefrom.inspection.Subject.APart)
            .count();
    double done = out == 0 ? 0 : 1 - (double) parts / out;
    return counted(Kind.LOOK, (int) parts, "to look at", "all looked at", done)
        .brief(parts == 0 ? "all seen" : parts + " to do");
  }

  private long count(Whereabouts where) {
    return state().parts().stream().filter(part -> part.where() == where).count();
  }

  private int undecided() {
    return Undecided.of(state()).count();
  }

  private int checks() {
    return new Planning(job).openChecks().size();
  }

  private Area decide() {
    int open = new Deciding(job).listUndecided().size();
    long decided = state().parts().stream().filter(BetweenModel::isDecided).count();
    double done = open + decided == 0 ? 0 : (double) decided / (open + decided);
    return counted(Kind.DECIDE, open, "to decide", "none to decide", done)
        .brief(open == 0 ? "none open" : open + " to do");
  }

  private static boolean isDecided(PartRecord part) {
    return part.decision().isPresent();
  }

  /** {@code 4 shop, 2 washing}: where those are that are not here. */
  private String awayWords() {
    List<String> words = new ArrayList<>();
    long shop = count(Whereabouts.AT_SHOP);
    long washing = count(Whereabouts.WASHING);
    if (shop > 0) {
      words.add(shop + (washing > 0 ? " shop" : " at the shop"));
    }
    if (washing > 0) {
      words.add(washing + " washing");
    }
    return words.isEmpty() ? "all are here" : String.join(", ", words);
  }

  private int away() {
    return (int) (count(Whereabouts.WASHING) + count(Whereabouts.AT_SHOP));
  }

  private double here() {
    int parts = state().parts().size();
    return parts == 0 ? 1 : 1 - (double) away() / parts;
  }

  private Area money() {
    Budget budget = new MoneyBook(job).budget();
    long limit = budget.limit().cents();
    if (limit == 0) {
      return new Area(Kind.MONEY, "no budget yet", 0, -1);
    }
    long left = budget.left().cents();
    double used = Math.min(1, Math.max(0, (double) (limit - left) / limit));
    return new Area(Kind.MONEY, budget.rest(), 0, used);
  }

  private Area torque() {
    int cards = new TorqueBook(job).cards().size();
    int open = TorqueRecord.open(state()).size();
    if (cards == 0) {
      return new Area(Kind.TORQUE, "no card yet", 0, 0);
    }
    String words = open == 0 ? "all ticked" : Words.count(open, "card") + " open";
    return new Area(Kind.TORQUE, words, open, (double) (cards - open) / cards);
  }

  private Area timing() {
    TimingBook book = new TimingBook(job);
    int lobes = book.lobes().size();
    int read = (int) book.lobes().stream().filter(lobe -> !book.readings(lobe).isEmpty()).count();
    String words = read == 0 ? "not checked" : read + " of " + lobes + " read";
    return new Area(Kind.TIMING, words, 0, lobes == 0 ? 0 : (double) read / lobes);
  }

  private Area record() {
    int open = BuildRecord.countUnchecked(job);
    return counted(Kind.RECORD, open, "to check", "all checked", -1);
  }
}
