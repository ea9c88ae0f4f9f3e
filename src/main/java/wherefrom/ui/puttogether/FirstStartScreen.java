package wherefrom.ui.puttogether;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.layout.Region;
import wherefrom.job.Caution;
import wherefrom.job.puttogether.FirstStart;
import wherefrom.job.puttogether.StartList;
import wherefrom.text.Words;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.app.WordsScreen;
import wherefrom.ui.changes.StandingScreen;
import wherefrom.ui.controls.TagKey;

/** Cautions of the first start, what the job shows as open, and the list that is ticked. */
public final class FirstStartScreen extends ListPage {
  /** So many points of one kind stand on the screen itself. */
  private static final int FEW = 3;

  private final StartList list;
  private final TagKey tag;
  private final KeyRow keys;

  public FirstStartScreen(ScreenContext context) {
    super(context, "Before the first start");
    list = new StartList(context.getJob());
    tag = tag(this::goOn);
    keys = KeyRow.of(context);
    layOut(new Foot(context, tag, keys));
  }

  @Override
  public String aside() {
    return list.countOpen() + " to tick";
  }

  @Override
  protected void refresh() {
    super.refresh();
    Optional<StartList.Line> next = next();
    tag.setWords(next.map(line -> "Next: " + Words.small(line.title())).orElse("Run-in"), "");
    List<KeyRow.Act> acts = new ArrayList<>();
    if (touch().isLarge() && next.isPresent()) {
      acts.add(act("How", this::showHow));
    }
    acts.add(
        act(
            touch().brief("Open checks", "Checks"),
            () -> open(() -> StandingScreen.openChecks(context))));
    if (next.isPresent()) {
      acts.add(act("Run-in", this::runIn));
    }
    keys.setActs(acts);
  }

  /** The first line that is still to be ticked. */
  private Optional<StartList.Line> next() {
    return list.lines().stream().filter(line -> !line.ticked()).findFirst();
  }

  private void goOn() {
    next().ifPresentOrElse(this::press, this::runIn);
  }

  private void runIn() {
    context.navigator().show(ScreenId.RUN_IN);
  }

  @Override
  protected List<Region> rows() {
    List<Region> rows = new ArrayList<>();
    for (Caution caution : Caution.atFirstStart()) {
      rows.add(told("Caution", caution.sentence(), caution.source()));
    }
    openByHeading().forEach((heading, points) -> rows.addAll(open(heading, points)));
    list.lines().forEach(line -> rows.add(line(line)));
    return rows;
  }

  private Map<String, List<FirstStart.Point>> openByHeading() {
    return new FirstStart(context.getJob())
        .points().stream()
            .filter(FirstStart.Point::open)
            .collect(
                Collectors.groupingBy(
                    FirstStart.Point::heading, LinkedHashMap::new, Collectors.toList()));
  }

  /** Many of one kind are one row that opens them, so that the list to tick is not behind them. */
  private List<Region> open(String heading, List<FirstStart.Point> points) {
    if (points.size() <= FEW) {
      return points.stream().map(one -> told(heading, one.words(), one.source())).toList();
    }
    List<WordsScreen.Paragraph> lines =
        points.stream()
            .map(one -> new WordsScreen.Paragraph(one.words(), from(one.source())))
            .toList();
    return List.of(
        key(
            heading,
            points.size() + " points: press to see them",
            () -> open(() -> new WordsScreen(context, heading, lines))));
  }

  private static String from(String source) {
    return source.isEmpty() ? "" : Words.source(source) + ".";
  }

  private Region told(String heading, String words, String source) {
    return told(heading, (words + " " + from(source)).strip());
  }

  /** How it is done is said on it; with large letters, behind a key below the list. */
  private Region line(StartList.Line line) {
    String toDo = touch().brief("To do. " + line.how(), "To do");
    String state = line.ticked() ? "Done. " + line.words() : toDo;
    return key(line.title(), state.strip(), () -> press(line));
  }

  private void showHow() {
    List<WordsScreen.Paragraph> lines =
        list.lines().stream()
            .filter(line -> !line.ticked() && !line.isRocker())
            .map(line -> new WordsScreen.Paragraph(line.title(), line.how()))
            .toList();
    open(() -> new WordsScreen(context, "To do", lines));
  }

  /** A rocker is ticked at once; a line that is done is open again. */
  private void press(StartList.Line line) {
    if (line.ticked() || line.isRocker()) {
      keep(line, "", !line.ticked());
    } else {
      String ask = line.title() + ": which, or what was seen";
      open(() -> new TextEntryScreen(context, ask, "", words -> keep(line, words, true)));
    }
  }

  private void keep(StartList.Line line, String words, boolean done) {
    context.attempt(() -> list.tick(line.key(), words, done));
    context.navigator().changed();
  }
}
