package wherefrom.ui.phone;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import wherefrom.job.phone.PhoneDoor;
import wherefrom.job.phone.PhoneDoor.Joined;
import wherefrom.job.phone.Phones.Nearby;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.TwoHalves;

/** Phones join here: the code to photograph, who has joined, and the end of it. */
public final class PhonesScreen extends Page {
  private static final double LEAST_MM = 40;

  private final PhonesIn phones;
  private final PhonesModel model;
  private final SymbolView symbol;
  private final FitText headline;
  private final FitText number;
  private final Pager<PhonesModel.Row> list;
  private final KeyRow keys;
  private final Foot foot;
  private final TagKey tag;
  private final StackPane view = Panes.grow(new StackPane());
  private boolean listAlone;

  public PhonesScreen(ScreenContext context) {
    super(context, "Add a phone");
    phones = PhonesIn.of(context);
    model = new PhonesModel(phones);
    symbol = Panes.grow(new SymbolView(context.scale().px(LEAST_MM)));
    headline = touch().small("");
    number = touch().verdict("");
    list = Pager.list(touch(), this::row);
    keys = KeyRow.of(context);
    tag = tag(this::goOn);
    foot = new Foot(context, tag, keys);
    lay(view);
  }

  private Region row(PhonesModel.Row row) {
    return row.phone()
        .<Region>map(
            phone -> ListRow.key(touch(), row.heading(), List.of(row.words()), () -> ask(phone)))
        .orElseGet(() -> ListRow.plain(touch(), row.heading(), List.of(row.words())));
  }

  @Override
  public void shown() {
    phones.listen(this::changed);
    super.shown();
  }

  @Override
  public void hidden() {
    phones.listen(() -> {});
  }

  @Override
  protected void refresh() {
    boolean open = model.isOpen();
    headline.setWords(model.headline());
    number.setWords(model.number());
    model.invitation().ifPresent(code -> symbol.show(code.symbol()));
    list.refill(open ? model.rows() : PhonesModel.about());
    boolean invited = model.invitation().isPresent();
    foot.offerTag(!invited);
    tag.setWords(open ? "New code" : "Let phones in", open ? "" : "they photograph a code");
    number.setManaged(invited);
    keys.setActs(open ? acts() : List.of());
    List<Node> all = new ArrayList<>();
    all.add(open ? opened() : list);
    all.add(foot);
    view.getChildren().setAll(Panes.column(context.scale(), all.toArray(Node[]::new)));
  }

  private List<KeyRow.Act> acts() {
    List<KeyRow.Act> acts = new ArrayList<>();
    acts.add(act("Stop", this::stop));
    if (model.invitation().isPresent()) {
      acts.add(act("New code", this::invite));
    }
    if (touch().isLarge()) {
      acts.add(act(listAlone ? "Show code" : "Phones", this::turn));
    }
    return acts;
  }

  /** The words beside the code; large letters leave the list to a key. */
  private Region opened() {
    if (touch().isLarge() && listAlone) {
      return list;
    }
    boolean invited = model.invitation().isPresent();
    Region told =
        touch().isLarge()
            ? Panes.grow(invited ? number : headline)
            : Panes.grow(Panes.column(context.scale(), new VBox(headline, number), list));
    return invited ? new TwoHalves(context.scale(), told, symbol) : told;
  }

  private void turn() {
    listAlone = !listAlone;
    refresh();
  }

  private void goOn() {
    if (model.isOpen()) {
      invite();
    } else {
      letIn();
    }
  }

  private void invite() {
    phones.door().ifPresent(PhoneDoor::invite);
  }

  /** Where the computer is on several networks, the person knows which the phone is on. */
  private void letIn() {
    List<Nearby> nearby = context.services().phones().list();
    if (nearby.isEmpty()) {
      context.say(PhonesModel.NO_NETWORK);
    } else if (nearby.size() == 1) {
      open(nearby.get(0));
    } else {
      List<Choice<Nearby>> choices =
          nearby.stream().map(one -> new Choice<>(one, one.network(), one.address())).toList();
      open(
          () -> new ChoiceScreen<>(context, "Which network is the phone on?", choices, this::open));
    }
  }

  private void open(Nearby at) {
    context.attempt(() -> phones.open(at));
    refresh();
  }

  private void stop() {
    phones.stop();
    context.say("No phone can do anything more here.");
    refresh();
  }

  private void ask(Joined phone) {
    List<Choice<Boolean>> choices =
        List.of(
            new Choice<>(true, "Put it out", "it can do nothing more here"),
            new Choice<>(false, "Leave it in", ""));
    open(
        () ->
            new ChoiceScreen<>(
                context, PhonesModel.name(phone), choices, out -> putOut(phone, out)));
  }

  private void putOut(Joined phone, boolean out) {
    if (out) {
      phones.door().ifPresent(door -> door.putOut(phone.number()));
      refresh();
    }
  }
}
