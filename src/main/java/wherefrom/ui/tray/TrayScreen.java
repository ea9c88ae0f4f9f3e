package wherefrom.ui.tray;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.Reading;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.TouchKey;

/** A tray that was photographed: each tag on the picture, what will be logged, what differs. */
public final class TrayScreen implements Screen {
  private final Desk desk;
  private final TrayPurpose purpose;
  private final TrayModel model;
  private final TrayPicture picture;
  private final FitText headline;
  private final Pager<TrayModel.Line> list;
  private final StackPane view = Panes.grow(new StackPane());
  private boolean pictureAlone;

  public TrayScreen(Desk desk, TrayPurpose purpose, GreyImage photograph, Reading reading) {
    this.desk = desk;
    this.purpose = purpose;
    model = new TrayModel(desk.getJob(), desk.shelf(), reading, purpose);
    picture = Panes.grow(new TrayPicture(photograph));
    headline = desk.touch().text("");
    list =
        Pager.list(
            desk.touch(),
            line -> ListRow.plain(desk.touch(), line.heading(), List.of(line.words())));
  }

  @Override
  public String title() {
    return purpose.title();
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    draw();
  }

  @Override
  public void changed() {
    model.changed();
    draw();
  }

  private void draw() {
    headline.setWords(model.headline());
    list.refill(model.lines());
    picture.show(model.marks());
    boolean large = desk.touch().isLarge();
    List<TouchKey> keys = new ArrayList<>();
    model.findLogWords().ifPresent(words -> keys.add(desk.touch().primary(words, this::log)));
    if (large) {
      keys.add(desk.touch().primary(pictureAlone ? "The list" : "The picture", this::turn));
    }
    List<Node> words = new ArrayList<>();
    if (!pictureAlone) {
      words.add(headline);
    }
    words.add(pictureAlone ? picture : list);
    if (!keys.isEmpty()) {
      words.add(Tiles.row(desk.scale(), keys.toArray(Node[]::new)));
    }
    VBox column = Panes.column(desk.scale(), words.toArray(Node[]::new));
    view.getChildren().setAll(large ? column : beside(column));
  }

  /** The words on the left half, the picture on the right one. */
  private HBox beside(VBox column) {
    HBox row = Panes.row(desk.scale(), column, picture);
    for (Region half : List.of(column, picture)) {
      half.setPrefWidth(1);
      HBox.setHgrow(half, Priority.ALWAYS);
      half.setMaxWidth(Double.MAX_VALUE);
    }
    return row;
  }

  private void turn() {
    pictureAlone = !pictureAlone;
    draw();
  }

  private void log() {
    desk.attempt(() -> desk.sounds().play(model.log()));
    draw();
  }
}
