package wherefrom.ui.photos;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.image.Image;
import javafx.scene.layout.Region;
import wherefrom.files.Progress;
import wherefrom.inspection.Subject;
import wherefrom.job.OpenJob;
import wherefrom.job.photos.PhotoFolder;
import wherefrom.job.photos.Photograph;
import wherefrom.job.photos.Photographing;
import wherefrom.job.tags.CodeLookup;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.OnThisJob;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Images;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.PictureView;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.TwoHalves;
import wherefrom.ui.subject.Cell;
import wherefrom.ui.subject.GridScreen;
import wherefrom.ui.subject.Named;

/**
 * Photographs that show no tag, each with the question which part or place it is: a tag is scanned,
 * or it is chosen.
 */
public final class OfferScreen extends Page implements Scannable {
  private static final int LONGEST = 1200;
  private static final String QUESTION = "Which part or place is it?";

  private final OfferModel model;
  private final OpenJob job;
  private final Optional<Subject> likely;
  private final String again;
  private final PictureView picture;
  private Optional<Path> shown = Optional.empty();

  /** Asks about pictures that lie outside the job. */
  public static void ask(
      ScreenContext context, List<Path> files, Optional<Subject> likely, String again) {
    OfferModel model = new OfferModel(context.getJob(), files);
    context.navigator().open(() -> new OfferScreen(context, model, likely, again));
  }

  /**
   * @param model what was asked and answered so far; a screen that is made anew goes on with it
   * @param likely what they show most likely; it stands first
   * @param again how one comes back to those that are left, in a sentence
   */
  OfferScreen(ScreenContext context, OfferModel model, Optional<Subject> likely, String again) {
    super(context, QUESTION);
    this.job = model.job();
    this.model = model;
    this.likely = likely;
    this.again = again;
    picture = Panes.grow(new PictureView(touch().text("")));
    TagKey choose = tag(this::choose);
    choose.setWords(touch().brief("Choose what it shows", "Choose"), "or scan its tag");
    lay(touch().isLarge() ? beside(choose) : over(choose));
  }

  private Region over(TagKey choose) {
    KeyRow keys = KeyRow.of(context, act("Skip", this::skip), act("Later", this::later));
    return Panes.column(context.scale(), picture, new Foot(context, choose, keys));
  }

  /** Large letters below the picture would leave it no height. */
  private Region beside(TagKey choose) {
    Tiles keys =
        Tiles.row(
            context.scale(), touch().key("Skip", this::skip), touch().key("Later", this::later));
    return new TwoHalves(
        context.scale(), picture, Panes.column(context.scale(), choose, Panes.space(), keys));
  }

  @Override
  public String aside() {
    return model.number() + " of " + model.all();
  }

  @Override
  protected void refresh() {
    model.changed();
    Optional<Path> file = model.file();
    if (file.isEmpty()) {
      shown = file;
      picture.say("None is left to ask about.");
    }
    if (file.isPresent() && !file.equals(shown)) {
      shown = file;
      picture.say("The photograph is being opened.");
      context.background(() -> load(file.get()), image -> show(file.get(), image));
    }
  }

  private Image load(Path file) throws IOException {
    return Images.of(context.services().pictures().loadColour(file, LONGEST));
  }

  private void show(Path file, Image image) {
    if (shown.filter(file::equals).isPresent()) {
      picture.show(image);
    }
  }

  private void choose() {
    if (canAnswer()) {
      open(() -> new GridScreen(context, QUESTION, "", this::cells));
    }
  }

  /** One answer is for one photograph: says what is in the way of the next. */
  private boolean canAnswer() {
    if (context.job().filter(job::equals).isEmpty()) {
      context.say(FolderReading.PUT_AWAY);
      return false;
    }
    if (waits()) {
      return false;
    }
    if (model.file().isEmpty()) {
      context.say("None is left to ask about.");
    }
    return model.file().isPresent();
  }

  /** Whether the photograph before is still being kept; says so. */
  private boolean waits() {
    if (model.isKeeping()) {
      context.say("The photograph before is still being kept. Wait a moment.");
    }
    return model.isKeeping();
  }

  private List<Cell> cells() {
    List<Cell> cells = new ArrayList<>();
    likely.ifPresent(
        of -> cells.add(new Cell(Named.title(context.state(), of), "", () -> chosen(of))));
    cells.add(new Cell("The whole engine", "this one", () -> keep(Optional.empty(), 1)));
    int rest = model.rest().size();
    if (rest > 1) {
      cells.add(new Cell("The whole engine", "all " + rest, () -> keep(Optional.empty(), rest)));
    }
    cells.addAll(new SubjectChoice(context, this::chosen).cells());
    return cells;
  }

  private void chosen(Subject subject) {
    keep(Optional.of(subject), 1);
  }

  @Override
  public void scan(Scanned scanned) {
    if (!canAnswer()) {
      return;
    }
    CodeLookup found = scanned.getFound();
    if (found instanceof CodeLookup.ASpot spot) {
      at(spot);
    } else {
      PhotoFolder.subject(found)
          .ifPresentOrElse(
              this::chosen, () -> context.refuse(found, "Scan a part's tag or a place card."));
    }
  }

  /** A place card stands for all that is there. */
  private void at(CodeLookup.ASpot card) {
    List<Choice<Subject>> choices =
        model.at(card.spot()).stream()
            .map(one -> new Choice<>(one, Named.title(context.state(), one), ""))
            .toList();
    if (choices.isEmpty()) {
      context.refuse(card, "Nothing that is tracked is at " + card.spot().brief() + ".");
    } else {
      open(() -> new ChoiceScreen<>(context, QUESTION, choices, this::chosen));
    }
  }

  private void keep(Optional<Subject> subject, int count) {
    context.navigator().backTo(this);
    if (!canAnswer() || !context.attempt(() -> new Photographing(job).require(subject))) {
      return;
    }
    List<Path> files = List.copyOf(model.rest().subList(0, count));
    model.keeping(true);
    context.longWork(
        "Keeping the photographs",
        context.writings().of(() -> copied(files)),
        OnThisJob.take(context, names -> filed(subject, names), FolderReading.PUT_AWAY),
        () -> model.keeping(false));
  }

  private List<String> copied(List<Path> files) throws IOException {
    List<String> names = new ArrayList<>();
    for (Path file : files) {
      names.add(context.services().photos().add(job.folder(), file));
      Progress.step(names.size(), files.size());
    }
    return names;
  }

  private void filed(Optional<Subject> subject, List<String> names) {
    if (context.attempt(() -> model.file(subject, names))) {
      String what = names.size() == 1 ? "The photograph is" : names.size() + " photographs are";
      context.say(what + " kept with " + Photograph.words(job.state(), subject) + ".");
    }
    goOn();
  }

  private void skip() {
    if (canAnswer()) {
      model.skip();
      goOn();
    }
  }

  /** Whoever has gone on to another screen meanwhile stays there. */
  private void goOn() {
    if (model.file().isEmpty() && context.navigator().isUp(this)) {
      context.navigator().back();
    }
    context.navigator().changed();
  }

  /** What is being kept is not to be taken for the step that UNDO takes back. */
  @Override
  public void undo(ScreenContext over) {
    if (!waits()) {
      super.undo(over);
    }
  }

  private void later() {
    if (waits()) {
      return;
    }
    int rest = model.rest().size();
    context.navigator().back();
    if (rest > 0) {
      context.say(Words.count(rest, "photograph", "photographs") + " not filed yet. " + again);
    }
  }
}
