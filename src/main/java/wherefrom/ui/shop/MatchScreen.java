package wherefrom.ui.shop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.scene.layout.Region;
import wherefrom.drawing.PlaceWords;
import wherefrom.inspection.match.PartMatch;
import wherefrom.parts.Part;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TagKey;

/** Who each untagged part may be, to be agreed on one by one. */
public final class MatchScreen extends Page {
  private static final String NONE = "";

  private final RetagModel model;
  private final FitText prompt;
  private final Pager<PartMatch> rows;
  private final TagKey print;

  MatchScreen(ScreenContext context, RetagModel model) {
    super(context, "Which is which?");
    this.model = model;
    prompt = touch().text("");
    rows = Pager.list(context.touch(), this::row);
    print = touch().tag("Print the new tags", "", this::print);
    lay(Panes.column(context.scale(), prompt, rows, print));
  }

  @Override
  protected void refresh() {
    long open = model.matches().stream().filter(this::isOpen).count();
    prompt.setWords(
        open == 0
            ? "No match is left to accept."
                + context
                    .touch()
                    .brief(" Where it stays unclear, measure better or add another reading.", "")
            : "Press a row to accept the match."
                + touch().brief(" Nothing is recorded before that.", ""));
    List<PartMatch> ordered = new ArrayList<>(model.matches());
    ordered.sort(Comparator.comparing(match -> !isOpen(match)));
    rows.refill(ordered);
    print.setVisible(model.acceptedCount() > 0);
  }

  /** Whether it waits for the person's word. */
  private boolean isOpen(PartMatch match) {
    return told(match) && model.accepted(match.found()).isEmpty();
  }

  private static boolean told(PartMatch match) {
    return match.certainty() == PartMatch.Certainty.CERTAIN
        || match.certainty() == PartMatch.Certainty.LIKELY;
  }

  private Region row(PartMatch match) {
    Optional<Part> agreed = model.accepted(match.found());
    String number = "Number " + match.found() + ": ";
    if (agreed.isPresent()) {
      return ListRow.plain(
          context.touch(),
          number + PlaceWords.named(context.state().layout(), agreed.get().home()),
          List.of("Accepted. Tag it again."));
    }
    if (match.certainty() == PartMatch.Certainty.MATCHES_NONE) {
      return ListRow.plain(
          context.touch(),
          number + "none of them",
          List.of("Its readings are far from every record."));
    }
    return told(match)
        ? ListRow.key(
            context.touch(),
            number + name(match.best()),
            List.of(match.certainty().words() + ", " + shares(match)),
            () -> ask(match))
        : ListRow.plain(
            context.touch(),
            number + match.certainty().words(),
            List.of(
                "The readings are not exact enough: " + name(match.best()) + " " + shares(match)));
  }

  private String name(String item) {
    Part part = model.part(item);
    return PlaceWords.named(context.state().layout(), part.home());
  }

  /** {@code 97 %; next 5 IN pushrod 2 %}. */
  private String shares(PartMatch match) {
    return PartMatch.percent(match.confidence())
        + match
            .runnerUp()
            .map(
                item ->
                    "; next " + name(item) + " " + PartMatch.percent(match.runnerUpConfidence()))
            .orElse("");
  }

  private void ask(PartMatch match) {
    List<Choice<String>> choices = new ArrayList<>();
    choices.add(
        new Choice<>(
            match.best(),
            "Yes, it is " + name(match.best()),
            PartMatch.percent(match.confidence())));
    match
        .runnerUp()
        .ifPresent(
            item ->
                choices.add(
                    new Choice<>(
                        item,
                        "No, I know that it is " + name(item),
                        PartMatch.percent(match.runnerUpConfidence()))));
    choices.add(new Choice<>(NONE, "Leave it open", ""));
    open(
        () ->
            new ChoiceScreen<>(
                context, "Number " + match.found(), choices, item -> agree(match, item)));
  }

  private void agree(PartMatch match, String item) {
    if (!item.equals(NONE)) {
      context.attempt(() -> context.say(model.accept(match, item)));
    }
    context.navigator().changed();
  }

  private void print() {
    context.navigator().show(ScreenId.PRINT_TAGS);
  }
}
