package wherefrom.ui.tray;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.Reading;
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

/** A tray that was photographed: each tag on the picture, what will be logged, what differs. */
public final class TrayScreen extends Page {
  private final TrayModel model;
  private final TrayPicture picture;
  private final FitText headline;
  private final Pager<TrayModel.Line> list;
  private final TagKey tag;
  private final KeyRow keys;
  private final Foot foot;
  private final StackPane view = Panes.grow(new StackPane());
  private boolean pictureAlone;

  public TrayScreen(
      ScreenContext context, TrayPurpose purpose, GreyImage photograph, Reading reading) {
    super(context, purpose.title());
    model = new TrayModel(context.getJob(), context.shelf(), reading, purpose);
    picture = Panes.grow(new TrayPicture(photograph));
    headline = touch().small("");
    list =
        Pager.list(touch(), line -> ListRow.plain(touch(), line.heading(), List.of(line.words())));
    tag = tag(this::log);
    keys = KeyRow.of(context);
    foot = new Foot(context, tag, keys);
    lay(view);
  }

  @Override
  public String aside() {
    return model.aside();
  }

  @Override
  public void changed() {
    model.changed();
    super.changed();
  }

  @Override
  protected void refresh() {
    headline.setWords(model.headline());
    list.refill(model.lines());
    picture.show(model.marks());
    boolean large = touch().isLarge();
    Optional<String> due = model.findLogWords();
    foot.offerTag(due.isPresent());
    due.ifPresent(words -> tag.setWords(words, ""));
    keys.setActs(large ? List.of(act(pictureAlone ? "List" : "Picture", this::turn)) : List.of());
    List<Node> all = new ArrayList<>();
    all.add(large ? (pictureAlone ? picture : list) : beside());
    if (due.isPresent() || large) {
      all.add(foot);
    }
    view.getChildren().setAll(Panes.column(context.scale(), all.toArray(Node[]::new)));
  }

  /** The words in one half, the picture in the other; large letters show one of both. */
  private Region beside() {
    return new TwoHalves(
        context.scale(), Panes.grow(Panes.column(context.scale(), headline, list)), picture);
  }

  private void turn() {
    pictureAlone = !pictureAlone;
    refresh();
  }

  private void log() {
    context.attempt(() -> context.sounds().play(model.log()));
    refresh();
    if (touch().isLarge()) {
      context.say(model.headline());
    }
  }
}
