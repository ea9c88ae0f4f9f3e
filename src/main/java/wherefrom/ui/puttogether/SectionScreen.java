package wherefrom.ui.puttogether;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.engine.Section;
import wherefrom.job.change.Planning;
import wherefrom.job.puttogether.FirstStart;
import wherefrom.job.puttogether.OnPurpose;
import wherefrom.job.puttogether.ToFit;
import wherefrom.parts.Place;
import wherefrom.text.Words;
import wherefrom.ui.app.CautionScreen;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ReasonAsking;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.changes.StandingScreen;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;

/** The open places of a section; it is finished only when each is filled or excused. */
public final class SectionScreen extends Page {
  private final Section section;
  private final MissingModel model;
  private final PlaceWays ways;
  private final Pager<Region> rows;
  private final TagKey close;
  private final VBox view;

  public SectionScreen(ScreenContext context, Section section) {
    super(context, "");
    this.section = section;
    model = new MissingModel(context.getJob());
    ways = new PlaceWays(context, model);
    rows = Pager.list(context.touch(), row -> row);
    Touch touch = context.touch();
    close = touch.tag("Finish section", "", this::press);
    Tiles keys =
        new Tiles(
            context.scale(),
            2,
            Scale.GAP_MM,
            List.of(
                touch.key("Cautions", this::cautions),
                touch.key(
                    touch.brief("Torque cards", "Torque"),
                    () -> context.navigator().show(ScreenId.TORQUE))));
    view = Panes.column(context.scale(), rows, close, keys);
    lay(view);
  }

  @Override
  public String title() {
    return Words.capital(section.words());
  }

  @Override
  protected void refresh() {
    List<Place> open = model.open(section);
    boolean closed = context.state().closedSections().contains(section.key());
    List<Region> lines = new ArrayList<>();
    List<ToFit.FittedBut> against = model.fittedBut(section);
    against.forEach(one -> lines.add(row(one)));
    open.forEach(place -> lines.add(row(place)));
    boolean settled = open.isEmpty() && against.isEmpty();
    if (settled) {
      // With large letters a page holds one row: what is still open is not the one left over.
      checks().ifPresent(lines::add);
      lines.add(
          ListRow.told(
              context.touch(),
              "Every place is filled",
              closed
                  ? "The section is finished."
                  : "Or left empty for a reason. Look it over, then finish the section."));
    }
    rows.refill(lines);
    String left = settled ? "" : MissingModel.count(open.size(), against.size());
    close.setWords(
        closed && settled ? "Finished" : open.isEmpty() ? "Finish section" : "Fit the next",
        touch().brief(left, ""));
  }

  /**
   * Checks hold no section up: some wait for the whole engine. They are named here all the same.
   */
  private Optional<Region> checks() {
    int open = new Planning(context.getJob()).openChecks().size();
    return open == 0
        ? Optional.empty()
        : Optional.of(
            ListRow.key(
                context.touch(),
                "Open checks: " + open,
                List.of("Some may be easier before more of the engine is shut"),
                () -> context.navigator().open(() -> StandingScreen.openChecks(context))));
  }

  private Region row(ToFit.FittedBut one) {
    return ListRow.key(
        context.touch(),
        "! " + touch().brief(whole(one.place()), brief(one.place())),
        List.of(context.touch().brief(one.sentence(), one.brief())),
        () -> choose(one));
  }

  private static String brief(Place place) {
    return place.brief() + " " + Halves.what(place);
  }

  private String whole(Place place) {
    return Words.capital(place.words()) + ": " + context.state().state(place).words();
  }

  private void choose(ToFit.FittedBut one) {
    List<Choice<Runnable>> ways = new ArrayList<>();
    ways.add(new Choice<>(() -> show(one.part().item()), "Show its part", "decide, inspect"));
    if (context.state().findFitted(one.place()).isPresent()) {
      ways.add(new Choice<>(() -> takeOut(one), "Take it out", "its place is open then"));
    }
    if (one.canStay()) {
      ways.add(new Choice<>(() -> leave(one), "Leave it as it is", "with a reason"));
    }
    context
        .navigator()
        .open(() -> new ChoiceScreen<>(context, one.place().words(), ways, Runnable::run));
  }

  private void takeOut(ToFit.FittedBut one) {
    model.takeOut(one.part());
    told();
  }

  private void leave(ToFit.FittedBut one) {
    OnPurpose why = OnPurpose.staying(one.against().get(0).verdict());
    ReasonAsking.ask(
        context,
        why.question(),
        why.reasons(),
        words -> {
          model.excuse(one.place(), words);
          told();
        });
  }

  private void show(int item) {
    context.navigator().show(ScreenId.PART, item);
  }

  private Region row(Place place) {
    return ListRow.key(
        context.touch(),
        touch().brief(Words.capital(place.words()), Words.capital(brief(place))),
        List.of(model.words(place)),
        () -> ways.choose(place));
  }

  /** As long as a place is open the next part is what is to be done. */
  private void press() {
    if (model.open(section).isEmpty()) {
      close();
    } else {
      context.navigator().show(ScreenId.PUT_TOGETHER);
    }
  }

  /** Bags that should be used up by now are asked about first. */
  private void close() {
    Optional<String> bags = new BesideTogether(context).openBags();
    boolean settled = model.open(section).isEmpty() && model.fittedBut(section).isEmpty();
    if (bags.isEmpty() || !settled) {
      finish();
      return;
    }
    List<Choice<Runnable>> ways =
        List.of(
            new Choice<>(
                () -> context.navigator().show(ScreenId.BAGS), "Look at the bags", bags.get()),
            new Choice<>(this::finish, "Finish all the same", "they stay open"));
    context
        .navigator()
        .open(() -> new ChoiceScreen<>(context, "Bags are open", ways, Runnable::run));
  }

  private void finish() {
    model.close(section);
    told();
    boolean closed = context.state().closedSections().contains(section.key());
    if (closed && new FirstStart(context.getJob()).isDue()) {
      context.navigator().open(() -> new FirstStartScreen(context));
    } else if (closed) {
      context.navigator().back();
      context.say(title() + ": finished.");
    }
  }

  private void cautions() {
    context.navigator().open(() -> new CautionScreen(context, model.cautions(section)));
  }

  private void told() {
    ways.told();
  }
}
