package wherefrom.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.job.reader.Corner;
import wherefrom.parts.SymbolLayout;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;
import wherefrom.scan.geometry.Pose;
import wherefrom.scan.grid.SoftGrid;
import wherefrom.scan.match.SymbolMatch;

class RetryPlacesTest {
  private final RetryPlaces doubts = new RetryPlaces();

  @Test
  void nothingNotedIsNothingInDoubt() {
    assertThat(doubts.next(List.of())).isEmpty();
  }

  @Test
  void aPlaceComesAsItWasFoundAndEveryOtherTimeTurned() {
    Pose pose = at(200, 100);
    doubts.note(unread(pose, 0.5), 1);
    assertThat(firstCorners(8, List.of()))
        .containsExactly(
            corner(pose, 0),
            corner(pose, 1),
            corner(pose, 0),
            corner(pose, 2),
            corner(pose, 0),
            corner(pose, 3),
            corner(pose, 0),
            corner(pose, 1));
  }

  @Test
  void aWayRoundThatIsNotFollowedYetComesFirst() {
    Pose pose = at(200, 100);
    doubts.note(unread(pose, 0.5), 1);
    List<Track> followed =
        List.of(
            Track.begin(unread(pose, 0.5), 1),
            Track.begin(unread(pose.turned(1), 0.4), 1),
            Track.begin(unread(pose.turned(2), 0.4), 1));
    assertThat(firstCorners(4, followed))
        .containsExactly(corner(pose, 0), corner(pose, 3), corner(pose, 0), corner(pose, 3));
  }

  @Test
  void theLikelierPlaceComesFirstAndTheOtherInItsTurn() {
    doubts.note(unread(at(900, 100), 0.32), 1);
    doubts.note(unread(at(200, 100), 0.5), 1);
    assertThat(places(4)).containsExactly(200L, 200L, 900L, 200L);
  }

  @Test
  void aPlaceThatIsReadIsInDoubtNoLonger() {
    doubts.note(unread(at(200, 100), 0.5), 1);
    doubts.note(read(at(203, 101)), 2);
    assertThat(doubts.next(List.of())).isEmpty();
  }

  @Test
  void aPlaceNotComeUponAgainIsForgotten() {
    doubts.note(unread(at(200, 100), 0.5), 1);
    doubts.note(unread(at(900, 100), 0.32), 6);
    assertThat(places(2)).containsExactly(900L, 900L);
  }

  @Test
  void aPlaceFollowsTheTagAsItMoves() {
    doubts.note(unread(at(200, 100), 0.5), 1);
    doubts.note(unread(at(205, 100), 0.48), 2);
    doubts.note(unread(at(230, 100), 0.3), 2);
    assertThat(places(2)).containsExactly(205L, 205L);
  }

  @Test
  void aPlaceOnWhichOneTagLeadsComesBeforeABetterFit() {
    doubts.note(unread(at(200, 100), 0.5), 1);
    SymbolMatch leading = new SymbolMatch(new TagCode(TagType.PART, 1, 1, 1), true, 6, 4);
    doubts.note(
        new PoseReading(at(900, 100), 0.45, grid(), Optional.empty(), Optional.of(leading)), 1);
    assertThat(places(1)).containsExactly(900L);
  }

  @Test
  void aPoorFitIsNotWorthATry() {
    doubts.note(unread(at(200, 100), 0.29), 1);
    assertThat(doubts.next(List.of())).isEmpty();
  }

  @Test
  void threePlacesAreKeptThoseThatFitBest() {
    for (int place = 1; place <= 4; place++) {
      doubts.note(unread(at(200 * place, 100), 0.31 + 0.01 * place), 1);
    }
    assertThat(places(6)).doesNotContain(200L).contains(400L, 600L, 800L);
  }

  private List<Corner> firstCorners(int times, List<Track> followed) {
    List<Corner> corners = new ArrayList<>();
    for (int time = 0; time < times; time++) {
      corners.add(corner(doubts.next(followed).orElseThrow(), 0));
    }
    return corners;
  }

  private static Corner corner(Pose pose, int corner) {
    return new Corner(pose.x(corner), pose.y(corner));
  }

  private List<Long> places(int times) {
    List<Long> places = new ArrayList<>();
    for (int time = 0; time < times; time++) {
      places.add(Math.round(doubts.next(List.of()).orElseThrow().centreX()));
    }
    return places;
  }

  private static Pose at(double x, double y) {
    return Pose.ofAxes(x, y, new double[] {3, 0}, new double[] {0, 3});
  }

  private static PoseReading unread(Pose pose, double pattern) {
    return new PoseReading(pose, pattern, grid(), Optional.empty(), Optional.empty());
  }

  private static PoseReading read(Pose pose) {
    PoseReading.Text text = new PoseReading.Text("0000000000000000", true);
    return new PoseReading(pose, 0.6, grid(), Optional.of(text), Optional.empty());
  }

  private static SoftGrid grid() {
    return SoftGrid.of(new float[SymbolLayout.DATA_BITS], 0);
  }
}
