package wherefrom.ui.measure;

import java.util.List;
import java.util.Optional;
import javafx.scene.layout.Region;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.LimitTarget;
import wherefrom.inspection.measure.Station;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.WordsScreen;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.subject.Named;

/** What a whole set of readings comes to, and what can be done next. */
final class ReadingsResult {
  private final ScreenContext context;
  private final ReadingsModel model;

  ReadingsResult(ScreenContext context, ReadingsModel model) {
    this.context = context;
    this.model = model;
  }

  /** The result as it is now. */
  Region view() {
    Pager<MeasuredLines.Line> lines = Pager.list(context.touch(), this::row);
    model.result().ifPresent(result -> lines.setItems(MeasuredLines.of(context.getJob(), result)));
    Optional<Subject> next = next();
    TagKey tag = context.touch().tag("", "", () -> next.ifPresentOrElse(this::goOn, this::compare));
    tag.setWords(
        next.map(subject -> "Next: " + Words.small(Named.title(context.state(), subject)))
            .orElse("Compare the set"),
        "");
    List<KeyRow.Act> acts =
        List.of(
            new KeyRow.Act(
                "Type a limit", () -> LimitFlow.ask(context, LimitTarget.of(model.plan()))),
            new KeyRow.Act("Read one again", this::readOneAgain),
            new KeyRow.Act("Compare the set", this::compare),
            new KeyRow.Act("Measure again", this::anew));
    return Panes.column(
        context.scale(), lines, new Foot(context, tag, KeyRow.of(context, 1, acts)));
  }

  private Region row(MeasuredLines.Line line) {
    WordsScreen.Paragraph whole = new WordsScreen.Paragraph(line.heading(), line.words());
    return ListRow.key(
        context.touch(),
        line.heading(),
        List.of(context.touch().brief(line.words(), "")),
        () ->
            context.navigator().open(() -> new WordsScreen(context, model.name(), List.of(whole))));
  }

  private void readOneAgain() {
    List<Choice<Station>> stations =
        model.plan().stations().stream()
            .map(station -> new Choice<>(station, station.words(), model.read(station)))
            .toList();
    context
        .navigator()
        .open(() -> new ChoiceScreen<>(context, "Which one?", stations, this::again));
  }

  private void again(Station station) {
    model.again(station);
    context.navigator().changed();
  }

  private void anew() {
    model.startAnew();
    context.navigator().changed();
  }

  private void compare() {
    context.navigator().open(() -> new CompareScreen(context, model.plan()));
  }

  private Optional<Subject> next() {
    return new MeasureModel(context.getJob()).next(model.plan(), model.subject());
  }

  private void goOn(Subject subject) {
    context.navigator().back();
    context.navigator().open(() -> new ReadingsScreen(context, subject, model.plan().key()));
  }
}
