package wherefrom.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import wherefrom.job.OpenJob;
import wherefrom.job.torque.CardTyped;
import wherefrom.job.torque.TorqueBook;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;
import wherefrom.ui.torque.CardDetailsScreen;
import wherefrom.ui.torque.NewCardScreen;
import wherefrom.ui.torque.SequenceScreen;
import wherefrom.ui.torque.StageScreen;
import wherefrom.ui.torque.StagesScreen;
import wherefrom.ui.torque.TorqueCardScreen;
import wherefrom.ui.torque.TorqueScreen;
import wherefrom.workings.torque.BoltPattern;

/** Torque cards, in the states worth looking at. */
final class TorqueShots {
  private TorqueShots() {}

  static List<Shot> all() {
    List<Shot> shots = new ArrayList<>();
    shots.add(shot("torque-none", TorqueScreen.class, job -> {}));
    shots.add(shot("torque-list", TorqueScreen.class, TorqueShots::several));
    shots.add(shot("torque-new", NewCardScreen.class, job -> {}, "New torque"));
    shots.add(
        shot("torque-new-filled", NewCardScreen.class, job -> {}, filled("Threads", "oiled")));
    shots.add(
        shot("torque-sequence", SequenceScreen.class, job -> {}, filled("Order", "My own order")));
    shots.add(
        shot(
            "torque-stages",
            StagesScreen.class,
            job -> {},
            filled("Stages", "Add", "3", "0", "N·m", "Add", "9", "0", "degrees")));
    shots.add(
        shot("torque-stage", StageScreen.class, job -> {}, filled("Stages", "Add", "6", "5")));
    shots.add(shot("torque-card", TorqueCardScreen.class, job -> ticked(job, 14), "1. Head"));
    shots.add(
        shot(
            "torque-question",
            TorqueCardScreen.class,
            job -> ticked(job, 14),
            "1. Head",
            "bolt 9"));
    shots.add(shot("torque-angle", TorqueCardScreen.class, job -> ticked(job, 23), "1. Head"));
    shots.add(shot("torque-check", TorqueCardScreen.class, job -> ticked(job, 30), "1. Head"));
    shots.add(shot("torque-done", TorqueCardScreen.class, job -> ticked(job, 40), "1. Head"));
    shots.add(shot("torque-large", TorqueCardScreen.class, TorqueShots::largest, "1. Pan"));
    shots.add(
        shot(
            "torque-details",
            CardDetailsScreen.class,
            job -> ticked(job, 14),
            "1. Head",
            "The card|Card"));
    return shots;
  }

  private static String[] filled(String... rest) {
    List<String> presses = new ArrayList<>(List.of("New torque", "How they lie"));
    presses.addAll(List.of("2", "Done", "5", "Done"));
    presses.addAll(List.of(rest));
    return presses.toArray(String[]::new);
  }

  private static void begin(OpenJob job, String fastener, int rows, int columns) {
    new TorqueBook(job)
        .begin(
            new CardTyped(
                fastener,
                rows,
                columns,
                BoltPattern.ofRectangle(rows, columns).positions(),
                "",
                "oiled",
                List.of("30 N·m", "60 N·m", "90 deg"),
                "this engine's manual, p. 12"));
  }

  private static void ticked(OpenJob job, int ticks) {
    begin(job, "head bolts, left", 2, 5);
    IntStream.range(0, ticks)
        .forEach(
            at -> new TorqueBook(job).tick(1, at % 10 + 1, at < 30 ? "A. B." : "C. D.", false));
  }

  private static void several(OpenJob job) {
    ticked(job, 40);
    begin(job, "head bolts, right", 2, 5);
    begin(job, "main caps", 2, 5);
    new TorqueBook(job).drop(3, "bolts loosened again");
  }

  private static void largest(OpenJob job) {
    begin(job, "pan bolts", 5, 12);
  }

  private static Shot shot(
      String name, Class<? extends Screen> screen, Consumer<OpenJob> arrange, String... presses) {
    return new Shot(
        name,
        screen,
        window -> {
          SampleJob sample = SampleJob.apart();
          arrange.accept(sample.job);
          window.shell.context().open(sample.job);
          window.shell.context().navigator().show(ScreenId.TORQUE);
          window.layOut();
          for (String press : presses) {
            press(window, press);
          }
        });
  }

  private static void press(SampleWindow window, String words) {
    if (words.startsWith("bolt ")) {
      pressBolt(window, words.substring(5));
      return;
    }
    List<String> shown = window.targets().stream().map(window::words).toList();
    for (String word : words.split("\\|", -1)) {
      if (shown.stream().anyMatch(each -> each.startsWith(word))) {
        window.press(word);
        return;
      }
    }
    window.press(words.split("\\|", -1)[0]);
  }

  /** Touches a bolt by its number; where the words fill the screen, the bolts are shown first. */
  static void pressBolt(SampleWindow window, String number) {
    boolean shown =
        window.targets().stream().anyMatch(target -> window.words(target).equals(number));
    if (!shown) {
      window.press("Show the bolts");
    }
    window.pressExactly(number);
  }
}
