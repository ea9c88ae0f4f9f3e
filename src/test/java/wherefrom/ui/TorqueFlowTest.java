package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.engine.ReadyLayouts;
import wherefrom.job.OpenJob;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.record.BuildRecord;
import wherefrom.job.shelf.Shelf;
import wherefrom.job.torque.KeptCard;
import wherefrom.job.torque.TorqueBook;
import wherefrom.logbook.FileShelf;
import wherefrom.parts.Action;
import wherefrom.parts.PartKind;
import wherefrom.quantity.UnitSystem;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** A head of ten bolts by touch and by the NEXT card, on real files, with a restart half-way. */
class TorqueFlowTest {
  @TempDir Path folder;
  private Path job;
  private SampleWindow window;

  @BeforeEach
  void begin() {
    FileShelf shelf = shelf();
    OpenJob opened =
        shelf.create(
            new Shelf.NewJob(
                "Launch V8",
                ReadyLayouts.find("v8-odd-even").orElseThrow(),
                PartKind.alwaysOn(),
                UnitSystem.INCH));
    job = opened.folder();
    opened.close();
    window = start();
  }

  private FileShelf shelf() {
    SplittableRandom random = new SplittableRandom(3);
    return new FileShelf(folder, SampleJob.CLOCK, random::nextInt);
  }

  private SampleWindow start() {
    SampleWindow fresh = Toolkit.on(() -> new SampleWindow(96, 100, shelf()));
    return Toolkit.on(
        () -> {
          fresh.shell.context().open(fresh.shell.context().shelf().open(job));
          fresh.shell.context().navigator().show(ScreenId.TORQUE);
          fresh.layOut();
          return fresh;
        });
  }

  private void press(String... words) {
    for (String each : words) {
      window.press(each);
    }
  }

  /** Touches the bolt that has this number on it. */
  private void bolt(int number) {
    window.pressExactly(Integer.toString(number));
  }

  private void next() {
    for (int moment = 0; moment < 10; moment++) {
      window.moment();
    }
    window.scan(Action.NEXT.code().digits());
    window.layOut();
  }

  private KeptCard card() {
    return new TorqueBook(window.shell.context().getJob()).find(1).orElseThrow();
  }

  private void write() {
    press("New torque", "Which bolts", "head bolts, left");
    press("How they lie", "2", "Done", "5", "Done", "Threads", "oiled");
    press("Stages", "Add", "3", "0", "N·m", "Add", "6", "0", "N·m", "Add", "9", "0", "degrees");
    press("Done", "Source of the figures", "M", "7", "Done", "Start the card");
  }

  @Test
  void goesThroughThreeStagesAWrongBoltAnUndoARestartAndASecondPerson() {
    Toolkit.on(
        () -> {
          write();
          assertThat(window.words()).contains("Bolt 1 to 30 N·m");
          press("Bolt 1 done", "A", "Done");
          for (int number = 2; number <= 10; number++) {
            bolt(number);
          }
          bolt(9);
          assertThat(window.words()).contains("OUT OF TURN?", "Bolt 1 is next, not 9");
          assertThat(card().card().ticks()).hasSize(10);
          press("Bolt 1 is next", "Bolt 1 done", "Bolt 2 done", "UNDO");
          assertThat(window.words()).contains("Bolt 2 to 60 N·m");
          press("Bolt 2 done");
          window.shell.close();
          return 0;
        });
    window = start();
    Toolkit.on(
        () -> {
          assertThat(window.words()).contains("stage 2 of 3, bolt 3 of 10");
          press("1. Head");
          assertThat(window.words()).contains("Bolt 3 to 60 N·m", "Who: A");
          for (int ticks = 0; ticks < 18; ticks++) {
            next();
          }
          assertThat(window.words()).contains("Check bolt 1", "Who: ?");
          next();
          assertThat(window.shell.message()).contains("Press Who");
          press("Bolt 1 checked", "Z", "Done");
          for (int number = 2; number <= 10; number++) {
            bolt(number);
          }
          assertThat(window.words()).contains("TIGHTENED", "All checked");
          return 0;
        });
    assertThat(card().isDone()).isTrue();
    assertThat(card().card().ticks()).hasSize(40).noneMatch(tick -> tick.outOfTurn());
    assertThat(record()).hasSize(4).noneMatch(RecordSection.Row::open);
    assertThat(record().get(3).cells()).contains("second person's check", "10 of 10", "Z");
    assertThat(record().get(1).cells()).contains("stage 2 to 60 N·m, threads oiled", "A");
    Toolkit.on(
        () -> {
          window.shell.close();
          return 0;
        });
  }

  private List<RecordSection.Row> record() {
    return BuildRecord.of(window.shell.context().getJob()).sections().stream()
        .filter(section -> section.title().equals("Torque cards"))
        .findFirst()
        .orElseThrow()
        .rows();
  }

  @Test
  void anOwnOrderIsTouchedAndAWrongBoltOfItCanCountWithAMark() {
    Toolkit.on(
        () -> {
          press("New torque", "Which bolts", "main caps");
          press("How they lie", "1", "Done", "3", "Done");
          press("Order", "My own order");
          touchEmpty(2);
          touchEmpty(0);
          press("That is all", "this engine's service");
          press("Threads", "dry", "Stages", "Add", "2", "0", "lb·ft", "Done");
          press("Source of the figures", "M", "Done", "Start the card");
          bolt(2);
          press("A", "Done", "Bolt 2 was done");
          return 0;
        });
    assertThat(card().card().spec().pattern().positions()).containsExactly(3, 1);
    assertThat(card().card().ticks()).hasSize(1).allMatch(tick -> tick.outOfTurn());
    assertThat(record().get(0).open()).isTrue();
    assertThat(record().get(0).cells().get(2)).contains("out of turn: 2");
  }

  /** Touches an empty disc by its place among all that are empty. */
  private void touchEmpty(int at) {
    window.pressNth("", at);
  }
}
