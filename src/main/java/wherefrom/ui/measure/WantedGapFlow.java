package wherefrom.ui.measure;

import java.util.List;
import java.util.function.BiFunction;
import wherefrom.inspection.Sources;
import wherefrom.job.numbers.FigureOutcome;
import wherefrom.job.numbers.Ring;
import wherefrom.job.numbers.RingFiling;
import wherefrom.quantity.Dimension;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;

/** Asks which gap a sort of ring wants: a rule per bore or the maker's figure, and its source. */
final class WantedGapFlow {
  private final ScreenContext context;

  WantedGapFlow(ScreenContext context) {
    this.context = context;
  }

  void ask() {
    List<Choice<Ring>> choices =
        List.of(Ring.TOP, Ring.SECOND, Ring.UPPER_RAIL).stream()
            .map(ring -> new Choice<>(ring, Words.capital(ring.sortWords()), now(ring)))
            .toList();
    open(() -> new ChoiceScreen<>(context, "Which ring?", choices, this::how));
  }

  private String now(Ring ring) {
    return new RingFiling(context.getJob())
        .findWanted(ring)
        .map(wanted -> wanted.words())
        .orElse("not typed yet");
  }

  private void how(Ring ring) {
    List<Choice<Runnable>> choices =
        List.of(
            new Choice<>(() -> gap(ring), "The gap itself", "from the ring maker's sheet"),
            new Choice<>(() -> rule(ring), "Gap over bore", "such as 0.004"));
    open(
        () ->
            new ChoiceScreen<>(
                context,
                "What does the sheet of the " + ring.sortWords() + " give?",
                choices,
                Runnable::run));
  }

  private void gap(Ring ring) {
    open(
        () ->
            new SizeScreen(
                context,
                "Wanted gap: " + ring.sortWords(),
                "Type it as the ring maker's sheet prints it.",
                Dimension.LENGTH,
                gap -> source((filing, source) -> filing.wantGap(ring, gap, source))));
  }

  private void rule(Ring ring) {
    List<Choice<String>> usual =
        List.of(
            new Choice<>("0.004", "0.004 of the bore", "common practice, no source"),
            new Choice<>("0.0035", "0.0035 of the bore", "least of one ring maker's tip"),
            new Choice<>("", "Another figure", "type it"));
    open(
        () ->
            new ChoiceScreen<>(
                context,
                "Gap over bore: " + ring.sortWords(),
                usual,
                chosen -> {
                  if (chosen.isEmpty()) {
                    type(ring);
                  } else {
                    source((filing, source) -> filing.wantPerBore(ring, chosen, source));
                  }
                }));
  }

  private void type(Ring ring) {
    open(
        () ->
            new TextEntryScreen(
                context,
                "Gap over bore, such as 0.0045",
                "0.00",
                typed -> source((filing, source) -> filing.wantPerBore(ring, typed, source))));
  }

  private void source(BiFunction<RingFiling, String, FigureOutcome> keep) {
    List<Choice<String>> choices =
        List.of(
            new Choice<>("sheet", "The ring maker's sheet", "type which"),
            new Choice<>(Sources.PRACTICE, "Common practice", "no source: the weaker one"));
    open(
        () ->
            new ChoiceScreen<>(
                context,
                "Where is it printed?",
                choices,
                chosen -> {
                  if (chosen.equals(Sources.PRACTICE)) {
                    keep(keep, chosen);
                  } else {
                    open(
                        () ->
                            new TextEntryScreen(
                                context,
                                "Where it is printed",
                                "Ring maker's sheet, ",
                                typed -> keep(keep, typed)));
                  }
                }));
  }

  private void keep(BiFunction<RingFiling, String, FigureOutcome> keep, String source) {
    FigureOutcome came = keep.apply(new RingFiling(context.getJob()), source);
    context.say(
        came instanceof FigureOutcome.Refused refused ? refused.sentence() : "The gap is set.");
    context.navigator().changed();
  }

  private void open(java.util.function.Supplier<? extends wherefrom.ui.app.Screen> maker) {
    context.navigator().open(maker);
  }
}
