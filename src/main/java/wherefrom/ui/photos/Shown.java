package wherefrom.ui.photos;

import javafx.scene.image.Image;

/** What came of opening a photograph. */
sealed interface Shown {

  /** It can be looked at. */
  record APicture(Image image) implements Shown {}

  /** It cannot; the sentence says why and what to do. */
  record Nothing(String sentence) implements Shown {}
}
