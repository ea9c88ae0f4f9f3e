package wherefrom.ui.puttogether;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;

/**
 * What else can be done at a stop, of every kind: look where the right part lies, lay the part away
 * or take it to another place; and what the stop's help says. Back leads to the stop.
 */
public final class OtherWaysScreen extends Page {
  private static final String NOTHING = "nothing is fitted; the stop is over";

  private final PutTogetherModel model;

  OtherWaysScreen(
      ScreenContext context, PutTogetherModel model, Runnable putAway, Runnable otherPlace) {
    super(context, "Other ways out");
    this.model = model;
    Pager<Region> rows = Pager.list(context.touch(), row -> row);
    List<Region> lines = new ArrayList<>();
    if (model.stopped().part().isPresent()) {
      lines.add(row("Put the part away", brief(NOTHING, "the stop is over"), putAway));
      model
          .stopped()
          .ownPlace()
          .ifPresent(
              own ->
                  lines.add(
                      row(
                          "Its own place: " + own.brief(),
                          brief("it is free; then scan that card", "scan that card"),
                          otherPlace)));
      lines.add(row("Another place for it", brief("the part stays in your hand", ""), otherPlace));
    } else {
      lines.add(row("Put it away", "this job has no such part", putAway));
    }
    lines.add(
        ListRow.key(
            context.touch(),
            "See the bench",
            List.of(brief("where the parts lie; then back to the stop", "")),
            () -> context.navigator().show(ScreenId.BENCH_MAP)));
    new TogetherHelp(model, context.scale())
        .help()
        .sentences()
        .forEach(sentence -> lines.add(ListRow.told(context.touch(), "", sentence)));
    rows.setItems(lines);
    lay(rows);
  }

  /** Large letters leave a row no second line for what its first one tells. */
  private String brief(String words, String few) {
    return context.touch().brief(words, few);
  }

  /** Leads back to the stop's screen first, which then shows what came of it. */
  private Region row(String words, String more, Runnable deed) {
    return ListRow.key(
        context.touch(),
        words,
        List.of(more),
        () -> {
          context.navigator().back();
          deed.run();
        });
  }

  @Override
  public String aside() {
    return model.stop().isPresent() ? "the stop stands" : "";
  }
}
