package wherefrom.ui.puttogether;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.job.puttogether.ToFit;
import wherefrom.text.Words;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.RailKey;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.StandardRail;
import wherefrom.ui.controls.Icon;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.engine.EngineBeside;
import wherefrom.ui.engine.EnginePages;

/** What is still missing, section by section, and parts that sit in each other's places. */
public final class MissingScreen extends Page {
  private final MissingModel model;
  private static final double ROWS_MM = 84;

  private final EnginePages pages;
  private final EngineView engine;
  private final Pager<Region> rows;
  private final Region view;

  public MissingScreen(ScreenContext context) {
    super(context, "To fit");
    model = new MissingModel(context.getJob());
    rows = Pager.list(context.touch(), row -> row);
    pages = new EnginePages(context, new ToFitIndex(context, model));
    engine = pages.view();
    view = new EngineBeside(context.scale(), engine, rows, ROWS_MM);
    lay(view);
  }

  @Override
  public String aside() {
    return model.open() + " to fit";
  }

  @Override
  public List<RailKey> rail(StandardRail standard) {
    List<RailKey> keys = new ArrayList<>();
    standard.back().ifPresent(keys::add);
    standard.bench().ifPresent(keys::add);
    keys.add(new RailKey(Icon.TURN, "Turn", engine::turnOver).saying("Turn over"));
    return keys;
  }

  @Override
  protected void refresh() {
    pages.show(engine);
    List<Region> lines = new ArrayList<>();
    if (!model.cycles().isEmpty()) {
      lines.add(
          ListRow.key(
              context.touch(),
              "In each other's places: " + model.wrong(),
              List.of(touch().brief("The way out, step by step", "")),
              () -> context.navigator().open(() -> new WayOutScreen(context))));
    }
    if (model.isFirstStartDue()) {
      lines.add(
          ListRow.key(
              context.touch(),
              "Before the first start",
              List.of("Everything is finished: cautions, open checks, what is done by hand"),
              () -> context.navigator().open(() -> new FirstStartScreen(context))));
    }
    int held = new ToFit(context.getJob()).held().size();
    if (held > 0) {
      lines.add(
          ListRow.key(
              context.touch(),
              "Held: " + held,
              List.of("A scan now gives STOP: see why"),
              () -> context.navigator().open(() -> new HeldScreen(context))));
    }
    model.sections().forEach(line -> lines.add(section(line)));
    String beside = new BesideTogether(context).toFit();
    if (!beside.isEmpty()) {
      lines.add(
          ListRow.key(
              context.touch(),
              "Bags and big parts",
              List.of(beside),
              () -> context.navigator().show(ScreenId.BAGS)));
    }
    lines.add(
        ListRow.key(
            context.touch(),
            "Torque cards",
            List.of(model.torqueWords()),
            () -> context.navigator().show(ScreenId.TORQUE)));
    rows.refill(lines);
  }

  private Region section(MissingModel.SectionLine line) {
    return ListRow.key(
        context.touch(),
        Words.capital(line.section().words()),
        List.of(MissingModel.words(line)),
        () -> context.navigator().open(() -> new SectionScreen(context, line.section())));
  }
}
