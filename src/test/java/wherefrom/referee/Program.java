package wherefrom.referee;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import wherefrom.engine.Layout;
import wherefrom.engine.Section;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.Benches;
import wherefrom.job.LoggedEntry;
import wherefrom.job.MemoryLogbook;
import wherefrom.job.NextLife;
import wherefrom.job.OpenJob;
import wherefrom.job.change.Planning;
import wherefrom.job.decide.Deciding;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.SlotUnknown;
import wherefrom.job.handling.Handling;
import wherefrom.job.handling.HandlingOutcome;
import wherefrom.job.handling.NewPart;
import wherefrom.job.inspect.Inspecting;
import wherefrom.job.measure.Measuring;
import wherefrom.job.puttogether.Fitting;
import wherefrom.job.puttogether.ToFit;
import wherefrom.job.running.Serving;
import wherefrom.job.shop.MachineShop;
import wherefrom.job.shop.ShopOrder;
import wherefrom.job.shop.ShopVisit;
import wherefrom.job.tags.TagBook;
import wherefrom.job.takeapart.TakeApart;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.quantity.Unit;
import wherefrom.referee.Referee.Word;
import wherefrom.rules.Attempt;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.consequence.ShopWork;
import wherefrom.rules.size.ChangeText;

/** The program under judgement: does each act through its use cases, and answers for itself. */
class Program {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-03-01T09:00:00Z"), ZoneOffset.UTC);

  private final Motor motor;
  private final MemoryLogbook logbook;
  private final OpenJob job;
  private final Place[] places;
  private final Map<String, Integer> slots;

  /** The item number of each piece that the referee knows. */
  private final Map<Integer, Integer> items = new HashMap<>();

  /** How many steps each act is: work is ordered, then counted back; all else is one. */
  private final Deque<Integer> steps = new ArrayDeque<>();

  Program(Motor motor, Layout layout) {
    this.motor = motor;
    this.logbook = logbook(Gauges.start(layout));
    this.job = new OpenJob(logbook, CLOCK);
    this.places =
        motor.slots.stream()
            .map(slot -> Place.find(slot.key()).orElseThrow())
            .toArray(Place[]::new);
    this.slots = new HashMap<>();
    for (Slot slot : motor.slots) {
      items.put(slot.at(), job.state().findOwner(places[slot.at()]).orElseThrow().item());
      slots.put(slot.key(), slot.at());
    }
  }

  private static MemoryLogbook logbook(JobEntry... entries) {
    MemoryLogbook logbook = new MemoryLogbook();
    for (JobEntry entry : entries) {
      logbook.append(CLOCK.instant(), entry);
    }
    return logbook;
  }

  /** The program opened anew on the logbook of another, to go on in another way. */
  Program(Program other) {
    this.motor = other.motor;
    this.logbook =
        logbook(other.logbook.entries().stream().map(LoggedEntry::entry).toArray(JobEntry[]::new));
    this.job = Benches.reopened(other.job, logbook, CLOCK);
    this.places = other.places;
    this.slots = other.slots;
    items.putAll(other.items);
    steps.addAll(other.steps);
  }

  Program copy() {
    return new Program(this);
  }

  /** Does an act; whether the program did it. */
  boolean perform(Act act) {
    int before = job.history().size();
    boolean done = act.verb() == Act.Verb.TAKE_BACK ? takeBack() : doIt(act);
    if (act.verb() != Act.Verb.TAKE_BACK && job.history().size() > before) {
      boolean twice = act.verb() == Act.Verb.WORK || act.verb() == Act.Verb.REOPEN;
      steps.push(twice ? 2 : 1);
    }
    return done;
  }

  private boolean takeBack() {
    int count = steps.isEmpty() ? 0 : steps.pop();
    for (int at = 0; at < count; at++) {
      job.undo();
    }
    return count > 0;
  }

  private boolean doIt(Act act) {
    return switch (act.verb()) {
      case OUT ->
          new TakeApart(job).out(Benches.read(job, tag(act))) instanceof TakeApart.Answer.CameOut;
      case FIT -> isTaken(() -> new Fitting(job).fit(attempt(act)));
      case ON_PURPOSE ->
          isTaken(() -> new Fitting(job).fitOnPurpose(attempt(act), "measured, it suits"));
      case TAKE_OUT -> done(new Handling(job).tookOut(item(act), "again"));
      case REPLACE -> replace(act);
      case LOSE -> done(new Handling(job).lost(item(act), ""));
      case FIND -> done(new Handling(job).found(item(act)));
      case WASH -> done(new Handling(job).offForWashing(item(act), 1));
      case WASHED -> done(new Handling(job).backFromWashing(item(act)));
      case SEND -> done(new MachineShop(job).send(1, List.of(item(act)), "measure it"));
      case BACK -> done(new MachineShop(job).backByScan(item(act), ""));
      case REOPEN -> reopen();
      case CLOSE -> new ToFit(job).finish(section(act.what()));
      default -> say(act);
    };
  }

  /** It goes into service, then it comes apart again. */
  private boolean reopen() {
    if (!NextLife.isPossible(job.state())) {
      return false;
    }
    Serving serving = new Serving(job);
    serving.putInService("");
    return isTaken(() -> serving.comesApartAgain("it smokes"));
  }

  private boolean slotUnknown(int item) {
    Part part = job.state().getPart(item).part();
    if (job.state().findOwner(part.home()).filter(part::equals).isEmpty()) {
      // Of a part that was replaced nobody is asked any more; older logbooks may say it.
      job.record(new SlotUnknown(item, "mixed up"));
      return true;
    }
    Change change = Change.noting(ChangeKind.SLOT_UNKNOWN, part.home().key(), "mixed up");
    return new Planning(job).make(change) instanceof Planning.Answer.Made;
  }

  private boolean say(Act act) {
    return switch (act.verb()) {
      case CHANGE ->
          new Planning(job)
                  .make(
                      ChangeText.read(
                          ChangeKind.valueOf(act.what()),
                          act.answer(),
                          Gauges.size(act),
                          Unit.INCH))
              instanceof Planning.Answer.Made;
      case WORK -> work(act);
      case CHECK ->
          new Planning(job).answer(act.what(), Look.valueOf(act.answer()), "seen")
              instanceof Planning.Answer.Answered;
      case SLOT_UNKNOWN -> slotUnknown(item(act));
      case LOOK -> look(Subject.ofPart(item(act)), act);
      case READ -> read(Subject.ofPart(item(act)), act);
      case LOBE -> lobe(new Subject.AFeature(Feature.LOBE, motor.slot(act.slot()).spot()), act);
      case DECIDE ->
          new Deciding(job).decide(item(act), Decision.valueOf(act.answer()), "so it is")
              instanceof Deciding.Answer.Decided;
      case ASK -> ask(act.answer().equals("every"));
      default -> isTaken(() -> new ToFit(job).leave(places[act.slot()], "it can stay so"));
    };
  }

  private boolean ask(boolean every) {
    int before = job.history().size();
    new Deciding(job).askEveryPart(every);
    return job.history().size() > before;
  }

  /** Orders work at the machine shop, to a size or of none, and counts it back as ordered. */
  private boolean work(Act act) {
    ShopWork work =
        Arrays.stream(ShopWork.values())
            .filter(one -> one.change().equals(Optional.of(ChangeKind.valueOf(act.what()))))
            .findFirst()
            .orElseThrow();
    List<String> where = act.answer().isEmpty() ? List.of() : List.of(act.answer());
    MachineShop shop = new MachineShop(job);
    boolean ordered =
        done(shop.add(9, new ShopOrder(work, where, "block", 1, "", Gauges.size(act), "", false)));
    List<ShopVisit.Line> lines = shop.findVisit(9).orElseThrow().lines();
    int line = lines.get(lines.size() - 1).line().line();
    return ordered
        && done(shop.backByCount(9, line, 1, act.slot() == 10 ? Gauges.size(act) : "", ""));
  }

  /** Whether the program does not refuse it. */
  private static boolean isTaken(Runnable deed) {
    try {
      deed.run();
      return true;
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  private boolean look(Subject subject, Act act) {
    return new Inspecting(job).answer(subject, act.what(), Look.valueOf(act.answer()), "")
        instanceof Inspecting.Answer.Kept;
  }

  private boolean lobe(Subject subject, Act act) {
    return act.what().equals("lobe-lift") ? read(subject, act) : look(subject, act);
  }

  private boolean read(Subject subject, Act act) {
    return new Measuring(job).take(Gauges.reading(subject, act.what(), act.answer()))
        instanceof Measuring.Answer.Kept;
  }

  private Attempt attempt(Act act) {
    return new Attempt(part(act.piece()), places[act.slot()].spot(), act.isTurned());
  }

  private boolean replace(Act act) {
    String size =
        switch (act.what()) {
          case "" -> "";
          case "listed" -> NewPart.LISTED;
          default -> "0.0" + act.what() + " in";
        };
    HandlingOutcome handled =
        new Handling(job).replace(item(act), "worn out", new NewPart(size, act.answer()));
    if (handled instanceof HandlingOutcome.Logged logged) {
      items.put(act.slot(), logged.part().part().item());
      return true;
    }
    return false;
  }

  private static boolean done(HandlingOutcome handled) {
    return handled instanceof HandlingOutcome.Logged;
  }

  private static boolean done(MachineShop.Answer answer) {
    return answer instanceof MachineShop.Answer.Done;
  }

  private int item(Act act) {
    return items.get(act.piece());
  }

  private String tag(Act act) {
    return new TagBook(job.state(), Benches.NO_NAMES).of(part(act.piece())).digits();
  }

  private Part part(int piece) {
    return job.state().getPart(items.get(piece)).part();
  }

  private Section section(String key) {
    return Section.all(job.state().layout()).stream()
        .filter(section -> section.key().equals(key))
        .findFirst()
        .orElseThrow();
  }

  /** What the program says of a part at a slot. */
  Word judge(int piece, int slot, boolean turned) {
    return Spoken.word(new Fitting(job).judge(part(piece), places[slot].spot(), turned));
  }

  /** The slots that the program calls missing. */
  Set<Integer> missing() {
    return numbers(new ToFit(job).places());
  }

  /** The slots that are filled with something that it holds something against. */
  Set<Integer> filledBut() {
    return numbers(new ToFit(job).fittedBut().stream().map(ToFit.FittedBut::place).toList());
  }

  /** The sections that are closed to this day. */
  Set<String> closed() {
    return job.state().closedSections();
  }

  private Set<Integer> numbers(List<Place> wanted) {
    Set<Integer> numbers = new TreeSet<>();
    wanted.forEach(place -> numbers.add(slots.get(place.key())));
    return numbers;
  }
}
