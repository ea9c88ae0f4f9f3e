package wherefrom.ui.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.Reasons;

/** Asks for a line of the slip: what carries no tag, how many, and what is wanted. */
final class LineAsking {
  private static final List<String> THINGS =
      List.of(
          "block",
          "crankshaft",
          "cylinder heads",
          "camshaft",
          "flywheel",
          "rods with their caps",
          "main caps",
          "other");
  private static final List<String> SMALL =
      List.of(
          "dowels",
          "main cap bolts",
          "rod bolts and nuts",
          "woodruff keys",
          "oil gallery plugs",
          "keepers in a bag",
          "other");

  /** Takes what was asked for. */
  interface Taker {
    void take(String what, int count, Wanted wanted, boolean keep);
  }

  private final Desk desk;
  private final Taker taker;

  private LineAsking(Desk desk, Taker taker) {
    this.desk = desk;
    this.taker = taker;
  }

  /** Work on something that carries no tag. */
  static void ask(Desk desk, Taker taker) {
    LineAsking asking = new LineAsking(desk, taker);
    Reasons.ask(
        desk,
        "What goes?",
        THINGS,
        what ->
            asking.count(
                what, count -> WantedAsking.ask(desk, wanted -> asking.keep(what, count, wanted))));
  }

  /** Small pieces that go along and must not get lost. */
  static void askSmall(Desk desk, Taker taker) {
    LineAsking asking = new LineAsking(desk, taker);
    Reasons.ask(
        desk,
        "Do not lose",
        SMALL,
        what ->
            asking.count(
                what,
                count -> taker.take(what, count, Wanted.of("come back with the rest"), true)));
  }

  private void count(String what, Consumer<Integer> then) {
    desk.navigator()
        .open(
            () ->
                NumberEntryScreen.digits(
                    desk,
                    what,
                    "How many pieces go?",
                    3,
                    typed -> then.accept(typed.isEmpty() ? 0 : Integer.parseInt(typed))));
  }

  private void keep(String what, int count, Wanted wanted) {
    List<Choice<Boolean>> choices = new ArrayList<>();
    choices.add(new Choice<>(true, "Yes: it goes back to one place only", ""));
    choices.add(new Choice<>(false, "No", ""));
    desk.navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    desk,
                    "On the list “do not lose”?",
                    choices,
                    keep -> taker.take(what, count, wanted, keep)));
  }
}
