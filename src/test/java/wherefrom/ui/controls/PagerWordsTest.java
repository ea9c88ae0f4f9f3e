package wherefrom.ui.controls;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Test;
import wherefrom.ui.Toolkit;

/** Words to be read go on on the next page of a list, wherever the page ends. */
class PagerWordsTest {
  private static final String WORDS =
      "Service information for your exact engine outranks this tool, and so does a qualified"
          + " machinist: ask one where a reading is undecided. Follow local rules. Wear shows on"
          + " the lower main shells first. Take one cap off at a time, crank in place.";

  private static final int ROWS = 5;

  private static List<Region> rows(Touch touch) {
    return IntStream.range(0, ROWS)
        .<Region>mapToObj(at -> ListRow.plain(touch, "Head " + at, List.of(at + ". " + WORDS)))
        .toList();
  }

  private static Touch touch(double factor) {
    return new Touch(new Scale(5.9, factor), System::nanoTime);
  }

  private static Pager<Region> open(Touch touch, double width, double height) {
    Pager<Region> pager = Pager.list(touch, row -> row);
    pager.setItems(rows(touch));
    Pane root = new Pane(pager);
    pager.setManaged(false);
    new Scene(root, width, height);
    pager.resize(width, height);
    root.applyCss();
    pager.layout();
    return pager;
  }

  private static List<ListRow> shown(Pager<?> pager) {
    pager.layout();
    return pager.getChildrenUnmodifiable().stream()
        .filter(ListRow.class::isInstance)
        .map(ListRow.class::cast)
        .toList();
  }

  private static String words(Node row) {
    return row.lookupAll(".words").stream()
        .filter(FitText.class::isInstance)
        .map(words -> ((FitText) words).words())
        .collect(Collectors.joining(" "));
  }

  private static String count(Pager<?> pager) {
    shown(pager);
    return pager.lookupAll(".ink").stream()
        .map(ink -> ((Text) ink).getText().replace('\n', ' '))
        .filter(said -> said.contains("of " + ROWS))
        .findFirst()
        .orElse("");
  }

  private static List<List<String>> all(Pager<?> pager) {
    List<List<String>> pages = new ArrayList<>();
    List<String> before = List.of();
    List<String> page = shown(pager).stream().map(PagerWordsTest::words).toList();
    while (!page.equals(before)) {
      pages.add(page);
      before = page;
      pager.turn(Pager.Turn.ON);
      page = shown(pager).stream().map(PagerWordsTest::words).toList();
    }
    return pages;
  }

  @Test
  void everyWordIsReadOnceAndEveryPieceKnowsItsHeading() {
    Toolkit.on(
        () -> {
          for (double factor : new double[] {1, 1.5, 2}) {
            for (double height : new double[] {300, 420, 700}) {
              List<String> pieces =
                  all(open(touch(factor), 700, height)).stream().flatMap(List::stream).toList();
              assertThat(pieces).allMatch(piece -> piece.startsWith("Head "));
              String read =
                  pieces.stream()
                      .map(piece -> piece.replaceFirst("^Head \\d", ""))
                      .collect(Collectors.joining(" "))
                      .replace("…", "")
                      .replaceAll(" +", " ")
                      .strip();
              String whole =
                  IntStream.range(0, ROWS)
                      .mapToObj(at -> at + ". " + WORDS)
                      .collect(Collectors.joining(" "));
              assertThat(read).as("%s at %s", factor, height).isEqualTo(whole);
            }
          }
          return 0;
        });
  }

  /** Where the keys stand below the rows they have the rest of the height. */
  private static double room(Pager<?> pager) {
    return pager.getChildrenUnmodifiable().stream()
        .filter(PagerKeys.class::isInstance)
        .mapToDouble(Node::getLayoutY)
        .filter(top -> top > 0)
        .findFirst()
        .orElse(pager.getHeight());
  }

  @Test
  void noPageReachesBelowTheGlassAndNoLineIsLeftFree() {
    Toolkit.on(
        () -> {
          Pager<Region> pager = open(touch(1.5), 700, 500);
          int pages = all(pager).size();
          pager.turn(Pager.Turn.FIRST);
          for (int page = 1; page < pages; page++) {
            List<ListRow> rows = shown(pager);
            ListRow last = rows.get(rows.size() - 1);
            double end = last.getLayoutY() + last.getHeight();
            double room = room(pager);
            assertThat(end).isBetween(0.7 * room, room);
            pager.turn(Pager.Turn.ON);
          }
          return 0;
        });
  }

  @Test
  void aTextThatGoesOnIsCountedOnceAndHasNoLineBelowIt() {
    Toolkit.on(
        () -> {
          Pager<Region> pager = open(touch(2), 700, 420);
          assertThat(count(pager)).isEqualTo("1 of 5");
          assertThat(shown(pager)).singleElement();
          assertThat(shown(pager).get(0).getStyleClass()).doesNotContain("row");
          pager.turn(Pager.Turn.ON);
          assertThat(count(pager)).isEqualTo("1 of 5");
          assertThat(words(shown(pager).get(0))).startsWith("Head 0 … ");
          pager.turn(Pager.Turn.LAST);
          assertThat(count(pager)).endsWith("5 of 5");
          assertThat(words(shown(pager).get(0))).endsWith("crank in place.");
          return 0;
        });
  }

  @Test
  void whatIsReadStaysWhereItWasWhenItIsFilledAnew() {
    Toolkit.on(
        () -> {
          Touch touch = touch(2);
          Pager<Region> pager = open(touch, 700, 420);
          pager.turn(Pager.Turn.ON);
          pager.layout();
          pager.turn(Pager.Turn.ON);
          String before = words(shown(pager).get(0));
          pager.refill(rows(touch));
          assertThat(words(shown(pager).get(0))).isEqualTo(before);
          pager.turn(Pager.Turn.BACK);
          pager.layout();
          pager.turn(Pager.Turn.ON);
          assertThat(words(shown(pager).get(0))).isEqualTo(before);
          pager.refill(List.of(ListRow.plain(touch, "Head 9", List.of("short."))));
          assertThat(shown(pager)).singleElement();
          assertThat(words(shown(pager).get(0))).isEqualTo("Head 9 short.");
          return 0;
        });
  }

  @Test
  void aListThatIsLaidOutOnlyMakesTheRowsThatItNeeds() {
    Toolkit.on(
        () -> {
          Touch touch = touch(1);
          List<Integer> made = new ArrayList<>();
          Pager<Integer> pager =
              Pager.list(
                  touch,
                  number -> {
                    made.add(number);
                    return ListRow.plain(touch, "Head " + number, List.of(WORDS));
                  });
          pager.setItems(IntStream.range(0, 1000).boxed().toList());
          new Scene(pager, 700, 500);
          pager.resize(700, 500);
          pager.prefHeight(700);
          pager.layout();
          assertThat(made).hasSizeLessThan(30);
          return 0;
        });
  }
}
