package wherefrom.ui.benchmap;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.LongSupplier;
import java.util.stream.Stream;
import wherefrom.drawing.EngineStates;
import wherefrom.drawing.Holder;
import wherefrom.drawing.PartState;
import wherefrom.drawing.Sign;
import wherefrom.engine.Spot;
import wherefrom.job.EngineJob;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.PlaceState;
import wherefrom.job.Unmated;
import wherefrom.job.handling.Handling;
import wherefrom.job.handling.HandlingOutcome;
import wherefrom.job.tags.CodeLookup;
import wherefrom.parts.Action;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;
import wherefrom.rules.Cue;
import wherefrom.ui.app.ReadTwice;
import wherefrom.ui.drawn.PartStates;

/** What the bench map shows, and what scans do there. */
final class BenchMapModel {

  /** What a scanned part means. */
  enum Mode {
    /** Its page is opened. */
    LOOK,
    /** It goes off for washing, into the chosen basket, or comes back from it. */
    WASH
  }

  static final String NOT_MATED = "no longer mated";

  private final OpenJob job;
  private final ReadTwice twice;
  private Mode mode = Mode.LOOK;
  private int basket = 1;
  private PartKind kind;
  private Optional<Integer> opened = Optional.empty();
  private Optional<CodeLookup> refused = Optional.empty();
  private String said = "";

  /**
   * @param nanos a steady clock: a tag that is read twice in one go counts once
   */
  BenchMapModel(OpenJob job, LongSupplier nanos) {
    this.job = job;
    this.twice = new ReadTwice(nanos);
    this.kind = kinds().get(0);
  }

  private EngineJob state() {
    return job.state();
  }

  Mode mode() {
    return mode;
  }

  PartKind kind() {
    return kind;
  }

  void show(PartKind shown) {
    kind = shown;
  }

  /** The part whose page is to be opened; asked once. */
  Optional<Integer> takeOpened() {
    Optional<Integer> item = opened;
    opened = Optional.empty();
    return item;
  }

  /** The code that stands for nothing here and is to be answered; asked once. */
  Optional<CodeLookup> takeRefused() {
    Optional<CodeLookup> found = refused;
    refused = Optional.empty();
    return found;
  }

  /** What came of the last scan, in a sentence. */
  String said() {
    return said;
  }

  /** The kinds that are tracked, in the order in which they come out. */
  List<PartKind> kinds() {
    return state().kinds().stream().sorted().toList();
  }

  private Optional<Place> place(Spot spot) {
    return Optional.of(spot)
        .filter(at -> Place.canLive(kind, at))
        .map(at -> new Place(kind, at))
        .filter(place -> state().places().contains(place));
  }

  /** What a place where parts lie is called. */
  static String words(Holder holder) {
    return switch (holder) {
      case BENCH -> "bench";
      case BASKET -> "washing";
      case VICE -> "machine shop";
      case NOWHERE -> "lost";
    };
  }

  /** The same in one short word. */
  static String brief(Holder holder) {
    return holder == Holder.VICE ? "shop" : words(holder);
  }

  /** The places of the kind that is shown whose parts lie somewhere. */
  List<Place> lying(Holder holder) {
    return placesOfKind().filter(place -> isIn(holder, state().state(place))).toList();
  }

  private Stream<Place> placesOfKind() {
    return state().places().stream().filter(place -> place.kind() == kind);
  }

  private static boolean isIn(Holder holder, PlaceState state) {
    return switch (state) {
      case OUT -> holder == Holder.BENCH;
      case WASHING -> holder == Holder.BASKET;
      case AT_SHOP -> holder == Holder.VICE;
      case MISSING -> holder == Holder.NOWHERE;
      case OPEN, IN, IN_BUT, FITTED, FITTED_BUT, OTHER_FITTED, EXCUSED -> false;
    };
  }

  /** {@code Bench: 16 pushrods}; while parts go off for washing {@code Washing, basket 4}. */
  String title() {
    return mode == Mode.WASH
        ? "Washing, basket " + basket
        : "Bench: " + placesOfKind().count() + " " + kind.plural();
  }

  int basket() {
    return basket;
  }

  /** How the places of the kind stand. */
  PlaceTally tally() {
    return new PlaceTally(placesOfKind().map(state()::state).toList());
  }

  /** What the holders do not count; while parts go off for washing {@code scan each part}. */
  String aside() {
    if (mode == Mode.WASH) {
      return "scan each part";
    }
    String tally = tally().words();
    return briefAside().isEmpty() ? tally : tally + ", " + briefAside();
  }

  /** What the mark ! on the drawing means; empty where none stands there. */
  String briefAside() {
    long parted = placesOfKind().filter(unmated()::contains).count();
    return parted == 0 ? "" : "!\u00a0" + parted + " not mated";
  }

  /** The state of a place as it is drawn; what is no longer mated wants a second look. */
  Function<Place, PartState> states() {
    EngineStates plain = PartStates.of(state());
    Set<Place> parted = unmated();
    return plain.with(
        place -> {
          PartState known = plain.apply(place);
          return parted.contains(place)
              ? new PartState(known.look(), Sign.SUSPECT, known.words() + ", " + NOT_MATED)
              : known;
        });
  }

  /** The places, of all kinds, whose parts are no longer worn in to their mates. */
  List<Place> notMated() {
    return state().places().stream().filter(unmated()::contains).toList();
  }

  /** How many places of all kinds are so. */
  int flags() {
    return unmated().size();
  }

  private Set<Place> unmated() {
    Set<Place> places = new HashSet<>();
    Unmated.all(state()).forEach(what -> places.addAll(what.places()));
    return places;
  }

  void look() {
    mode = Mode.LOOK;
    said = "";
  }

  /** Parts that are scanned from now on go off for washing, or come back from it. */
  void wash(int number) {
    mode = Mode.WASH;
    basket = number;
    said = "";
  }

  /** What to do now, in a sentence. */
  String prompt() {
    return switch (mode) {
      case LOOK -> "Tap a place or scan a part: its page opens.";
      case WASH -> "Basket " + basket + ": scan each part's tag as it goes, again when it is back.";
    };
  }

  /** Tapped: the part that sits there, or else the one that belongs there. */
  Optional<Cue> tap(Spot spot) {
    Optional<Part> part =
        place(spot).flatMap(at -> state().findFitted(at).or(() -> state().findOwner(at)));
    return part.map(found -> take(state().getPart(found.item()))).orElseGet(Optional::empty);
  }

  /** Takes a scanned or typed code and says what to sound. */
  Optional<Cue> scan(CodeLookup found) {
    return found.match(
        part -> take(part.part()),
        spot -> scanned(spot.spot()),
        card -> act(card.action()),
        basket -> scanned(basket),
        bag -> refuse(found),
        bigPart -> refuse(found),
        other -> refuse(found));
  }

  private Optional<Cue> scanned(Spot spot) {
    PartKind before = kind;
    kind = kinds().stream().filter(it -> Place.canLive(it, spot)).findFirst().orElse(kind);
    return Place.canLive(before, spot) ? tapAs(before, spot) : tap(spot);
  }

  private Optional<Cue> scanned(CodeLookup.ABasket chosen) {
    wash(chosen.number());
    return Optional.empty();
  }

  private Optional<Cue> refuse(CodeLookup found) {
    refused = Optional.of(found);
    said = "";
    return Optional.empty();
  }

  private Optional<Cue> tapAs(PartKind shown, Spot spot) {
    kind = shown;
    return tap(spot);
  }

  private Optional<Cue> act(Action action) {
    if (action == Action.UNDO) {
      twice.forget();
      said = job.undo().sentence();
    } else {
      said = prompt();
    }
    return Optional.empty();
  }

  private Optional<Cue> take(PartRecord part) {
    int item = part.part().item();
    if (mode == Mode.LOOK) {
      opened = Optional.of(item);
      return Optional.empty();
    }
    if (twice.isAgain(item)) {
      said = "The tag was read twice. It counts once.";
      return Optional.empty();
    }
    Handling handling = new Handling(job);
    boolean back = part.where() == Whereabouts.WASHING;
    HandlingOutcome done =
        back ? handling.backFromWashing(item) : handling.offForWashing(item, basket);
    if (done instanceof HandlingOutcome.Refused refused) {
      said = refused.sentence();
      return Optional.of(Cue.ASK);
    }
    twice.took(item);
    kind = part.part().kind();
    said =
        part.part().words()
            + (back ? ": back from washing, its tag on again." : ": in basket " + basket + ".");
    return Optional.of(Cue.RIGHT);
  }
}
