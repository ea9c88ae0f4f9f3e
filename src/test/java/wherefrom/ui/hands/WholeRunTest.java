package wherefrom.ui.hands;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.inspection.Look;
import wherefrom.job.EngineJob;
import wherefrom.job.puttogether.ToFit;
import wherefrom.job.takeapart.NextOut;
import wherefrom.job.takeapart.OutOrder;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;

/**
 * A V8 from the empty start to its first start, in the shown window: by a scanner and cards alone,
 * by touch alone, by keyboard alone. Each prints what it took.
 */
class WholeRunTest {
  private static final int PARTS = 74;

  @TempDir Path folder;

  private ShownWindow window;
  private Hand hand;

  @Test
  @Timeout(180)
  void byScannerAndCardsAlone() {
    run(Scanner::new);
  }

  @Test
  @Timeout(180)
  void byTouchAlone() {
    run(Finger::new);
  }

  @Test
  @Timeout(180)
  void byKeyboardAlone() {
    run(Fingers::new);
  }

  private void run(Function<ShownWindow, Hand> hands) {
    try (ShownWindow shown = new ShownWindow(folder)) {
      window = shown;
      hand = hands.apply(shown);
      try {
        print();
        takeApart();
        decide();
        putTogether();
        finish();
      } finally {
        System.out.println(hand.tally.table());
      }
    }
  }

  private EngineJob state() {
    return window.job().state();
  }

  private void shows(String... words) {
    assertThat(window.words()).contains(words);
  }

  private void print() {
    Tally.Step step = hand.tally.step("empty start to the first sheet", 1);
    hand.press("New job", "Begin the job", "Print the tags first", "Print ");
    assertThat(window.sheets()).hasSize(1);
    assertThat(step.acts()).isLessThanOrEqualTo(hand.most(4));
  }

  private void takeApart() {
    hand.tally.step("place cards, then to the work", 1);
    hand.press("Place cards", "Print ");
    assertThat(window.sheets()).hasSize(2);
    hand.back();
    hand.press("Go on: 1 IN rocker");
    out(1, "take apart");
    finding();
    out(12, "take apart");
    note();
    out(20, "take apart");
    photo();
    out(PARTS - 33, "take apart");
    assertThat(state().parts()).allMatch(part -> part.where() == Whereabouts.OUT);
  }

  private void out(int parts, String words) {
    Tally.Step step = hand.tally.step(words, parts);
    for (int part = 0; part < parts; part++) {
      Place home = next();
      hand.out(home);
      assertThat(state().getPart(item(home)).where()).isEqualTo(Whereabouts.OUT);
    }
    assertThat(step.acts()).isBetween(parts, parts + hand.first());
  }

  private Place next() {
    return new NextOut(state(), OutOrder.CYLINDER, Set.of()).find().orElseThrow().part().home();
  }

  private int item(Place home) {
    return state().findOwner(home).orElseThrow().item();
  }

  private void finding() {
    Tally.Step step = hand.tally.step("a finding, from its OUT", 1);
    hand.press("Suspect", "A slight step");
    assertThat(window.message()).contains("1 IN rocker");
    assertThat(state().getPart(item(place("rocker@1IN"))).looks()).containsValue(Look.SUSPECT);
    assertThat(step.acts()).isLessThanOrEqualTo(hand.most(2));
  }

  private void note() {
    hand.tally.step("a note, from its OUT", 1);
    hand.press("Note");
    hand.write("Ok");
    assertThat(window.message()).startsWith("Noted on ");
  }

  private void photo() {
    hand.tally.step("a photo, from its OUT", 1);
    hand.press("Photo", "From the camera");
    assertThat(window.message()).startsWith("The photograph is kept");
  }

  private void decide() {
    hand.tally.step("all out: decide on what was found", 1);
    hand.press(
        "All are out", "Decide", "Next: ", "Reuse", "measured good", "Reuse it all the same");
    assertThat(window.message()).startsWith("1 IN rocker: reuse.");
    hand.tally.step("back to the job's first screen", 1);
    for (int screen = 0; !window.isHome(); screen++) {
      assertThat(screen).as("screens above the first: " + window.title()).isLessThan(8);
      hand.back();
    }
  }

  private void putTogether() {
    hand.tally.step("to putting together", 1);
    hand.press("Together");
    stop();
    both(9);
    list();
  }

  private void stop() {
    Place right = place("pushrod@5EX");
    hand.tally.step("a wrong place, and out of its stop", 1);
    hand.part(place("pushrod@3EX"));
    hand.place(right);
    shows("STOP", "From: 3 EX", "Here: 5 EX");
    hand.cure(right);
    rightPlace(right);
  }

  private static Place place(String key) {
    return Place.find(key).orElseThrow();
  }

  private void rightPlace(Place place) {
    shows("RIGHT PLACE");
    assertThat(state().findFitted(place)).isEqualTo(state().findOwner(place));
  }

  private void both(int parts) {
    Tally.Step step = hand.tally.step("put together, both scanned", parts);
    for (Place place : new ToFit(window.job()).places().subList(0, parts)) {
      hand.part(place);
      hand.place(place);
      rightPlace(place);
    }
    assertThat(step.acts()).isEqualTo(2 * hand.code() * parts);
  }

  private void list() {
    hand.tally.step("to the list", 1);
    hand.press("Go on", "Follow list");
    List<Place> open = new ToFit(window.job()).places();
    Tally.Step step = hand.tally.step("put together by the list", open.size());
    for (Place place : open) {
      hand.part(place);
      rightPlace(place);
    }
    shows("none to fit");
    assertThat(step.acts()).isEqualTo(hand.code() * open.size());
  }

  private void finish() {
    hand.tally.step("nothing to fit: finish", 1);
    hand.press("Finish");
    for (String section :
        List.of(
            "Main bearings", "Rods and pistons", "Valvetrain, left bank", "Valvetrain, right")) {
      hand.press(section, "Finish section");
    }
    shows("Before the first start");
  }
}
