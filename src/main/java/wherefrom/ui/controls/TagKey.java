package wherefrom.ui.controls;

import java.util.Optional;
import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;

/**
 * The tag with heavy frame and eyelet: the one thing to do now. Made by {@link Touch} only. There
 * is one on a screen.
 */
public final class TagKey extends Region {
  private static final double FRAME_MM = 1.4;
  private static final double LEAST_EYE_MM = 1.2;
  private static final double MOST_EYE_MM = 2.2;
  private static final double EYE = 0.09;
  private static final double EYE_LINE_MM = 0.85;

  private final TagShape shape;
  private final Circle eyelet = new Circle();
  private final FitText words;
  private final FitText more;
  private final double least;
  private final double frame;
  private final double leastEye;
  private final double mostEye;
  private final double padding;
  private boolean hasMore;
  private boolean sparing;
  private Optional<Region> before = Optional.empty();
  private Optional<Region> after = Optional.empty();

  TagKey(Scale scale, FitText words, FitText more) {
    this.frame = scale.px(FRAME_MM);
    this.shape = new TagShape(this, scale, frame);
    this.words = words;
    this.more = more;
    this.hasMore = !more.words().isEmpty();
    this.least = scale.px(Scale.PRIMARY_MM);
    this.leastEye = scale.px(LEAST_EYE_MM);
    this.mostEye = scale.px(MOST_EYE_MM);
    this.padding = scale.px(2.7);
    eyelet.getStyleClass().add("tag-eyelet");
    eyelet.setStrokeWidth(scale.px(EYE_LINE_MM));
    eyelet.setManaged(false);
    eyelet.setMouseTransparent(true);
    getStyleClass().add("tag-key");
    getChildren().addAll(eyelet, words, more);
    more.setVisible(hasMore);
    setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
    setAccessibleRole(AccessibleRole.BUTTON);
    setAccessibleText(spoken());
  }

  /** Changes what it says: what to do, and how else or what follows. */
  public void setWords(String what, String further) {
    words.setWords(what);
    more.setWords(further);
    hasMore = !further.isEmpty();
    sparing = false;
    more.setVisible(hasMore);
    setAccessibleText(spoken());
    requestLayout();
  }

  /** The same, where what follows is worth no room of its own: it stands where there is some. */
  public void setWordsSparing(String what, String further) {
    setWords(what, further);
    sparing = true;
  }

  /** Puts a drawing of a fixed size before the words. */
  public TagKey before(Region picture) {
    before.ifPresent(getChildren()::remove);
    before = Optional.of(picture);
    getChildren().add(picture);
    return this;
  }

  /** Puts a drawing of a fixed size behind the words; it leaves where there is no room for it. */
  public TagKey after(Region picture) {
    after.ifPresent(getChildren()::remove);
    after = Optional.of(picture);
    getChildren().add(picture);
    return this;
  }

  /** Takes the drawings away. */
  public void clear() {
    before.ifPresent(getChildren()::remove);
    after.ifPresent(getChildren()::remove);
    before = Optional.empty();
    after = Optional.empty();
  }

  public String words() {
    return words.words();
  }

  /** The width at which none of its words need a second line. */
  public double leastLineWidth() {
    double widest = Math.max(words.leastLineWidth(), needsMore() ? more.leastLineWidth() : 0);
    return Math.ceil(Math.max(least, left(2 * least) + widest + padding + frame));
  }

  private boolean needsMore() {
    return hasMore && !sparing;
  }

  private String spoken() {
    return hasMore ? words.words() + ", " + more.words() : words.words();
  }

  private double eye(double height) {
    return Math.max(leastEye, Math.min(mostEye, EYE * height));
  }

  /** Where the wire ends: the eyelet's middle, from the tag's upper left corner. */
  public double eyeletX() {
    return shape.cut(getHeight()) / 2 + 0.9 * eye(getHeight()) + frame;
  }

  private double left(double height) {
    double drawn = before.map(picture -> picture.prefWidth(-1) + padding).orElse(0.0);
    return shape.cut(height) / 2 + 2.2 * eye(height) + frame + padding + drawn;
  }

  private double inner(double width, double height) {
    return Math.max(0, width - left(height) - padding - frame);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    double widest = Math.max(words.minWidth(-1), needsMore() ? more.minWidth(-1) : 0);
    return Math.max(least, left(2 * least) + widest + padding + frame);
  }

  @Override
  protected double computePrefWidth(double height) {
    double widest = Math.max(words.prefWidth(-1), needsMore() ? more.prefWidth(-1) : 0);
    return Math.max(least, left(2 * least) + widest + padding + frame);
  }

  @Override
  protected double computeMinHeight(double width) {
    double inner = width <= 0 ? words.prefWidth(-1) : inner(width, 2 * least);
    double lines = words.minHeight(inner) + (needsMore() ? more.minHeight(inner) : 0);
    return Math.max(least, lines + 2 * frame + padding);
  }

  @Override
  protected double computePrefHeight(double width) {
    return computeMinHeight(width);
  }

  /** Places the drawings; how much of the words' room the one behind them takes. */
  private double drawings(double height) {
    before.ifPresent(picture -> picture(picture, left(height) - padding - wide(picture), height));
    double taken = after.map(picture -> wide(picture) + padding).orElse(0.0);
    double least = Math.max(words.leastLineWidth(), hasMore ? more.leastLineWidth() : 0);
    boolean fits = inner(getWidth(), height) - taken >= least;
    after.ifPresent(
        picture -> {
          picture.setVisible(fits);
          picture(picture, getWidth() - frame - padding - wide(picture), height);
        });
    return fits ? taken : 0;
  }

  private boolean showsMore(double inner, double room) {
    boolean holds =
        more.minWidth(-1) <= inner && words.minHeight(inner) + more.minHeight(inner) <= room;
    return needsMore() || (hasMore && holds);
  }

  private static double wide(Region picture) {
    return picture.prefWidth(-1);
  }

  private static void picture(Region picture, double x, double height) {
    double high = picture.prefHeight(-1);
    Panes.place(picture, x, (height - high) / 2, wide(picture), high);
  }

  @Override
  protected void layoutChildren() {
    double height = getHeight();
    shape.fit();
    eyelet.setRadius(eye(height));
    eyelet.setCenterX(eyeletX());
    eyelet.setCenterY(height / 2);
    double left = left(height);
    double inner = inner(getWidth(), height) - drawings(height);
    double edge = frame + padding / 2;
    double room = height - 2 * edge;
    words.keepInLine(inner);
    boolean shows = showsMore(inner, room);
    more.setVisible(shows);
    double lower = Math.max(room / 2, room - words.minHeight(inner));
    double low = shows ? Math.min(more.minHeight(inner), lower) : 0;
    double high = Math.min(room - low, words.prefHeight(inner));
    double top = edge + (room - low - high) / 2;
    Panes.place(words, left, top, inner, high);
    Panes.place(more, left, top + high, inner, low);
  }
}
