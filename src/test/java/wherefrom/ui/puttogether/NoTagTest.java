package wherefrom.ui.puttogether;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.job.PlaceState;
import wherefrom.job.Untagged;
import wherefrom.job.handling.Handling;
import wherefrom.job.pages.RecordTable;
import wherefrom.job.record.BuildRecord;
import wherefrom.parts.Place;
import wherefrom.rules.Cue;
import wherefrom.ui.Toolkit;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.VerdictSounds;
import wherefrom.ui.benchmap.BenchMapScreen;
import wherefrom.ui.print.PrintTagsScreen;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;
import wherefrom.ui.shop.RetagScreen;

/** The part in the hand has lost its tag while its place waits for it. */
class NoTagTest {
  private final SampleJob sample = SampleJob.apart();

  private SampleWindow waiting() {
    SampleWindow window = new SampleWindow(96, 100);
    window.shell.context().open(sample.job);
    window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
    window.scan(sample.card("3IN"));
    window.layOut();
    assertThat(window.words()).contains("Now scan the part");
    return window;
  }

  private static void press(SampleWindow window, String... words) {
    for (String each : words) {
      window.press(each);
      window.layOut();
    }
  }

  @Test
  void aPartWithoutATagIsToldByWhereItLayAndGetsANewTagForTheSamePlace() {
    Toolkit.on(
        () -> {
          SampleWindow window = waiting();
          press(window, "No tag on it", "It lay as the 3 IN lifter", "Print its tag again");
          assertThat(window.shell.current()).isInstanceOf(PrintTagsScreen.class);
          press(window, "Back");
          assertThat(window.words()).contains("Now scan the part");
          window.scan(sample.tag("lifter@3IN"));
          assertThat(sample.state("lifter@3IN")).isEqualTo(PlaceState.FITTED);
          return 0;
        });
  }

  @Test
  void orItGoesInAtOnce() {
    Toolkit.on(
        () -> {
          SampleWindow window = waiting();
          List<Cue> heard = listen(window);
          press(window, "No tag on it", "It lay as the 3 IN lifter", "Put it in without");
          assertThat(sample.state("lifter@3IN")).isEqualTo(PlaceState.FITTED);
          assertThat(window.words())
              .contains("NO TAG ON IT", Untagged.SENTENCE)
              .doesNotContain("RIGHT PLACE");
          assertThat(heard).containsExactly(Cue.ASK);
          return 0;
        });
  }

  private static List<Cue> listen(SampleWindow window) {
    List<Cue> heard = new ArrayList<>();
    window.sounds =
        new VerdictSounds() {
          @Override
          public void play(Cue cue) {
            heard.add(cue);
          }

          @Override
          public void hush() {}
        };
    return heard;
  }

  /** On its page, in its history and first in the record: nobody takes it for proven later. */
  @Test
  void whatWentInWithoutATagIsSaidSoEverAfter() {
    Toolkit.on(
        () -> {
          SampleWindow window = waiting();
          press(window, "No tag on it", "It lay as the 3 IN lifter", "Put it in without");
          window.shell.context().navigator().show(ScreenId.PART, sample.part("lifter@3IN").item());
          window.layOut();
          assertThat(window.words()).contains(Untagged.SENTENCE, "without a tag");
          return 0;
        });
    assertThat(notChecked()).contains("Fitted without a tag: " + lifter().words());
    assertThat(Untagged.places(sample.job.state())).containsExactly(lifter());
  }

  private static Place lifter() {
    return Place.find("lifter@3IN").orElseThrow();
  }

  private List<String> notChecked() {
    return BuildRecord.of(sample.job).find(RecordTable.NOT_CHECKED).rows().stream()
        .map(row -> row.cells().get(0))
        .toList();
  }

  /** Stopped first, and its stop shown again on another screen: it has no tag all the same. */
  @Test
  void aStopInBetweenProvesNothing() {
    Toolkit.on(
        () -> {
          SampleWindow window = waiting();
          new Handling(sample.job).lost(sample.part("lifter@3IN").item(), "");
          press(window, "No tag on it", "It lay as the 3 IN lifter", "Put it in without");
          assertThat(window.words()).contains("STOP");
          window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
          window.layOut();
          press(window, "It is found");
          window.scan(sample.card("3IN"));
          window.layOut();
          assertThat(sample.state("lifter@3IN")).isEqualTo(PlaceState.FITTED);
          assertThat(window.words()).contains(Untagged.SENTENCE).doesNotContain("RIGHT PLACE");
          return 0;
        });
  }

  /** Whoever reads its tag at its place has proven it. */
  @Test
  void itsTagReadAsItGoesInProvesIt() {
    Toolkit.on(
        () -> {
          SampleWindow window = waiting();
          press(window, "No tag on it", "It lay as the 3 IN lifter", "Put it in without");
          window.scan(sample.tag("lifter@3IN"));
          window.layOut();
          assertThat(window.words()).contains("Recorded as in", "3 IN");
          press(window, "It is in my hand");
          window.scan(sample.card("3IN"));
          window.layOut();
          assertThat(window.words()).contains("RIGHT PLACE");
          assertThat(Untagged.places(sample.job.state())).isEmpty();
          return 0;
        });
  }

  @Test
  void orItsReadingsTell() {
    Toolkit.on(
        () -> {
          SampleWindow window = waiting();
          press(window, "No tag on it", "Measure it");
          assertThat(window.shell.current()).isInstanceOf(RetagScreen.class);
          return 0;
        });
  }

  /** Only the part has no tag then: with a part in the hand there is nothing to tell. */
  @Test
  void itIsNotAskedWhereThePartIsKnown() {
    Toolkit.on(
        () -> {
          SampleWindow window = new SampleWindow(96, 100);
          window.shell.context().open(sample.job);
          window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
          window.scan(sample.tag("lifter@3IN"));
          window.layOut();
          assertThat(window.words()).doesNotContain("No tag on it");
          return 0;
        });
  }

  /** Nobody knows its place yet: the key stands where its digits would be typed, and at home. */
  @Test
  void beforeAPlaceIsKnownItIsLookedForOnTheBench() {
    Toolkit.on(
        () -> {
          SampleWindow window = new SampleWindow(96, 100);
          window.shell.context().open(sample.job);
          window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
          window.layOut();
          press(window, "Type code", "No tag on it");
          assertThat(window.words()).contains("How do you know it?").doesNotContain("It lay as");
          press(window, "Look on the bench map");
          assertThat(window.shell.current()).isInstanceOf(BenchMapScreen.class);
          window.shell.context().navigator().home();
          window.layOut();
          press(window, "More");
          window.pressOnSomePage("No tag on a part");
          window.layOut();
          press(window, "Measure it");
          assertThat(window.shell.current()).isInstanceOf(RetagScreen.class);
          return 0;
        });
  }

  /** A stop asks for a tag that is there: nothing leads around it. */
  @Test
  void aStopOffersNoWayWithoutATag() {
    Toolkit.on(
        () -> {
          SampleWindow window = waiting();
          window.scan(sample.tag("lifter@5IN"));
          window.layOut();
          press(window, "Scan the right part");
          assertThat(window.words()).contains("Type a code").doesNotContain("No tag on it");
          return 0;
        });
  }
}
