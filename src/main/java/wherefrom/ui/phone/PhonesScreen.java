package wherefrom.ui.phone;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.drawing.Bounds;
import wherefrom.job.phone.PhoneDoor;
import wherefrom.job.phone.PhoneDoor.Joined;
import wherefrom.job.phone.Phones.Nearby;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Either;
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
  private final Either view;
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
    view = new Either(this::suiting).needing(this::leastHigh);
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
    view.again();
  }

  /** All of it where there is room; else large letters leave the list of phones to a key. */
  private Region suiting(Bounds room) {
    if (!model.isOpen()) {
      keys.setActs(List.of());
      return column(list);
    }
    keys.setActs(acts(false));
    double words = wordsHigh(room);
    double wide = wide(room);
    double rows = touch().isLarge() ? list.prefHeight(wide) : list.minHeight(wide);
    boolean whole = isFree(words + context.scale().gap() + rows, room);
    if (whole && !listAlone) {
      return column(beside(Panes.grow(Panes.column(context.scale(), said(), list))));
    }
    keys.setActs(acts(true));
    if (listAlone) {
      return column(list);
    }
    if (!isFree(words, room)) {
      headline.setWords(model.brief());
    }
    boolean told = !isInvited() || isFree(wordsHigh(room), room);
    return column(beside(Panes.grow(told ? said() : new VBox(number))));
  }

  /** Under this the letters are made smaller. */
  private double leastHigh(double width) {
    boolean listed = !model.isOpen() || listAlone;
    double told = listed ? list.minHeight(width) : 0;
    return told + context.scale().gap() + foot.minHeight(width);
  }

  private Region column(Region told) {
    return Panes.column(context.scale(), told, foot);
  }

  private boolean isInvited() {
    return model.invitation().isPresent();
  }

  private VBox said() {
    return new VBox(headline, number);
  }

  private Region beside(Region told) {
    return isInvited() ? new TwoHalves(context.scale(), told, symbol) : told;
  }

  /** How wide the words beside the code are. */
  private double wide(Bounds room) {
    boolean half = isInvited() && !Panes.isUpright(view);
    return half ? Math.floor((room.width() - context.scale().gap()) / 2) : room.width();
  }

  /** How high the words over the list are. */
  private double wordsHigh(Bounds room) {
    double wide = wide(room);
    return headline.minHeight(wide) + (isInvited() ? number.minHeight(wide) : 0);
  }

  /** Whether so much finds room beside the code, or above it, as the glass lies. */
  private boolean isFree(double needed, Bounds room) {
    double gap = context.scale().gap();
    double code = isInvited() && Panes.isUpright(view) ? symbol.minHeight(-1) + gap : 0;
    return needed + code + gap + foot.minHeight(room.width()) <= room.height();
  }

  private List<KeyRow.Act> acts(boolean parted) {
    List<KeyRow.Act> acts = new ArrayList<>();
    acts.add(act("Stop", this::stop));
    if (isInvited()) {
      acts.add(act("New code", this::invite));
    }
    if (parted) {
      acts.add(act(listAlone ? "Show code" : "Phones", this::turn));
    }
    return acts;
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
