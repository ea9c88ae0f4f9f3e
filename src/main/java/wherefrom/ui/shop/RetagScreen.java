package wherefrom.ui.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.Tool;
import wherefrom.parts.PartKind;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.controls.Either;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.subject.Cell;
import wherefrom.ui.subject.CellGrid;
import wherefrom.ui.subject.SubjectPictures;

/** Parts without their tags: the kind, the readings taken now, each part's figures. */
public final class RetagScreen extends Page {
  private static final int COLUMNS = 3;

  private final RetagModel model;
  private final FitText prompt;
  private final Pager<Region> rows;
  private final CellGrid kinds;
  private final StackPane list = Panes.grow(new StackPane());
  private final KeyRow keys;
  private final TagKey measure;

  /** Opens it with what was typed of the lost ones before. */
  public static void open(ScreenContext context) {
    LostTags typed = context.kept().keepOfJob(LostTags.class, LostTags::new);
    RetagModel model = new RetagModel(context.getJob(), typed);
    context.navigator().open(() -> new RetagScreen(context, model));
  }

  RetagScreen(ScreenContext context, RetagModel model) {
    super(context, "");
    this.model = model;
    prompt = touch().small("");
    rows = Pager.list(context.touch(), row -> row);
    kinds = new CellGrid(touch(), COLUMNS);
    measure = touch().tag("", "", this::next);
    keys = KeyRow.of(context);
    lay(Panes.column(context.scale(), prompt, list, new Foot(context, measure, keys)));
  }

  @Override
  public String title() {
    return model.kind().map(kind -> "Tags lost: " + kind.plural()).orElse("Tags lost");
  }

  @Override
  public Object identity() {
    return RetagScreen.class;
  }

  @Override
  protected void refresh() {
    kinds.show(model.kinds().stream().map(this::cell).toList());
    list.getChildren().setAll(listed());
    prompt.setWords(words());
    List<Region> lines = new ArrayList<>();
    for (RetagModel.Found found : model.found()) {
      lines.add(
          ListRow.key(
              context.touch(),
              "Number " + found.mark() + ": " + found.readings(),
              List.of(),
              () -> change(found)));
    }
    rows.refill(lines);
    measure.setWords(model.canMeasure() ? "Measure number " + model.nextMark() : "Changes", "");
    keys.setActs(offered());
  }

  /** Which kind it is comes first. */
  private boolean offersKinds() {
    return model.found().isEmpty() && !model.kinds().isEmpty();
  }

  /** With large letters a key leads to the kinds, and they stand here where all have room. */
  private Region listed() {
    if (!offersKinds()) {
      return rows;
    }
    return touch().isLarge()
        ? new Either(room -> kinds.prefHeight(room.width()) <= room.height() ? kinds : rows)
        : kinds;
  }

  private Cell cell(PartKind kind) {
    return new Cell(
        Words.capital(kind.plural()),
        model.known(kind),
        () -> kind(kind),
        Optional.of(SubjectPictures.of(context, kind)),
        OptionalDouble.empty(),
        model.kind().filter(kind::equals).isPresent());
  }

  private String words() {
    if (!model.canMeasure()) {
      return "No "
          + model.kind().map(PartKind::word).orElse("part")
          + " that is out was measured before. Readings cannot tell them apart."
          + " Record under Changes that their places are unknown.";
    }
    return model.found().isEmpty()
        ? "Chalk a number on each part without a tag. Measure all of them. The whole"
            + " group is matched at once."
        : touch().brief("Measure the next one, or see which is which.", "Measure the next one.");
  }

  /** A reading can be left out where another is taken as well. */
  private List<KeyRow.Act> offered() {
    List<KeyRow.Act> offered = new ArrayList<>();
    if (model.kind().isEmpty()) {
      return offered;
    }
    if (!model.found().isEmpty()) {
      offered.add(act("Which is which?", this::match));
    }
    if (!offersKinds() || touch().isLarge()) {
      offered.add(act("Other kind", this::chooseKind));
    }
    if (model.canMeasure()) {
      offered.add(act("Tools…", this::chooseTool));
    }
    if (model.plans().size() > 1) {
      model.plans().forEach(plan -> offered.add(taken(plan)));
    }
    return offered;
  }

  private KeyRow.Act taken(ReadingPlan plan) {
    return act(
        plan.title() + (model.uses(plan.key()) ? ": yes" : ": no"),
        () -> {
          model.use(plan.key());
          context.navigator().changed();
        });
  }

  private void chooseKind() {
    List<Choice<PartKind>> choices = new ArrayList<>();
    model
        .kinds()
        .forEach(kind -> choices.add(new Choice<>(kind, kind.plural(), model.known(kind))));
    open(() -> new ChoiceScreen<>(context, "Which have lost their tags?", choices, this::kind));
  }

  private void kind(PartKind kind) {
    model.choose(kind);
    context.navigator().changed();
  }

  private void chooseTool() {
    List<Choice<Runnable>> choices = new ArrayList<>();
    for (ReadingPlan plan : model.used()) {
      for (Tool tool : context.state().measures().tools()) {
        String now = tool.name().equals(model.tool(plan.key())) ? "used now" : "";
        choices.add(
            new Choice<>(
                () -> model.tool(plan.key(), tool.name()), plan.title() + ": " + tool.name(), now));
      }
    }
    open(
        () ->
            new ChoiceScreen<>(
                context,
                "Measured with",
                choices,
                chosen -> {
                  chosen.run();
                  context.navigator().changed();
                }));
  }

  /** Where no reading can tell the parts, that their places are unknown is a change. */
  private void next() {
    if (!model.canMeasure()) {
      context.navigator().show(ScreenId.CHANGES);
      return;
    }
    if (model.used().isEmpty()) {
      context.say("Choose at least one reading that is taken.");
      return;
    }
    measure(model.nextMark());
  }

  private void measure(String mark) {
    List<ReadingPlan> lacking = model.lacks(mark);
    measure(mark, lacking.isEmpty() ? model.used() : lacking);
  }

  /** One figure after the other; each is kept at once, so that Back loses none of them. */
  private void measure(String mark, List<ReadingPlan> left) {
    ReadingPlan plan = left.get(0);
    String title = "Number " + mark;
    String question =
        plan.title() + ", in " + model.unit(plan) + ", with " + model.tool(plan.key()) + ".";
    Consumer<String> taken =
        figure -> {
          model.read(mark, plan.key(), figure);
          if (left.size() > 1) {
            measure(mark, left.subList(1, left.size()));
          } else {
            context.navigator().changed();
          }
        };
    open(
        () ->
            plan.least() < 0
                ? NumberEntryScreen.signed(context, title, question, taken)
                : NumberEntryScreen.size(context, title, question, 9, taken));
  }

  private void change(RetagModel.Found found) {
    List<Choice<Boolean>> choices =
        List.of(
            new Choice<>(true, "Measure it again", found.readings()),
            new Choice<>(false, "It is none of them: take it off the list", ""));
    open(
        () ->
            new ChoiceScreen<>(
                context,
                "Number " + found.mark(),
                choices,
                again -> {
                  if (again) {
                    measure(found.mark());
                  } else {
                    model.forget(found.mark());
                    context.navigator().changed();
                  }
                }));
  }

  private void match() {
    context.attempt(
        () -> {
          if (model.match()) {
            open(() -> new MatchScreen(context, model));
          } else {
            context.say(model.trouble());
          }
        });
  }
}
