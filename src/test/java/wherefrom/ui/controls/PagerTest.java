package wherefrom.ui.controls;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.Test;
import wherefrom.ui.Toolkit;

/** The keys that turn a list: beside its rows, or below them where letters are large. */
class PagerTest {
  private static final double PIXELS_PER_MM = 5.9;

  private static Pager<String> open(
      double factor, double width, double height, String name, String row) {
    Touch touch = new Touch(new Scale(PIXELS_PER_MM, factor), System::nanoTime);
    Pager<String> pager =
        Pager.list(touch, words -> ListRow.key(touch, words, List.of(row), () -> {}));
    pager.setItems(IntStream.range(0, 14).mapToObj(at -> name + at).toList());
    Pane root = new Pane(pager);
    pager.setManaged(false);
    new Scene(root, width, height);
    pager.resize(width, height);
    root.applyCss();
    root.layout();
    return pager;
  }

  private static PagerKeys keys(Pager<?> pager) {
    return (PagerKeys)
        pager.getChildrenUnmodifiable().stream()
            .filter(PagerKeys.class::isInstance)
            .findFirst()
            .orElseThrow();
  }

  private static List<Node> rows(Pager<?> pager) {
    return pager.getChildrenUnmodifiable().stream().filter(ListRow.class::isInstance).toList();
  }

  private static double least() {
    return Math.floor(PIXELS_PER_MM * Scale.KEY_MM);
  }

  @Test
  void largeLettersOnHighGlassHaveTheWholeWidth() {
    Toolkit.on(
        () -> {
          Pager<String> pager = open(2, 752, 820, "Stock number ", "24 labels of 63.5 by 33.9 mm");
          assertThat(rows(pager)).hasSizeGreaterThan(1);
          for (Node row : rows(pager)) {
            assertThat(((Region) row).getWidth()).isEqualTo(752);
          }
          assertThat(keys(pager).getLayoutY()).isGreaterThan(rows(pager).get(1).getLayoutY());
          return 0;
        });
  }

  @Test
  void everyKeyKeepsTheSizeOfAFinger() {
    Toolkit.on(
        () -> {
          for (double factor : new double[] {1, 1.5, 2}) {
            Pager<String> pager =
                open(factor, 752, 820, "Stock number ", "24 labels of 63.5 by 33.9 mm");
            pager.turn(Pager.Turn.ON);
            pager.layout();
            keys(pager).layout();
            for (Node key : keys(pager).getChildrenUnmodifiable()) {
              if (key instanceof TouchKey plate && plate.isVisible()) {
                assertThat(plate.getHeight()).as("high at " + factor).isGreaterThan(least());
                assertThat(plate.getWidth()).as("wide at " + factor).isGreaterThan(least());
                assertThat(plate.getLayoutX() + plate.getWidth())
                    .isLessThanOrEqualTo(keys(pager).getWidth());
              }
            }
          }
          return 0;
        });
  }

  @Test
  void whereMoreRowsAreSeenBesideTheKeysTheyStayThere() {
    Toolkit.on(
        () -> {
          Pager<String> low = open(2, 742, 460, "M", "");
          assertThat(keys(low).getLayoutX()).isGreaterThan(0);
          assertThat(rows(low).size()).isEqualTo(3);
          return 0;
        });
  }

  /** A row that is so high where it is narrow, and 200 pixels where it is wide. */
  private static Region row(double narrow) {
    return new Region() {
      @Override
      protected double computeMinHeight(double width) {
        return width < 700 ? narrow : 200;
      }

      @Override
      protected double computePrefHeight(double width) {
        return computeMinHeight(width);
      }
    };
  }

  @Test
  void keysStandBelowWhereOneRowWouldBeTooHighBesideThem() {
    Toolkit.on(
        () -> {
          Touch touch = new Touch(new Scale(PIXELS_PER_MM, 2), System::nanoTime);
          Pager<Region> pager = Pager.list(touch, row -> row);
          pager.setItems(List.of(row(500), row(60), row(60), row(60), row(60)));
          new Scene(pager, 800, 420);
          pager.resize(800, 420);
          pager.layout();
          assertThat(keys(pager).getLayoutY()).isGreaterThan(200);
          return 0;
        });
  }

  @Test
  void usualLettersAreTurnedBesideTheRows() {
    Toolkit.on(
        () -> {
          Pager<String> pager = open(1, 1068, 500, "Stock number ", "24 labels of 63.5 by 33.9 mm");
          assertThat(keys(pager).getLayoutX()).isGreaterThan(0.8 * 1068);
          assertThat(keys(pager).getHeight()).isEqualTo(500);
          return 0;
        });
  }

  private static FitText range(Pager<?> pager) {
    pager.layout();
    keys(pager).layout();
    return (FitText)
        keys(pager).getChildrenUnmodifiable().stream()
            .filter(FitText.class::isInstance)
            .findFirst()
            .orElseThrow();
  }

  private static boolean isClear(Pager<?> pager) {
    FitText range = range(pager);
    return range.isVisible()
        && keys(pager).getChildrenUnmodifiable().stream()
            .filter(key -> key != range && key.isVisible())
            .noneMatch(key -> key.getBoundsInParent().intersects(range.getBoundsInParent()));
  }

  @Test
  void aLowListSaysHowManyThereAreInThePlaceOfTheKeyThatIsNotOffered() {
    Toolkit.on(
        () -> {
          Pager<String> low = open(1, 1068, 300, "Stock number ", "24 labels of 63.5 by 33.9 mm");
          assertThat(isClear(low)).isTrue();
          low.turn(Pager.Turn.ON);
          assertThat(range(low).isVisible()).as("between both keys").isFalse();
          low.turn(Pager.Turn.LAST);
          assertThat(isClear(low)).isTrue();
          return 0;
        });
  }

  @Test
  void aHighListSaysItBetweenTheKeysOnEveryPage() {
    Toolkit.on(
        () -> {
          Pager<String> high = open(1, 1068, 500, "Stock number ", "24 labels of 63.5 by 33.9 mm");
          double first = range(high).getLayoutY();
          assertThat(isClear(high)).isTrue();
          high.turn(Pager.Turn.LAST);
          assertThat(isClear(high)).isTrue();
          assertThat(range(high).getLayoutY()).isEqualTo(first);
          return 0;
        });
  }

  @Test
  void keysThatWouldTakeOverAQuarterOfTheWidthStandBelowWhereNoLessIsSeenSo() {
    Toolkit.on(
        () -> {
          Pager<String> narrow = open(1, 500, 440, "Pushrod ", "to be logged as out");
          assertThat(keys(narrow).getLayoutY()).isGreaterThan(0);
          assertThat(((Region) rows(narrow).get(0)).getWidth()).isEqualTo(500);
          return 0;
        });
  }

  @Test
  void rowsWithoutRoomBesideTheKeysHaveTheWholeWidth() {
    Toolkit.on(
        () -> {
          Pager<String> narrow = open(1, 430, 500, "http://192.168.100.230:474", "");
          assertThat(((Region) rows(narrow).get(0)).getWidth()).isEqualTo(430);
          return 0;
        });
  }

  @Test
  void allRowsAreReachedWhicheverWayTheKeysStand() {
    Toolkit.on(
        () -> {
          for (double height : new double[] {330, 460, 820}) {
            Pager<String> pager = open(2, 752, height, "Stock ", "24 labels");
            int seen = rows(pager).size();
            for (int turn = 0; turn < 14; turn++) {
              Node first = rows(pager).get(0);
              pager.turn(Pager.Turn.ON);
              pager.layout();
              seen += rows(pager).get(0) == first ? 0 : rows(pager).size();
            }
            assertThat(seen).as("at a height of " + height).isEqualTo(14);
          }
          return 0;
        });
  }
}
