package wherefrom.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;
import wherefrom.job.print.Stock;
import wherefrom.parts.PartKind;
import wherefrom.parts.Places;

/** The engine layouts and the label stocks that there are. */
final class LayoutCommands {
  private LayoutCommands() {}

  static List<Command> all() {
    return List.of(
        Command.of(
                "layouts",
                "Lists the engine layouts, or writes one to a file for editing.",
                Option.maybe("--folder", "JOBS", "lists the layouts kept in this jobs folder too"),
                Option.maybe(
                    "--out", "F.json", "where to write the layout with this NAME; - for output"),
                Outlet.REPLACE)
            .takes("[NAME]")
            .noting(
                "One line per layout: name, title, parts always tracked, parts with every"
                    + " kind on.")
            .does((call, answer) -> layouts(call, answer)),
        Command.of("stocks", "Lists the label stock that can be printed on.")
            .noting("One line per stock: name, title, labels on a page, dots per inch.")
            .does(
                (call, answer) -> {
                  call.services().printer().listStocks().stream()
                      .map(StockRow::of)
                      .forEach(answer::row);
                  return Status.RIGHT;
                }));
  }

  private record LayoutRow(String name, String title, int parts, int partsWithEveryKind)
      implements Row {
    static LayoutRow of(Layout layout) {
      int always = Places.of(layout, PartKind.alwaysOn()).size();
      int every = Places.of(layout, PartKind.all()).size();
      return new LayoutRow(layout.name(), layout.title(), always, every);
    }
  }

  private record Written(String name, String file) implements Row {
    @Override
    public String text() {
      return "Written: " + file + ". Give it a name of its own before you change it.";
    }
  }

  private record StockRow(String name, String title, int columns, int rows, int dpi)
      implements Row {
    static StockRow of(Stock stock) {
      return new StockRow(stock.name(), stock.title(), stock.columns(), stock.rows(), stock.dpi());
    }

    @Override
    public String text() {
      return Answer.cells(name, title, columns * rows, dpi);
    }
  }

  private static Status layouts(Call call, Answer answer) throws BadInput, IOException {
    List<Layout> layouts = new ArrayList<>(ReadyLayouts.all());
    if (call.find("--folder").isPresent()) {
      layouts.addAll(call.services().shelves().apply(call.path("--folder")).listLayouts());
    }
    if (call.operands().isEmpty()) {
      layouts.stream().map(LayoutRow::of).forEach(answer::row);
      return Status.RIGHT;
    }
    Layout layout = find(layouts, call.operands().get(0), call);
    Optional<Outlet> outlet = Outlet.find(call, "--out", answer);
    if (outlet.isEmpty()) {
      answer.row(LayoutRow.of(layout));
      return Status.RIGHT;
    }
    call.services().layouts().write(layout, outlet.get().out());
    return answer.only(new Written(layout.name(), outlet.get().name()));
  }

  private static Layout find(List<Layout> layouts, String name, Call call) throws BadInput {
    return layouts.stream()
        .filter(layout -> layout.name().equals(name))
        .findFirst()
        .orElseThrow(() -> call.wrong("There is no layout \"" + name + "\"."));
  }
}
