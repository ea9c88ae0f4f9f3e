package wherefrom.ui.decide;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntConsumer;
import wherefrom.drawing.DrawnAs;
import wherefrom.drawing.PartState;
import wherefrom.drawing.Sign;
import wherefrom.inspection.Decision;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScannedPart;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.drawn.PartStates;
import wherefrom.ui.engine.EngineIndex;

/** The used parts of a kind on the engine: what is decided of each, what is proposed. */
final class DecideIndex implements EngineIndex {
  private final ScreenContext context;
  private final DecideModel model;
  private final PartKind kind;
  private final IntConsumer opened;

  /**
   * @param opened is given the item of the part that was tapped or scanned
   */
  DecideIndex(ScreenContext context, DecideModel model, PartKind kind, IntConsumer opened) {
    this.context = context;
    this.model = model;
    this.kind = kind;
    this.opened = opened;
  }

  private Map<Place, DecideModel.Line> lines() {
    Map<Place, DecideModel.Line> lines = new LinkedHashMap<>();
    model.lines(kind).forEach(line -> lines.put(line.part().home(), line));
    return lines;
  }

  @Override
  public String title() {
    return "Decide: " + kind.plural();
  }

  @Override
  public Optional<PartKind> kind() {
    return Optional.of(kind);
  }

  @Override
  public Collection<Place> places() {
    return lines().keySet();
  }

  @Override
  public Function<Place, PartState> states() {
    Map<Place, PartState> states = new LinkedHashMap<>();
    lines().forEach((place, line) -> states.put(place, state(line)));
    return PartStates.asTheyAre(context.state(), place -> states.getOrDefault(place, PartState.IN));
  }

  private static PartState state(DecideModel.Line line) {
    if (line.decided().isPresent()) {
      String decided = line.decided().get().word();
      return line.decided().get() == Decision.REUSE
          ? PartStates.done(decided)
          : new PartState(DrawnAs.OUT, Sign.FITTED, decided);
    }
    String words = "undecided. " + line.proposed();
    return line.held() ? new PartState(DrawnAs.IN, Sign.AGAINST, words) : PartStates.toDo(words);
  }

  @Override
  public void open(Place place) {
    Optional.ofNullable(lines().get(place)).ifPresent(line -> opened.accept(line.part().item()));
  }

  @Override
  public void scan(Scanned scanned) {
    ScannedPart.find(context, scanned, DecideScreen.WANTED).ifPresent(opened::accept);
  }
}
