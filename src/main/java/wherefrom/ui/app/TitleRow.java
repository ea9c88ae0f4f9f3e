package wherefrom.ui.app;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import wherefrom.text.Words;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Ticker;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.WorkBar;

/**
 * Where one is, and beside it a few words on how things stand or how far long work is. A message
 * stands in the same row until the next press or scan, beside the title in smaller letters; nothing
 * moves for it. The title gives way to a message that lacks room beside it, as to all in large
 * letters, and these step down to the least before anything is left out. What has no room even then
 * says as many whole sentences as it can, and where the others are.
 */
final class TitleRow extends StackPane {
  private static final double BAR_MM = 30;
  private static final double BAR_HIGH_MM = 5;

  private static final double BELOW_MM = 2.2;

  /** From a message's bar to its words. */
  private static final double ASIDE_MM = 3;

  /** The most of the row that the title takes beside a message. */
  private static final double TITLE_SHARE = 0.34;

  /** Neither a title nor a message has more lines. */
  private static final int MOST_LINES = 3;

  /** Behind the sentences that have room. */
  private static final String MORE = " Help says more.";

  /** How far into the margin above it a message comes that large letters leave too little room. */
  private static final double REACH_MM = 3;

  /** Below the tails of its letters, so that they never hang onto the first key. */
  private static final double AIR_MM = 1.5;

  /** What B612's lines are high, as a part of the size of its letters. */
  private static final double LINE = 1.25;

  private final Touch touch;
  private final FitText title;
  private final FitText aside;
  private final FitText message;
  private final FitText small;
  private final HBox told;
  private final HBox said;
  private final HBox words;
  private final WorkBar bar = new WorkBar(Ticker.WINDOW);
  private final HBox progress;
  private final FitText far;
  private String sentence = "";

  TitleRow(Touch touch) {
    this.touch = touch;
    title = touch.heading("").align(Pos.TOP_LEFT).within(1);
    title.setMinWidth(0);
    aside = touch.small("").align(Pos.TOP_RIGHT).within(1);
    aside.getStyleClass().add("second");
    far = touch.small("").align(Pos.CENTER_LEFT).within(1);
    progress = new HBox(touch.scale().gap(), bar, Panes.grow(far));
    told = new HBox(touch.scale().gap(), title, Panes.space(), aside, progress);
    HBox.setHgrow(title, javafx.scene.layout.Priority.SOMETIMES);
    message = Panes.grow(touch.told("").align(Pos.CENTER_LEFT).within(MOST_LINES));
    // Its row is as high as it is; what lacks room steps down, and then is left out.
    message.setMinHeight(0);
    small = touch.fit("", Scale.SMALL_MM, Scale.SMALL_MM, true).align(Pos.TOP_LEFT);
    small.within(touch.isLarge() ? 1 : 2);
    words = Panes.grow(new HBox(message));
    said = new HBox(touch.scale().gap(), small, words);
    style();
    getChildren().setAll(told, said);
    told.visibleProperty().bind(said.visibleProperty().not());
    say("");
    work(Optional.empty());
  }

  private void style() {
    bar.setMinWidth(0);
    bar.setPrefSize(touch.scale().px(BAR_MM), touch.scale().px(BAR_HIGH_MM));
    bar.setMaxHeight(touch.scale().px(BAR_HIGH_MM));
    progress.setAlignment(Pos.CENTER_LEFT);
    told.setAlignment(Pos.TOP_LEFT);
    words.getStyleClass().add("message");
    words.setAlignment(Pos.CENTER_LEFT);
    words.setPadding(new Insets(0, 0, 0, touch.scale().px(ASIDE_MM)));
    setPickOnBounds(false);
  }

  private int lines(boolean upright) {
    int usual = upright ? MOST_LINES : 2;
    return touch.isLarge() ? 1 : usual;
  }

  /**
   * The height that it has with contents that have room, in pixels: of two lines where letters are
   * of the usual size, and of as many as the title needs, three at most.
   *
   * @param upright whether it is narrow: a message then has three lines
   */
  double high(double width, boolean upright) {
    boolean several = needsMore(width);
    int wanted = several ? Math.min(MOST_LINES, title.leastLines(width)) : lines(upright);
    double lines = Math.ceil(wanted * line(Scale.SMALL_MM));
    // Lines of a title fill the row: something is left free below them.
    double high = several ? lines + touch.scale().px(BELOW_MM) : lines;
    return Math.max(Math.max(least(), messageHigh()), high);
  }

  /** What the most lines of a message need where letters are large, beside the margin above. */
  private double messageHigh() {
    double line = touch.scale().fontPx(Scale.SMALL_MM) * LINE;
    return touch.isLarge() ? Math.ceil(MOST_LINES * line) + air() - reach() : 0;
  }

  /** Whether the title would be cut in one line of this width. */
  boolean needsMore(double width) {
    return title.leastLineWidth() > width;
  }

  /** Whether the whole title can stand in a row of this size. */
  boolean holdsTitle(double width, double height) {
    return !needsMore(width) || title.leastLines(width) <= titleLines(height - air());
  }

  /** How many lines of a title a row of this height has. */
  private int titleLines(double height) {
    int lines = (int) ((height + 1) / line(Scale.SMALL_MM));
    return Math.max(1, Math.min(MOST_LINES, lines));
  }

  /** The height of the title alone, in pixels. */
  double least() {
    return Math.ceil(line(Scale.WORKING_MM));
  }

  private double line(double capitalMm) {
    return touch.scale().fontPx(capitalMm) * touch.scale().textFactor() * LINE;
  }

  void show(String heading, String beside) {
    title.setWords(Words.capital(heading));
    small.setWords(Words.capital(heading));
    aside.setWords(beside);
  }

  /** Other words beside the title, until it is shown anew. */
  void aside(String words) {
    aside.setWords(words);
  }

  /** How far long work is, in the place of the words beside the title. */
  void work(Optional<LongWork> work) {
    present(progress, work.isPresent());
    // Whether it shows is for the layout alone to say: it may have no room.
    aside.setManaged(work.isEmpty());
    bar.show(work.map(LongWork::part).orElse(0.0));
    far.setWords(work.map(LongWork::words).orElse(""));
  }

  /** What has no room beside the title is left out: a piece of it says nothing. */
  @Override
  protected void layoutChildren() {
    double reach = reach();
    double high = getHeight() - reach - air();
    title.within(titleLines(high));
    double needed = title.leastLineWidth() + 2 * touch.scale().gap() + aside.leastLineWidth();
    boolean room = aside.isManaged() && needed <= getWidth();
    aside.setVisible(room);
    told.setSpacing(room || progress.isManaged() ? touch.scale().gap() : 0);
    aside.setMinWidth(room ? aside.leastLineWidth() : 0);
    aside.setMaxWidth(room ? Double.MAX_VALUE : 0);
    boolean titled = isTitled();
    double beside = titled ? besideMessage() : 0;
    present(small, titled);
    small.setMinWidth(beside);
    small.setPrefWidth(beside);
    small.setMaxWidth(beside);
    message.setWords(shown(messageWide(titled)));
    super.layoutChildren();
    Panes.place(told, 0, reach, getWidth(), high);
    // A message, or the title beside it, that lacks height comes into the margin above.
    boolean fits = message.fits(messageWide(titled), high);
    boolean low = fits && (!titled || small.fits(beside, high));
    double up = low ? reach : 0;
    Panes.place(said, 0, up, getWidth(), getHeight() - air() - up);
  }

  /** How far it lies in the margin above, in pixels: a message of several lines wants it. */
  double reach() {
    return touch.isLarge() ? Math.floor(touch.scale().px(REACH_MM)) : air();
  }

  private double air() {
    return Math.ceil(touch.scale().px(AIR_MM));
  }

  /** Whether the title stands beside the message: where that keeps all its words and letters. */
  private boolean isTitled() {
    message.setWords(sentence);
    return message.fitsLarge(messageWide(true), getHeight() - air());
  }

  private double messageWide(boolean titled) {
    double taken = titled ? besideMessage() + touch.scale().gap() : 0;
    // Its bar has a width of its own.
    return getWidth() - taken - words.getInsets().getLeft() - 1;
  }

  /** Whether words of a message have room in this width. */
  private boolean holds(String some, double width) {
    return message.wouldFit(some, width, getHeight() - air());
  }

  /** How wide the title is beside a message, in pixels. */
  private double besideMessage() {
    double most = touch.isLarge() ? getWidth() : TITLE_SHARE * getWidth();
    return Math.min(small.leastLineWidth(), most);
  }

  /** The message, or those of its sentences that have room; pieces of it where none has. */
  private String shown(double width) {
    if (holds(sentence, width)) {
      return sentence;
    }
    List<String> sentences = Words.sentences(sentence);
    return IntStream.range(1, sentences.size())
        .mapToObj(left -> sentences.subList(0, sentences.size() - left))
        .map(some -> String.join(" ", some) + MORE)
        .filter(some -> holds(some, width))
        .findFirst()
        .orElse(sentence);
  }

  private static void present(Region node, boolean there) {
    node.setVisible(there);
    node.setManaged(there);
  }

  /** Shows a sentence; a newer one takes the place of an older. Empty puts it away. */
  void say(String newer) {
    sentence = newer;
    message.setWords(newer);
    said.setVisible(!newer.isEmpty());
    requestLayout();
  }

  /** What is said, whole. */
  String said() {
    return sentence;
  }

  /** Whether the sentence is longer than its place. */
  boolean isCut() {
    return !sentence.isEmpty() && getWidth() > 0 && !holds(sentence, messageWide(false));
  }
}
