package wherefrom.ui.controls;

import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.Region;

/** A picture as large as its room allows, or words in its place. */
public final class PictureView extends Region {
  private final ImageView view = new ImageView();
  private final FitText words;

  /**
   * @param first what stands there until there is a picture
   */
  public PictureView(FitText first) {
    words = first.centred();
    view.setManaged(false);
    view.setSmooth(true);
    view.setVisible(false);
    getChildren().setAll(view, words);
    setMouseTransparent(true);
    setMinSize(0, 0);
  }

  public void show(Image image) {
    view.setImage(image);
    view.setVisible(true);
    words.setVisible(false);
    requestLayout();
  }

  /** Says in words why there is no picture, or that it is on its way. */
  public void say(String sentence) {
    words.setWords(sentence);
    words.setVisible(true);
    view.setVisible(false);
    requestLayout();
  }

  @Override
  protected double computeMinHeight(double width) {
    return words.isVisible() ? words.minHeight(width) : 0;
  }

  @Override
  protected void layoutChildren() {
    Panes.place(words, 0, 0, getWidth(), getHeight());
    Image image = view.getImage();
    if (image == null) {
      return;
    }
    double factor = Math.min(getWidth() / image.getWidth(), getHeight() / image.getHeight());
    double width = Math.max(1, factor * image.getWidth());
    double height = Math.max(1, factor * image.getHeight());
    view.setFitWidth(width);
    view.setFitHeight(height);
    view.relocate((getWidth() - width) / 2, (getHeight() - height) / 2);
  }
}
