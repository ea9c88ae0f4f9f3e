package wherefrom.ui.app;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.job.Caution;
import wherefrom.text.Words;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;

/** The cautions of a step, each with its source. */
public final class CautionScreen extends Page {
  private static final String FIRST =
      "Service information for your exact engine outranks this tool. So does a"
          + " qualified machinist. Follow local rules.";

  private final Pager<Region> rows;

  public CautionScreen(ScreenContext context, List<Caution> cautions) {
    super(context, "Cautions");
    rows = Pager.list(context.touch(), row -> row);
    List<Region> lines = new ArrayList<>();
    cautions.forEach(
        caution ->
            lines.add(
                ListRow.plain(
                    context.touch(), caution.sentence(), List.of(Words.source(caution.source())))));
    lines.add(ListRow.plain(context.touch(), "Always", List.of(FIRST)));
    rows.setItems(lines);
    lay(rows);
  }
}
