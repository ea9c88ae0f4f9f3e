package wherefrom.cli;

import wherefrom.job.ports.Equipment;
import wherefrom.job.print.Stock;

/** Lists the ready label stocks. */
final class StocksCommand implements Command {
  private final Equipment equipment;

  StocksCommand(Equipment equipment) {
    this.equipment = equipment;
  }

  @Override
  public Usage usage() {
    return Usage.of("stocks", "", "Lists the label stock that can be printed on.")
        .noting("A line a stock: name, title, labels on a page, dots per inch.");
  }

  @Override
  public Status run(Call call, Answer answer) {
    for (Stock stock : equipment.printer().listStocks()) {
      answer.row(
          Fields.of("name", stock.name())
              .and("title", stock.title())
              .and("columns", stock.columns())
              .and("rows", stock.rows())
              .and("dpi", stock.dpi()),
          Answer.cells(
              stock.name(),
              stock.title(),
              String.valueOf(stock.labelsPerPage()),
              String.valueOf(stock.dpi())));
    }
    return Status.RIGHT;
  }
}
