package wherefrom.ui.photos;

import javafx.scene.AccessibleRole;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import wherefrom.job.photos.Photograph;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.PictureView;
import wherefrom.ui.controls.Touch;

/** A photograph in small, which is pressed to see it large. */
final class PhotoKey extends Region {
  static final double HIGH_MM = 28;
  static final double WIDE_MM = 38;

  /** Where three stand in a row on narrow glass. */
  private static final double LEAST_WIDE_MM = 30;

  private static final double RIM_MM = 1.6;

  private final PictureView picture;
  private final double rim;
  private int longest;

  private PhotoKey(Touch touch) {
    picture = new PictureView(touch.small(""));
    rim = Math.ceil(touch.scale().px(RIM_MM));
    double high = touch.scale().px(HIGH_MM);
    double wide = touch.scale().px(WIDE_MM);
    longest = (int) Math.ceil(Math.max(high, wide));
    setMinSize(touch.scale().px(LEAST_WIDE_MM), high);
    setPrefSize(wide, high);
    getStyleClass().addAll("key", "plain");
    getChildren().setAll(picture);
  }

  /** Loads its picture when it first comes into view. */
  static PhotoKey of(Touch touch, PhotoLoader loader, Photograph photo, Runnable act) {
    PhotoKey key = new PhotoKey(touch);
    key.setAccessibleRole(AccessibleRole.BUTTON);
    key.setAccessibleText(spoken(photo));
    boolean[] asked = {false};
    key.sceneProperty()
        .addListener(
            (scene, before, now) -> {
              if (now != null && !asked[0]) {
                asked[0] = true;
                loader.load(photo.file(), key.longest, shown -> key.show(touch, shown));
              }
            });
    return touch.target(key, act);
  }

  /** Lets it be so many times as large as usual where there is room. */
  void grow(double most) {
    setMaxSize(most * getPrefWidth(), most * getPrefHeight());
    HBox.setHgrow(this, Priority.ALWAYS);
    longest = (int) Math.ceil(most * longest);
  }

  private static String spoken(Photograph photo) {
    return photo.caption().isEmpty() ? "photograph" : "photograph: " + photo.caption();
  }

  private void show(Touch touch, Shown shown) {
    if (shown instanceof Shown.APicture one) {
      picture.show(one.image());
    } else {
      picture.say(touch.scale().textFactor() > 1 ? "?" : "cannot be shown");
    }
  }

  @Override
  protected void layoutChildren() {
    Panes.place(picture, rim, rim, getWidth() - 2 * rim, getHeight() - 2 * rim);
  }
}
