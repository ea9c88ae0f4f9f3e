package wherefrom.ui.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.layout.Region;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.job.Caution;
import wherefrom.job.inspect.Castings;
import wherefrom.text.Words;
import wherefrom.ui.app.CautionScreen;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.photos.PhotoTaking;

/** Block and heads: what is left to test, what was found, what becomes of each. */
public final class CastingsScreen extends ListPage {
  private final Castings castings;
  private final TagKey tag;
  private final Foot foot;

  public CastingsScreen(ScreenContext context) {
    super(context, "Castings");
    castings = new Castings(context.getJob());
    tag = tag(this::goOn);
    foot =
        new Foot(
            context,
            tag,
            KeyRow.of(
                context,
                act(
                    "Cautions",
                    () -> open(() -> new CautionScreen(context, Caution.atCastings())))));
    layOut(foot);
  }

  private Optional<Castings.Casting> next() {
    return castings.list().stream().filter(one -> one.countOpen() > 0).findFirst();
  }

  @Override
  public String aside() {
    long open = castings.list().stream().mapToLong(Castings.Casting::countOpen).sum();
    return open + " to do";
  }

  @Override
  protected void refresh() {
    super.refresh();
    foot.offerTag(next().isPresent());
    next().ifPresent(one -> tag.setWords("Next: " + one.words(), ""));
  }

  private void goOn() {
    next().ifPresent(this::test);
  }

  private static String name(Castings.Casting one) {
    return Words.capital(one.words());
  }

  @Override
  protected List<Region> rows() {
    List<Region> rows = new ArrayList<>();
    castings.list().forEach(one -> rows.add(key(name(one), line(one), () -> ask(one))));
    return rows;
  }

  /** {@code suspect, 2 to test; decided: machine}. */
  private String line(Castings.Casting one) {
    if (touch().isLarge()) {
      return one.worst() == Look.NOT_LOOKED ? "not tested" : one.worst().word();
    }
    String tests =
        one.worst() == Look.NOT_LOOKED
            ? "not tested"
            : one.worst().word()
                + (one.countOpen() == 0 ? "" : ", " + one.countOpen() + " to test");
    return tests + "; " + (one.decision().isPresent() ? "decided: " : "") + one.decided();
  }

  private void ask(Castings.Casting one) {
    List<Choice<Runnable>> ways =
        List.of(
            new Choice<>(() -> test(one), "Test it", Words.count(one.cards().size(), "test")),
            new Choice<>(() -> decide(one), "Decide", one.reason()),
            new Choice<>(
                () -> PhotoTaking.ask(context, Optional.of(one.subject()), ""),
                "Photograph it",
                Words.count(one.photographs(), "photograph")));
    open(() -> new ChoiceScreen<>(context, name(one), ways, Runnable::run));
  }

  private void test(Castings.Casting one) {
    open(() -> new CardScreen(context, one.subject(), List.of()));
  }

  private void decide(Castings.Casting one) {
    List<Choice<Decision>> choices = new ArrayList<>();
    for (Decision decision : Decision.values()) {
      choices.add(
          new Choice<>(decision, Words.capital(decision.word()), "")
              .now(one.decision().filter(decision::equals).isPresent()));
    }
    open(() -> new ChoiceScreen<>(context, name(one), choices, decision -> reason(one, decision)));
  }

  private void reason(Castings.Casting one, Decision decision) {
    open(
        () ->
            new TextEntryScreen(
                context, "Why: " + decision.word(), one.reason(), why -> keep(one, decision, why)));
  }

  private void keep(Castings.Casting one, Decision decision, String why) {
    context.attempt(
        () -> castings.decide(one.subject().key(), decision, why).ifPresent(context::say));
    context.navigator().changed();
  }
}
