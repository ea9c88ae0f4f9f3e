package wherefrom.ui.controls;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.css.PseudoClass;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * A row of a list: a heading and lines of small text below it. One that only tells may go on on the
 * next page.
 */
public final class ListRow extends VBox implements Levelled, Parted {
  private static final PseudoClass SELECTED = PseudoClass.getPseudoClass("selected");

  private final double least;
  private final double aside;
  private final double lead;
  private final ChosenMark chosen;
  private final FitText title;
  private Optional<Told> told = Optional.empty();
  private boolean sparing;

  /** How a row that only tells is made of other words, and where its own may part. */
  private record Told(Touch touch, Function<String, FitText> letters, RowWords words) {}

  private ListRow(Touch touch, String heading, List<FitText> lines) {
    super(touch.scale().px(0.3));
    setAlignment(Pos.CENTER_LEFT);
    setFillWidth(true);
    least = Math.ceil(touch.scale().px(Scale.KEY_MM));
    lead = touch.scale().px(1.4);
    aside = touch.scale().px(4);
    chosen = new ChosenMark(touch.scale(), getChildren());
    setPadding(new Insets(lead, aside, lead, aside));
    title = touch.heading(heading);
    if (!heading.isEmpty()) {
      getChildren().add(title);
    }
    getChildren().addAll(lines);
  }

  /** A row that is pressed to open what it tells of. */
  public static ListRow key(Touch touch, String heading, List<String> lines, Runnable act) {
    ListRow row = new ListRow(touch, heading, small(touch, lines));
    row.getStyleClass().addAll("key", "plain");
    row.setAccessibleText(heading + ". " + String.join(" ", lines));
    return touch.target(row, act);
  }

  private static List<FitText> small(Touch touch, List<String> lines) {
    return lines.stream().filter(line -> !line.isEmpty()).map(touch::small).toList();
  }

  /** A row that only tells, in small text. */
  public static ListRow plain(Touch touch, String heading, List<String> lines) {
    return telling(touch, heading, lines, touch::small);
  }

  /** A row that only tells, in working text. */
  public static ListRow told(Touch touch, String heading, String words) {
    return telling(touch, heading, List.of(words), touch::text);
  }

  private static ListRow telling(
      Touch touch, String heading, List<String> lines, Function<String, FitText> letters) {
    List<String> words = lines.stream().filter(line -> !line.isEmpty()).toList();
    ListRow row = new ListRow(touch, heading, words.stream().map(letters).toList());
    FitText plain = letters.apply("");
    RowWords parting = new RowWords(heading, words, row.title::leastEnds, plain::leastEnds);
    row.told = Optional.of(new Told(touch, letters, parting));
    row.getStyleClass().add("row");
    return row;
  }

  @Override
  public int letters() {
    return told.map(it -> it.words().count()).orElse(0);
  }

  @Override
  public List<Integer> ends(int from, double width, int least) {
    return told.map(it -> it.words().ends(from, width - 2 * aside, least)).orElse(List.of());
  }

  /** No line parts it from what goes on. */
  @Override
  public Region piece(int from, int to, double width) {
    return told.<Region>map(it -> piece(it, from, to, width - 2 * aside)).orElse(this);
  }

  private static ListRow piece(Told told, int from, int to, double inner) {
    RowWords.Said said = told.words().piece(from, to, inner);
    ListRow piece = telling(told.touch(), said.heading(), said.lines(), told.letters());
    if (said.goesOn()) {
      piece.getStyleClass().remove("row");
    }
    return piece;
  }

  /** Its lines are seen only where all of its page have room with them; the heading says enough. */
  public ListRow sparing() {
    sparing = true;
    return this;
  }

  private boolean showsLines() {
    return !sparing || super.computeMinHeight(getWidth()) <= getHeight() + 1;
  }

  /** Shows it as the one that is chosen now: a ticked box at its end, on a dark plate. */
  public ListRow select(boolean on) {
    chosen.show(this, on);
    pseudoClassStateChanged(SELECTED, on);
    setPadding(new Insets(lead, aside + chosen.room(), lead, aside));
    return this;
  }

  private double innerWidth() {
    return getWidth() - getPadding().getLeft() - getPadding().getRight();
  }

  /** What stands below the title has its height first. */
  @Override
  public double fitted() {
    if (!getChildren().contains(title)) {
      return Double.MAX_VALUE;
    }
    double lines =
        getManagedChildren().stream()
            .filter(line -> line != title && showsLines())
            .mapToDouble(line -> line.minHeight(innerWidth()) + getSpacing())
            .sum();
    double room = getHeight() - getPadding().getTop() - getPadding().getBottom() - lines;
    return title.fit(innerWidth(), room);
  }

  @Override
  public void cap(double sizePx) {
    title.cap(sizePx);
  }

  @Override
  protected void layoutChildren() {
    boolean whole = showsLines();
    if (sparing) {
      getManagedChildren().forEach(line -> line.setVisible(whole || line == title));
    }
    if (whole) {
      super.layoutChildren();
    } else {
      Insets edge = getPadding();
      double high = getHeight() - edge.getTop() - edge.getBottom();
      Panes.place(title, edge.getLeft(), edge.getTop(), innerWidth(), high);
    }
    chosen.atRight(this, aside);
  }

  @Override
  protected double computeMinHeight(double width) {
    return Math.max(finger(), sparing ? alone(width) : super.computeMinHeight(width));
  }

  /** The height that it needs with all its lines. */
  double whole(double width) {
    return Math.max(finger(), super.computeMinHeight(width));
  }

  /** What is only read may be lower than a finger needs. */
  private double finger() {
    return told.isPresent() ? 0 : least;
  }

  /** What the heading needs. */
  private double alone(double width) {
    Insets edge = getPadding();
    double inner = width < 0 ? width : width - edge.getLeft() - edge.getRight();
    return edge.getTop() + title.minHeight(inner) + edge.getBottom();
  }

  @Override
  protected double computePrefHeight(double width) {
    return Math.max(least, super.computePrefHeight(width));
  }
}
