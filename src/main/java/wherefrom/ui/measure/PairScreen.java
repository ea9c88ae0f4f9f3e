package wherefrom.ui.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.layout.Region;
import wherefrom.inspection.measure.ClearancePair;
import wherefrom.inspection.measure.LimitTarget;
import wherefrom.job.PairClearance;
import wherefrom.job.PairClearances;
import wherefrom.text.Words;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.WordsScreen;
import wherefrom.ui.app.WordsScreen.Paragraph;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.subject.Named;

/** The clearance of one pair of surfaces at every place, as far as both are measured. */
public final class PairScreen extends ListPage {
  private final ClearancePair pair;
  private final TagKey tag;
  private Runnable first = () -> {};

  public PairScreen(ScreenContext context, ClearancePair pair) {
    super(context, pair.title());
    this.pair = pair;
    tag = tag(() -> first.run());
    layOut(
        new Foot(
            context,
            tag,
            KeyRow.of(context, act(touch().brief("Type the limit", "Type limit"), this::limit))));
  }

  private List<PairClearance> all() {
    return new PairClearances(context.state()).list(pair);
  }

  @Override
  public String aside() {
    return all().stream().filter(one -> one.missing().isEmpty()).count()
        + " of "
        + all().size()
        + " known";
  }

  @Override
  protected void refresh() {
    super.refresh();
    Optional<PairClearances.Next> next =
        all().stream()
            .flatMap(one -> new PairClearances(context.state()).findNext(one).stream())
            .findFirst();
    tag.setWords(
        next.map(one -> "Next: " + Named.title(context.state(), one.subject()))
            .orElse("Type the limit"),
        next.isPresent() ? "" : touch().brief("as the engine's manual gives it", ""));
    first = next.<Runnable>map(one -> () -> read(context, one)).orElse(this::limit);
  }

  @Override
  protected List<Region> rows() {
    return all().stream().map(this::row).toList();
  }

  private Region row(PairClearance one) {
    String name = Words.capital(one.words());
    boolean known = one.missing().isEmpty();
    return key(
        touch().brief(name, Words.capital(one.brief())) + ": " + standing(one),
        touch().brief(figures(one), ""),
        known
            ? () -> open(() -> new WordsScreen(context, name, paragraphs(one)))
            : () -> measure(context, one));
  }

  /** Opens what is to be read next for a clearance; says so where no such part is tracked. */
  static void measure(ScreenContext context, PairClearance one) {
    new PairClearances(context.state())
        .findNext(one)
        .ifPresentOrElse(
            next -> read(context, next),
            () -> context.say("Track this kind of part first: " + one.missing().get(0) + "."));
  }

  private static void read(ScreenContext context, PairClearances.Next next) {
    context.navigator().open(() -> new ReadingsScreen(context, next.subject(), next.plan()));
  }

  private static String standing(PairClearance one) {
    if (!one.missing().isEmpty()) {
      return one.missing().size() + " to measure";
    }
    return switch (one.look()) {
      case NOT_LOOKED -> "no limit";
      case PASS -> "accept";
      case SUSPECT -> one.said().isEmpty() ? "undecided" : "does not go in";
      case FAIL -> "reject";
    };
  }

  private static String figures(PairClearance one) {
    if (!one.missing().isEmpty()) {
      return "Next: " + one.missing().get(0);
    }
    return one.said().isEmpty() ? one.range().map(range -> range.text()).orElse("") : one.said();
  }

  private List<Paragraph> paragraphs(PairClearance one) {
    List<Paragraph> paragraphs = new ArrayList<>();
    paragraphs.add(new Paragraph(pair.title(), one.sentence()));
    for (PairClearance.At at : one.facings()) {
      paragraphs.add(
          new Paragraph(
              Words.capital(at.facing().words()),
              at.least().value() == at.most().value()
                  ? at.least().text()
                  : "least " + at.least().text() + ", most " + at.most().text()));
    }
    if (!pair.how().isEmpty()) {
      paragraphs.add(new Paragraph("How", pair.how()));
    }
    one.judgement()
        .ifPresent(judged -> paragraphs.add(new Paragraph("Source", judged.limit().source())));
    return paragraphs;
  }

  private void limit() {
    LimitFlow.ask(context, LimitTarget.of(pair));
  }
}
