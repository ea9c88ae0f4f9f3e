package wherefrom.ui.puttogether;

import java.util.List;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import wherefrom.engine.Section;
import wherefrom.job.FirstStart;
import wherefrom.job.Handling;
import wherefrom.parts.Place;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Reasons;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TouchKey;
import wherefrom.ui.takeapart.CautionScreen;

/** The open places of a section; it closes only when each is filled or excused. */
public final class SectionScreen implements Screen {
  private final Desk desk;
  private final Section section;
  private final MissingModel model;
  private final Pager<Place> places;
  private final TouchKey close;
  private final HBox view;

  public SectionScreen(Desk desk, Section section) {
    this.desk = desk;
    this.section = section;
    model = new MissingModel(desk.getJob());
    places = Pager.list(desk.touch(), this::row);
    close = desk.touch().primary("Close the section", this::close);
    view =
        Panes.row(
            desk.scale(),
            places,
            Panes.wide(
                Panes.column(
                    desk.scale(),
                    close,
                    desk.touch().primary("Cautions", this::cautions),
                    desk.touch()
                        .primary("Torque cards", () -> desk.navigator().show(ScreenId.TORQUE))),
                60,
                desk.scale()));
  }

  @Override
  public String title() {
    return section.words();
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    List<Place> open = model.open(section);
    places.refill(open);
    close.setWords(
        desk.state().closedSections().contains(section.key())
            ? "Closed"
            : open.isEmpty() ? "Close the section" : open.size() + " still missing");
  }

  @Override
  public void changed() {
    shown();
  }

  private Region row(Place place) {
    return ListRow.key(
        desk.touch(), place.words(), List.of(model.words(place)), () -> choose(place));
  }

  private void choose(Place place) {
    List<Choice<Runnable>> ways =
        List.of(
            new Choice<>(() -> part(place), "Show its part", ""),
            new Choice<>(() -> excuse(place), "Leave it empty", "with a reason"),
            new Choice<>(
                () -> replace(place), "A new part instead", "its tag is printed, marked NEW"));
    desk.navigator().open(() -> new ChoiceScreen<>(desk, place.words(), ways, Runnable::run));
  }

  private void part(Place place) {
    desk.state()
        .findOwner(place)
        .ifPresent(part -> desk.navigator().show(ScreenId.PART, part.item()));
  }

  private void excuse(Place place) {
    Reasons.ask(
        desk, "Why does it stay empty?", MissingModel.EXCUSES, words -> excuse(place, words));
  }

  private void excuse(Place place, String reason) {
    model.excuse(place, reason);
    told();
  }

  private void replace(Place place) {
    Reasons.ask(desk, "Why a new part?", Handling.REPLACE_REASONS, words -> replace(place, words));
  }

  private void replace(Place place, String reason) {
    model
        .replace(place, reason)
        .ifPresent(item -> desk.navigator().show(ScreenId.PRINT_TAGS, item));
    told();
  }

  private void close() {
    model.close(section);
    told();
    boolean closed = desk.state().closedSections().contains(section.key());
    if (closed && new FirstStart(desk.getJob()).isDue()) {
      desk.navigator().open(() -> new FirstStartScreen(desk));
    }
  }

  private void cautions() {
    desk.navigator().open(() -> new CautionScreen(desk, model.cautions(section)));
  }

  private void told() {
    if (!model.trouble().isEmpty()) {
      desk.say(model.trouble());
    }
    desk.navigator().changed();
  }
}
