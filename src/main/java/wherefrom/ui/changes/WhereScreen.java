package wherefrom.ui.changes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.Node;
import wherefrom.engine.Bank;
import wherefrom.text.Words;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.engine.EnginePages;

/** Asks for a bank: a tap on any of its cylinders, or on its key. */
public final class WhereScreen extends Page implements Scannable {
  private final WhereIndex index;
  private final EnginePages pages;
  private final EngineView engine;

  WhereScreen(ScreenContext context, WhereIndex index) {
    super(context, index.title());
    this.index = index;
    pages = new EnginePages(context, index);
    engine = pages.view();
    List<Node> keys = new ArrayList<>();
    banks().forEach(bank -> keys.add(key(bank)));
    Tiles row = new Tiles(context.scale(), keys.size(), Scale.GAP_MM, keys);
    lay(Panes.column(context.scale(), engine, row));
  }

  /** The upper one on the drawing first. */
  private List<Bank> banks() {
    List<Bank> banks = new ArrayList<>(context.state().layout().banks());
    Collections.reverse(banks);
    return banks;
  }

  private Node key(Bank bank) {
    boolean one = context.state().layout().banks().size() == 1;
    String words = one ? "The whole row" : Words.capital(bank.name()) + ": " + cylinders(bank);
    return touch().key(words, () -> index.answer(bank.name()));
  }

  /** The picture shows no side: its numbers say which bank is meant. */
  private static String cylinders(Bank bank) {
    return bank.cylinders().stream()
        .sorted()
        .map(String::valueOf)
        .collect(Collectors.joining("\u00a0"));
  }

  @Override
  public String aside() {
    return index.aside(engine.side());
  }

  @Override
  protected void refresh() {
    pages.show(engine);
  }

  @Override
  public void scan(Scanned scanned) {
    index.scan(scanned);
  }
}
