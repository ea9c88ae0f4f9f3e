package wherefrom.ui.subject;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import wherefrom.drawing.PartState;
import wherefrom.engine.MainSpot;
import wherefrom.engine.RodSpot;
import wherefrom.engine.ShellHalf;
import wherefrom.engine.Spot;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.job.before.BeforeTeardown;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.drawn.PartStates;
import wherefrom.ui.engine.EngineIndex;

/** All parts of a kind, or every place of a feature, found on the drawn engine. */
public final class SubjectIndex implements EngineIndex {
  private final ScreenContext context;
  private final String title;
  private final PartKind kind;
  private final boolean parts;
  private final Map<Place, List<Subject>> subjects = new LinkedHashMap<>();
  private final Function<Subject, PartState> state;
  private final Consumer<Subject> opened;

  private SubjectIndex(
      ScreenContext context,
      String title,
      PartKind kind,
      boolean parts,
      Function<Subject, PartState> state,
      Consumer<Subject> opened) {
    this.context = context;
    this.title = title;
    this.kind = kind;
    this.parts = parts;
    this.state = state;
    this.opened = opened;
  }

  /**
   * The index of one group's subjects.
   *
   * @param all of one kind or feature
   * @param state how each stands
   * @param opened told of the one that was tapped
   * @return empty where the drawing has no place for them: banks, and what there is one of
   */
  public static Optional<SubjectIndex> of(
      ScreenContext context,
      String title,
      List<Subject> all,
      Function<Subject, PartState> state,
      Consumer<Subject> opened) {
    EngineJob job = context.state();
    Optional<Place> first = all.stream().findFirst().flatMap(one -> place(job, one));
    return first.map(
        one -> {
          boolean parts = all.get(0) instanceof Subject.APart;
          SubjectIndex index = new SubjectIndex(context, title, one.kind(), parts, state, opened);
          all.forEach(subject -> index.add(job, subject));
          return index;
        });
  }

  private void add(EngineJob job, Subject subject) {
    place(job, subject)
        .ifPresent(at -> subjects.computeIfAbsent(at, none -> new ArrayList<>()).add(subject));
  }

  /** Where a subject is drawn; empty for what has no place of its own. */
  static Optional<Place> place(EngineJob job, Subject subject) {
    return subject.match(
        part -> job.findPart(part.item()).map(found -> found.part().home()),
        at -> spot(at).map(spot -> new Place(standIn(at.feature()), spot)),
        beside -> Optional.empty());
  }

  /** Where a feature's place is drawn. */
  private static Optional<Spot> spot(Subject.AFeature at) {
    return switch (at.feature().reach()) {
      case VALVE, CAM_BEARING -> at.site().findSpot();
      case CYLINDER -> Optional.of(cylinder(at));
      case MAIN -> Optional.of(new MainSpot(at.number(), ShellHalf.UPPER));
      case BANK, WHOLE -> Optional.empty();
    };
  }

  private static Spot cylinder(Subject.AFeature at) {
    return switch (standIn(at.feature())) {
      case ROD_CAP -> new RodSpot(at.number(), ShellHalf.LOWER);
      case ROD -> new RodSpot(at.number(), ShellHalf.UPPER);
      default -> new wherefrom.engine.BoreSpot(at.number());
    };
  }

  /** The part that is drawn where the feature is. */
  private static PartKind standIn(Feature feature) {
    return switch (feature) {
      case LOBE, LIFTER_BORE -> PartKind.LIFTER;
      case STUD, ROCKER_SHAFT -> PartKind.ROCKER;
      case VALVE_SEAT, VALVE_TIP -> PartKind.VALVE;
      case CAM_JOURNAL -> PartKind.CAM_BEARING;
      case ROD_JOURNAL -> PartKind.ROD_CAP;
      case ROD_HOUSING -> PartKind.ROD;
      case MAIN_JOURNAL, MAIN_HOUSING -> PartKind.MAIN_SHELL;
      default -> PartKind.PISTON;
    };
  }

  @Override
  public String title() {
    return title;
  }

  @Override
  public Optional<PartKind> kind() {
    return Optional.of(kind);
  }

  @Override
  public Collection<Place> places() {
    return subjects.keySet();
  }

  @Override
  public Function<Place, PartState> states() {
    Map<Place, PartState> known = new LinkedHashMap<>();
    subjects.forEach((place, all) -> known.put(place, state.apply(all.get(0))));
    Function<Place, PartState> said = place -> known.getOrDefault(place, PartState.IN);
    return parts ? PartStates.asTheyAre(context.state(), said) : said;
  }

  /** Where the tests before teardown said to look. */
  @Override
  public Set<Place> here() {
    Predicate<Subject> named = new BeforeTeardown(context.getJob()).named();
    return subjects.entrySet().stream()
        .filter(one -> one.getValue().stream().anyMatch(named))
        .map(Map.Entry::getKey)
        .collect(Collectors.toSet());
  }

  @Override
  public boolean isOfParts() {
    return parts;
  }

  @Override
  public void open(Place place) {
    List<Subject> here = subjects.getOrDefault(place, List.of());
    SubjectPick.open(context, title, here, one -> state.apply(one).words(), opened);
  }

  @Override
  public void scan(Scanned scanned) {
    Tagged.find(context, scanned).ifPresent(opened);
  }
}
