package wherefrom.ui.photos;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.job.photos.Photograph;
import wherefrom.text.Words;
import wherefrom.ui.app.Dates;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.PictureView;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.TouchKey;
import wherefrom.ui.controls.TwoHalves;

/** One photograph as large as the window allows, what it shows, and when it was taken. */
public final class PhotoScreen extends Page {
  /** About as many pixels as the picture's room in a window of 1920 by 1200 has. */
  private static final int LONGEST = 1600;

  private final Supplier<List<Photograph>> photos;
  private final PhotoLoader loader;
  private final PictureView picture;
  private final FitText words;
  private final TouchKey before;
  private final TouchKey next;
  private int at;

  /**
   * @param photos those among which pages are turned, asked for anew when the job changes
   * @param at which one is shown first, from 0
   */
  public PhotoScreen(ScreenContext context, Supplier<List<Photograph>> photos, int at) {
    super(context, "");
    this.photos = photos;
    this.at = at;
    loader = new PhotoLoader(context);
    picture = Panes.grow(new PictureView(context.touch().text("")));
    words = Panes.grow(context.touch().small(""));
    before = context.touch().key("Previous", () -> turn(-1));
    next = context.touch().key("Next", () -> turn(1));
    List<Node> keys = photos.get().size() > 1 ? List.of(before, next) : List.of();
    lay(context.touch().isLarge() ? beside(keys) : over(keys));
  }

  /** The picture has the width, and what is told of it stands in a row below. */
  private Region over(List<Node> keys) {
    List<Node> below = new ArrayList<>(List.of(words));
    below.addAll(keys);
    before.setMinWidth(Region.USE_PREF_SIZE);
    next.setMinWidth(Region.USE_PREF_SIZE);
    HBox told = Panes.row(context.scale(), below.toArray(Node[]::new));
    told.setMinHeight(Region.USE_PREF_SIZE);
    return Panes.column(context.scale(), picture, told);
  }

  /** Large letters below the picture would leave it no height. */
  private Region beside(List<Node> keys) {
    VBox told = Panes.column(context.scale(), words);
    if (!keys.isEmpty()) {
      told.getChildren().add(Tiles.of(context.scale(), keys.size(), keys.toArray(Node[]::new)));
    }
    return new TwoHalves(context.scale(), picture, told);
  }

  @Override
  public String title() {
    int all = photos.get().size();
    String one = context.touch().brief("Photograph", "Photo");
    return all > 1 ? one + " " + (at + 1) + " of " + all : one;
  }

  @Override
  protected void refresh() {
    List<Photograph> all = photos.get();
    at = Math.max(0, Math.min(at, all.size() - 1));
    before.offer(at > 0);
    next.offer(at + 1 < all.size());
    if (all.isEmpty()) {
      picture.say("There is no photograph here any more.");
      words.setWords("");
      return;
    }
    Photograph photo = all.get(at);
    words.setWords(told(photo));
    picture.say("The photograph is being opened.");
    loader.load(photo.file(), LONGEST, shown -> show(photo, shown));
  }

  private void show(Photograph photo, Shown shown) {
    List<Photograph> all = photos.get();
    if (at >= all.size() || !all.get(at).equals(photo)) {
      return;
    }
    if (shown instanceof Shown.APicture one) {
      picture.show(one.image());
    } else {
      picture.say(((Shown.Nothing) shown).sentence());
    }
  }

  private String told(Photograph photo) {
    String of = photo.words(context.state());
    String story = photo.story().equals(of) || photo.story().isEmpty() ? "" : ": " + photo.story();
    String end = story.endsWith("?") || story.endsWith(".") ? " " : ". ";
    return Words.capital(of)
        + story
        + end
        + Words.capital(Dates.ago(photo.time(), context.services().clock()))
        + ".";
  }

  private void turn(int by) {
    at += by;
    context.navigator().changed();
  }
}
