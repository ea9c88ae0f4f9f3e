package wherefrom.ui.part;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.job.handling.Handled;
import wherefrom.job.handling.Handling;
import wherefrom.job.tags.Found;
import wherefrom.job.tags.TagBook;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.NewPartAsking;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.Reasons;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.photos.PhotoLoader;
import wherefrom.ui.photos.PhotoStrip;
import wherefrom.ui.photos.PhotoTaking;

/** One part: where it is, its tag, notes, photographs, history, and what can be done with it. */
public final class PartScreen implements Screen, Scannable {
  private static final int KEYS_PER_ROW = 5;

  /** Where the person's text is large, so many deeds have a key; the others are behind one. */
  private static final int FEW = 3;

  private final Desk desk;
  private final PartModel model;
  private final PhotoLoader loader;
  private final Pager<Supplier<Region>> lines;
  private final Tiles keys;
  private final VBox view;

  /**
   * @param item the part's number, which must be one of the open job's
   */
  public PartScreen(Desk desk, int item) {
    this.desk = desk;
    model = new PartModel(desk.getJob(), desk.equipment().clock(), item);
    loader = new PhotoLoader(desk);
    lines = Pager.list(desk.touch(), Supplier::get);
    keys = new Tiles(desk.scale(), KEYS_PER_ROW, Scale.GAP_MM, List.of());
    view = Panes.column(desk.scale(), lines, keys);
  }

  @Override
  public String title() {
    return model.title();
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    lines.refill(rows());
    List<PartModel.Deed> deeds = model.deeds();
    boolean some = desk.touch().isLarge() && deeds.size() > FEW;
    List<Node> offered = new ArrayList<>();
    for (PartModel.Deed deed : some ? deeds.subList(0, FEW) : deeds) {
      String words = desk.touch().brief(deed.words(), deed.brief());
      offered.add(desk.touch().key(words, () -> act(deed)));
    }
    if (some) {
      offered.add(desk.touch().key("More", () -> more(deeds.subList(FEW, deeds.size()))));
    }
    keys.setCells(offered);
  }

  @Override
  public void changed() {
    shown();
  }

  @Override
  public void scan(String text) {
    Found found = new TagBook(desk.state(), desk.shelf()).find(text);
    if (found instanceof Found.APart part) {
      desk.navigator().back();
      desk.navigator().show(ScreenId.PART, part.part().part().item());
    } else {
      desk.refuse(found, "Scan a part's tag to open its page.");
    }
  }

  /** Where it is, its photographs, then all the rest. */
  private List<Supplier<Region>> rows() {
    List<Supplier<Region>> rows = new ArrayList<>();
    model.first().forEach(line -> rows.add(() -> row(line)));
    PhotoStrip.rows(desk, loader, model::photos, PhotoStrip.ACROSS)
        .forEach(strip -> rows.add(() -> strip));
    model.more().forEach(line -> rows.add(() -> row(line)));
    return rows;
  }

  private ListRow row(PartModel.Line line) {
    return ListRow.plain(desk.touch(), line.heading(), List.of(line.words()));
  }

  private void more(List<PartModel.Deed> deeds) {
    List<Choice<PartModel.Deed>> choices =
        deeds.stream().map(deed -> new Choice<>(deed, deed.words(), "")).toList();
    desk.navigator().open(() -> new ChoiceScreen<>(desk, model.title(), choices, this::act));
  }

  private void act(PartModel.Deed deed) {
    switch (deed) {
      case INSPECT -> desk.navigator().show(ScreenId.INSPECT, model.part().item());
      case MEASURE -> desk.navigator().show(ScreenId.MEASURE, model.part().item());
      case NOTE -> words("Note: " + model.title(), model::note);
      case PHOTO -> PhotoTaking.ask(desk, model.part());
      case DECIDE -> desk.navigator().show(ScreenId.DECIDE, model.part().item());
      case REPRINT -> Reasons.ask(desk, "Why again?", Handling.REISSUE_REASONS, this::reissue);
      case PIECES -> number("How many pieces hang on its wire, under one tag?", model::pieces);
      case WASH -> number("The basket's number.", model::wash);
      case BACK -> done(model::back);
      case TOOK_OUT -> done(model::tookOut);
      case LOST -> words("Where it was last seen", model::lost);
      case FOUND -> done(model::found);
      case REPLACE -> Reasons.ask(desk, "Why a new part?", Handling.REPLACE_REASONS, this::replace);
    }
  }

  private void words(String title, Function<String, Handled> deed) {
    desk.navigator()
        .open(() -> new TextEntryScreen(desk, title, "", typed -> done(() -> deed.apply(typed))));
  }

  private void number(String question, Function<String, Handled> deed) {
    desk.navigator()
        .open(
            () ->
                NumberEntryScreen.digits(
                    desk, model.title(), question, 3, typed -> done(() -> deed.apply(typed))));
  }

  private void reissue(String reason) {
    print(() -> model.reissue(reason));
  }

  private void replace(String reason) {
    NewPartAsking.ask(desk, model.part(), fresh -> print(() -> model.replace(reason, fresh)));
  }

  /** The tag that a deed calls for is printed at once. */
  private void print(Supplier<Handled> deed) {
    desk.attempt(
        () -> {
          Handled came = deed.get();
          if (came instanceof Handled.Logged logged) {
            desk.navigator().show(ScreenId.PRINT_TAGS, logged.part().part().item());
          } else {
            desk.say(((Handled.Refused) came).sentence());
          }
        });
  }

  private void done(Supplier<Handled> deed) {
    desk.attempt(
        () -> {
          if (deed.get() instanceof Handled.Refused refused) {
            desk.say(refused.sentence());
          }
        });
    desk.navigator().changed();
  }
}
