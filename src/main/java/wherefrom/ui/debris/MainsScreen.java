package wherefrom.ui.debris;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.rules.debris.MainsQuestion;
import wherefrom.rules.debris.Opening;
import wherefrom.text.Words;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;

/** Did it reach the mains? What asks it, what answers it, what is still to be looked at. */
public final class MainsScreen implements Screen {
  private final Desk desk;
  private final DebrisModel model;
  private final Pager<Region> rows;
  private final VBox view;

  public MainsScreen(Desk desk) {
    this.desk = desk;
    model = new DebrisModel(desk.getJob());
    rows = Pager.list(desk.touch(), row -> row);
    view =
        Panes.column(
            desk.scale(),
            rows,
            Tiles.row(
                desk.scale(),
                desk.touch()
                    .primary(
                        desk.touch().brief("First bearings inspected", "First"),
                        () -> NextScreen.ask(desk, Opening.FIRST_BEARINGS)),
                desk.touch()
                    .primary(
                        desk.touch().brief("All bearings inspected", "All"),
                        () -> NextScreen.ask(desk, Opening.ALL_BEARINGS))));
  }

  @Override
  public String title() {
    return "Did it reach the mains?";
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    MainsQuestion question = model.question();
    List<Region> lines = new ArrayList<>();
    lines.add(row(Words.capital(question.answer().words()), List.of()));
    each(lines, "Asked by", question.openedBy());
    each(lines, "Answered by", question.answeredBy());
    each(lines, "Still to look at", question.wanted());
    lines.add(
        row(
            "How to tell",
            List.of(
                "Wear shows on the lower main shells first. Take one cap off at a time, crank"
                    + " in place. Source: TM 5-3895-346-14.")));
    lines.add(
        row(
            "A clean filter does not answer it",
            List.of("Its bypass may have opened. Source: common practice, no source.")));
    rows.refill(lines);
  }

  /** All of one sort in one row: they are short. */
  private void each(List<Region> lines, String heading, List<String> what) {
    for (int at = 0; at < what.size(); at += 3) {
      lines.add(
          row(
              heading,
              what.subList(at, Math.min(what.size(), at + 3)).stream()
                  .map(Words::capital)
                  .toList()));
    }
  }

  @Override
  public void changed() {
    shown();
  }

  private Region row(String heading, List<String> words) {
    return ListRow.plain(desk.touch(), heading, words);
  }
}
