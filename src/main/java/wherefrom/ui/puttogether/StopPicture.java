package wherefrom.ui.puttogether;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import javafx.scene.layout.Region;
import wherefrom.drawing.Asked;
import wherefrom.drawing.BelowPanRail;
import wherefrom.drawing.Bounds;
import wherefrom.drawing.Column;
import wherefrom.drawing.Drawing;
import wherefrom.drawing.KindPair;
import wherefrom.drawing.PartState;
import wherefrom.engine.Layout;
import wherefrom.engine.Spot;
import wherefrom.engine.ValveSide;
import wherefrom.engine.ValveSpot;
import wherefrom.job.EngineJob;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.rules.CodeVerdict;
import wherefrom.rules.LeftStanding;
import wherefrom.rules.Misplaced;
import wherefrom.rules.Verdict;
import wherefrom.rules.VerdictVisitor;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.drawn.Drawn;
import wherefrom.ui.drawn.DrawnEngine;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.drawn.PartShape;
import wherefrom.ui.drawn.PartStates;

/**
 * What a stop shows beside its words, dead to touch: the engine with both places ringed; where they
 * lie in one cylinder or bearing that alone, large; two parts where the part itself is wrong.
 */
final class StopPicture implements VerdictVisitor<Optional<Region>> {
  private static final double MOST_TEXT = 1.2;

  /** Two parts side by side are specks in less, without the words below them. */
  private static final double LEAST_PAIR_MM = 38;

  private final Touch touch;
  private final EngineJob job;
  private final Layout layout;
  private final Function<Place, PartState> states;

  private StopPicture(Touch touch, EngineJob job) {
    this.touch = touch;
    this.job = job;
    this.layout = job.layout();
    this.states = PartStates.of(job);
  }

  /** The picture; empty where there is nothing to show. */
  static Optional<Region> of(Touch touch, EngineJob job, Verdict stop) {
    return stop.accept(new StopPicture(touch, job));
  }

  /** Whether a room is large enough for a picture: a whole engine leaves one that is too small. */
  static boolean fits(Region picture, double width, double height) {
    return picture instanceof EngineView engine
        ? engine.hasRoom(width, height)
        : width >= picture.minWidth(-1);
  }

  private Drawn drawn() {
    return new Drawn(layout, Asked.of(job.kinds()), touch.scale());
  }

  /** What is drawn of one cylinder: its number has the room of a column, not that of words. */
  private Drawn ofOne() {
    double factor = Math.min(touch.scale().textFactor(), MOST_TEXT);
    return new Drawn(layout, Asked.of(job.kinds()), touch.scale().withText(factor));
  }

  private Optional<Region> shown(
      Function<Bounds, Drawing> maker,
      Function<Place, PartState> as,
      Set<Place> wrong,
      Set<Place> right) {
    DrawnEngine large = DrawnEngine.shown(touch, layout, Asked.of(job.kinds()), maker);
    large.show(as, Set.of());
    large.rings(wrong, right);
    return Optional.of(large);
  }

  private Optional<Region> pair(KindPair.Side wrong, KindPair.Side right) {
    Optional<Region> both = shown(drawn().pair(wrong, right), states, Set.of(), Set.of());
    double least = touch.scale().px(LEAST_PAIR_MM) * touch.scale().textFactor();
    both.ifPresent(shown -> shown.setMinWidth(least));
    return both;
  }

  private Optional<Region> engine(PartKind kind, Set<Place> wrong, Set<Place> right) {
    EngineView view = EngineView.shown(touch, layout, job.kinds());
    view.foot(BelowPanRail.NONE);
    view.look(EngineView.sideOf(kind));
    view.stop(states, wrong, right);
    return Optional.of(view);
  }

  /** Both places: in the engine, or large where they lie beside each other. */
  private Optional<Region> both(Place wrong, Place right) {
    Set<Place> wrongs = Set.of(wrong);
    Set<Place> rights = Set.of(right);
    return neighbors(wrong.spot(), right.spot())
        .flatMap(maker -> shown(maker, states, wrongs, rights))
        .or(() -> engine(wrong.kind(), wrongs, rights));
  }

  private Optional<Function<Bounds, Drawing>> neighbors(Spot one, Spot other) {
    boolean same = Place.homeOf(one) == Place.homeOf(other) && one.number() == other.number();
    return same
        ? one.match(this::both, bore -> none(), this::whole, this::whole, cam -> none())
        : none();
  }

  private static Optional<Function<Bounds, Drawing>> none() {
    return Optional.empty();
  }

  private Optional<Function<Bounds, Drawing>> both(ValveSpot valve) {
    return Optional.of(
        ofOne().columns(valve.cylinder(), EnumSet.of(Column.EXHAUST, Column.INTAKE)));
  }

  private Optional<Function<Bounds, Drawing>> whole(Spot half) {
    return Optional.of(ofOne().bearing(half, Set.of()));
  }

  /** One place, large. */
  private Optional<Region> one(
      Place place, Set<Place> marked, PartState as, Set<Place> wrong, Set<Place> right) {
    Function<Place, PartState> shownAs = at -> at.equals(place) ? as : states.apply(at);
    return large(place.spot(), marked)
        .map(maker -> shown(maker, shownAs, wrong, right))
        .orElseGet(() -> engine(place.kind(), wrong, right));
  }

  /** What shows a spot large; empty where only the engine does. */
  private Optional<Function<Bounds, Drawing>> large(Spot spot, Set<Place> marked) {
    return spot.match(
        valve -> Optional.of(column(valve, marked)),
        bore -> Optional.empty(),
        rod -> Optional.of(ofOne().bearing(rod, marked)),
        main -> Optional.of(ofOne().bearing(main, marked)),
        cam -> Optional.empty());
  }

  private Function<Bounds, Drawing> column(ValveSpot valve, Set<Place> marked) {
    Column column = valve.side() == ValveSide.EXHAUST ? Column.EXHAUST : Column.INTAKE;
    return ofOne().columns(valve.cylinder(), EnumSet.of(column), marked);
  }

  /** What waits or has something against it: its place with the mark, ringed. */
  private Optional<Region> held(Place place, PartState as) {
    return one(place, Set.of(place), as, Set.of(), Set.of(place));
  }

  @Override
  public Optional<Region> rightPlace(Verdict.RightPlace right) {
    return engine(right.part().kind(), Set.of(), Set.of(right.place()));
  }

  @Override
  public Optional<Region> wrongPlace(Misplaced.WrongPlace wrong) {
    return both(wrong.place(), wrong.belongs().place());
  }

  @Override
  public Optional<Region> wrongMate(Misplaced.WrongMate wrong) {
    Place home = wrong.part().home();
    return home.equals(wrong.place())
        ? one(home, Set.of(), states.apply(home), Set.of(home), Set.of())
        : both(wrong.place(), home);
  }

  @Override
  public Optional<Region> wrongKind(Misplaced.WrongKind wrong) {
    PartKind held = wrong.part().kind();
    KindPair.Side hand = new KindPair.Side(held, "held");
    return wrong
        .wanted()
        .or(() -> onlyOpen(wrong.spot()))
        .flatMap(kind -> pair(hand, new KindPair.Side(kind, "wanted")))
        .or(() -> engine(held, Set.of(), Set.of(wrong.part().home())));
  }

  /** The kind that is open at a spot, where no other is: of several none is more wanted. */
  private Optional<PartKind> onlyOpen(Spot spot) {
    List<PartKind> open =
        job.kinds().stream()
            .filter(kind -> Place.canLive(kind, spot))
            .filter(kind -> job.findFitted(new Place(kind, spot)).isEmpty())
            .toList();
    return open.size() == 1 ? Optional.of(open.get(0)) : Optional.empty();
  }

  @Override
  public Optional<Region> wrongHalf(Misplaced.WrongHalf wrong) {
    return both(wrong.place(), wrong.part().home());
  }

  @Override
  public Optional<Region> wrongEnd(Misplaced.WrongEnd wrong) {
    PartKind kind = wrong.part().kind();
    boolean lower = PartShape.isLowerShell(wrong.place());
    return pair(
        new KindPair.Side(kind, true, lower, "held"),
        new KindPair.Side(kind, false, lower, "right"));
  }

  @Override
  public Optional<Region> placeTaken(Verdict.PlaceTaken taken) {
    Place place = taken.place();
    return one(place, Set.of(), PartState.FITTED, Set.of(place), Set.of());
  }

  @Override
  public Optional<Region> alreadyFitted(Verdict.AlreadyFitted fitted) {
    return both(fitted.place(), fitted.fittedAt());
  }

  @Override
  public Optional<Region> fittedBut(Verdict.FittedBut fitted) {
    return held(fitted.place(), PartState.FITTED_BUT);
  }

  @Override
  public Optional<Region> notCleared(Verdict.NotCleared held) {
    return held(held.place(), PartState.NOT_CLEARED);
  }

  @Override
  public Optional<Region> mustBeNew(Verdict.MustBeNew must) {
    return oldAndNew(must.part());
  }

  @Override
  public Optional<Region> retired(Verdict.Retired retired) {
    return oldAndNew(retired.part());
  }

  private Optional<Region> oldAndNew(Part part) {
    boolean lower = PartShape.isLowerShell(part.home());
    return pair(
        new KindPair.Side(part.kind(), false, lower, "old"),
        new KindPair.Side(part.kind(), false, lower, "NEW"));
  }

  @Override
  public Optional<Region> leftStanding(LeftStanding left) {
    return left.part().flatMap(part -> left(part, left.spot()));
  }

  private Optional<Region> left(Part part, Optional<Spot> spot) {
    Place home = part.home();
    return spot.filter(at -> Place.canLive(part.kind(), at))
        .map(at -> new Place(part.kind(), at))
        .filter(at -> !at.equals(home))
        .flatMap(at -> both(at, home))
        .or(() -> engine(part.kind(), Set.of(), Set.of(home)));
  }

  @Override
  public Optional<Region> code(CodeVerdict code) {
    return Optional.empty();
  }
}
