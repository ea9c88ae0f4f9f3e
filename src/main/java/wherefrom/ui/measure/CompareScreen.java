package wherefrom.ui.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.job.EngineJob;
import wherefrom.job.measure.SetPicture;
import wherefrom.job.measure.SetPictures;
import wherefrom.text.Words;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.WordsScreen;
import wherefrom.ui.controls.Either;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.subject.Named;

/** A set drawn against itself, with the odd one out named. */
public final class CompareScreen extends Page {
  /** So many letters of names are told below the picture. */
  private static final int MOST_NAMED = 40;

  private final SetPictures model;
  private final StackPane view = Panes.grow(new StackPane());
  private int at;
  private final ReadingPlan plan;
  private List<Subject> left = List.of();

  public CompareScreen(ScreenContext context, ReadingPlan plan) {
    super(context, "Compare: " + plan.title());
    this.plan = plan;
    model = new SetPictures(context.getJob(), plan);
    lay(view);
  }

  @Override
  public String aside() {
    List<SetPicture> pictures = model.list();
    long odd =
        pictures.isEmpty() ? 0 : picture(pictures).dots().stream().filter(dot -> dot.odd()).count();
    return odd == 0 ? "" : odd + " odd";
  }

  private SetPicture picture(List<SetPicture> pictures) {
    return pictures.get(at % pictures.size());
  }

  @Override
  protected void refresh() {
    List<SetPicture> pictures = model.list();
    left = new MeasureModel(context.getJob()).left(plan);
    view.getChildren()
        .setAll(
            pictures.isEmpty()
                ? Panes.column(context.scale(), touch().text("Nothing measured yet."))
                : drawn(pictures));
  }

  /** With what it says where that has room, else with a key that opens it. */
  private Region drawn(List<SetPicture> pictures) {
    SetPicture picture = picture(pictures);
    List<KeyRow.Act> acts = new ArrayList<>();
    if (pictures.size() > 1) {
      acts.add(act("Other bank", this::turn));
    }
    VBox whole = column(picture, acts);
    whole.getChildren().add(0, touch().small(picture.title()));
    whole.getChildren().add(2, touch().small(said(picture)));
    acts.add(0, act("What it says", () -> read(picture)));
    VBox brief = column(picture, acts);
    return new Either(room -> whole.minHeight(room.width()) <= room.height() ? whole : brief)
        .needing(brief);
  }

  private VBox column(SetPicture picture, List<KeyRow.Act> acts) {
    VBox column = Panes.column(context.scale(), new SetPlot(touch(), picture));
    if (!acts.isEmpty()) {
      column.getChildren().add(KeyRow.of(context, 1, acts));
    }
    return column;
  }

  private void read(SetPicture picture) {
    open(
        () ->
            new WordsScreen(
                context,
                title(),
                List.of(new WordsScreen.Paragraph(picture.title(), said(picture)))));
  }

  /** What the picture says, and what is not on it. */
  private String said(SetPicture picture) {
    return left.isEmpty()
        ? picture.sentence()
        : picture.sentence() + " " + notMeasured(context.state(), left);
  }

  /** {@code 1 not measured: cylinder 8.}; names that are too many are only counted. */
  static String notMeasured(EngineJob job, List<Subject> left) {
    String names =
        left.stream()
            .map(subject -> Words.small(Named.title(job, subject)))
            .collect(Collectors.joining(", "));
    return names.length() > MOST_NAMED
        ? left.size() + " more are not measured."
        : left.size() + " not measured: " + names + ".";
  }

  private void turn() {
    at++;
    context.navigator().changed();
  }
}
