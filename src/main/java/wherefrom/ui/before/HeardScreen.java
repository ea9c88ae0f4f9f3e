package wherefrom.ui.before;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.layout.Region;
import wherefrom.inspection.Check;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.inspect.CheckCard;
import wherefrom.job.inspect.Inspecting;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.inspect.CardScreen;
import wherefrom.ui.photos.PhotoTaking;
import wherefrom.ui.subject.Named;

/** Where air comes out of a cylinder, or what a needle does: all its tests on one list. */
public final class HeardScreen extends ListPage {
  private final Subject subject;
  private final Inspecting inspecting;
  private final Foot foot;

  public HeardScreen(ScreenContext context, Subject subject) {
    super(
        context,
        subject.equals(BeforeModel.RUNNING)
            ? "What the needle does"
            : "Where cylinder " + Named.place(context.state(), subject) + " leaks");
    this.subject = subject;
    inspecting = new Inspecting(context.getJob());
    TagKey tag = tag(this::nothingElse);
    tag.setWords("Nothing else", touch().brief("the rest is good", ""));
    foot =
        new Foot(
            context,
            tag,
            KeyRow.of(
                context,
                act("Photo", () -> PhotoTaking.ask(context, Optional.of(subject), "")),
                act("Drawing", () -> open(() -> new CardScreen(context, subject, List.of())))));
    layOut(foot);
  }

  @Override
  public String aside() {
    return new BeforeModel(context.getJob()).heard(subject);
  }

  @Override
  protected void refresh() {
    super.refresh();
    foot.offerTag(!open().isEmpty());
  }

  private List<CheckCard> open() {
    return inspecting.cards(subject).stream()
        .filter(card -> card.look() == Look.NOT_LOOKED)
        .toList();
  }

  @Override
  protected List<Region> rows() {
    List<Region> rows = new ArrayList<>();
    for (CheckCard card : inspecting.cards(subject)) {
      rows.add(
          key(
              card.check().title(),
              List.of(answer(card), touch().brief(card.check().where(), "")),
              () -> ask(card)));
    }
    return rows;
  }

  private static String answer(CheckCard card) {
    Check check = card.check();
    return switch (card.look()) {
      case NOT_LOOKED -> "not noted";
      case PASS -> check.pass();
      case SUSPECT -> check.suspect();
      case FAIL -> check.fail();
    };
  }

  private void ask(CheckCard card) {
    Check check = card.check();
    List<Choice<Look>> choices =
        List.of(
            new Choice<>(Look.FAIL, check.fail(), ""),
            new Choice<>(Look.SUSPECT, check.suspect(), ""),
            new Choice<>(Look.PASS, check.pass(), ""),
            new Choice<>(Look.NOT_LOOKED, "Not noted", ""));
    open(() -> new ChoiceScreen<>(context, check.title(), choices, look -> keep(card, look)));
  }

  private void keep(CheckCard card, Look look) {
    if (look != card.look()) {
      context.attempt(() -> inspecting.answer(subject, card.check().key(), look, card.note()));
    }
    context.navigator().changed();
  }

  /** What was not noted is good: one act, so that one UNDO takes it back. */
  private void nothingElse() {
    context.attempt(
        () ->
            context
                .getJob()
                .asOne(
                    () -> {
                      open()
                          .forEach(
                              card ->
                                  inspecting.answer(
                                      subject, card.check().key(), Look.PASS, card.note()));
                      return true;
                    }));
    context.navigator().changed();
  }
}
