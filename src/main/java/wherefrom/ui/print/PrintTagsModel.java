package wherefrom.ui.print;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wherefrom.job.OpenJob;
import wherefrom.job.print.Face;
import wherefrom.job.print.Nudge;
import wherefrom.job.print.PrintOrder;
import wherefrom.job.print.PrintOutcome;
import wherefrom.job.print.PrintSetup;
import wherefrom.job.print.SheetPrinter;
import wherefrom.job.print.Stock;
import wherefrom.job.print.StockChoice;
import wherefrom.job.print.TagChoice;
import wherefrom.job.print.TagPrinting;
import wherefrom.job.print.Unprintable;
import wherefrom.job.settings.Settings.UsedSheet;
import wherefrom.text.Words;

/** What is to be printed, on which stock, and where on the sheet. */
final class PrintTagsModel {
  private final OpenJob job;
  private final SheetPrinter printer;
  private final TagPrinting printing;
  private final List<Stock> stocks;
  private TagChoice choice;
  private Optional<Stock> stock;
  private int start = 1;
  private Nudge nudge = Nudge.NONE;
  private String trouble = "";
  private int page = 1;
  private final SheetMemory memory;
  private Optional<PrintOrder> saved = Optional.empty();
  private boolean printed;

  /**
   * @param choice what is to be printed at first
   * @param here where the person is: the paper that is usual there comes first
   * @param memory where it stands which sheet is used in part; that sheet is gone on with
   */
  PrintTagsModel(
      OpenJob job, SheetPrinter printer, TagChoice choice, Locale here, SheetMemory memory) {
    this.job = job;
    this.printer = printer;
    this.printing = new TagPrinting(job);
    this.choice = choice;
    this.memory = memory;
    this.stocks = UsualPaper.first(printer.listStocks(), here);
    this.stock = stocks.stream().findFirst();
    memory.used().ifPresent(this::goOnWith);
  }

  private void goOnWith(UsedSheet used) {
    if (printer.findStock(used.stock()) instanceof StockChoice.Chosen chosen) {
      stock = Optional.of(chosen.stock());
      start = memory.firstFree(chosen.stock());
    }
  }

  TagChoice choice() {
    return choice;
  }

  void choose(TagChoice chosen) {
    choice = chosen;
    fresh();
  }

  /** What was chosen, in words. */
  String choiceWords() {
    return ChoiceWords.of(job.state(), choice);
  }

  List<Stock> stocks() {
    return stocks;
  }

  Optional<Stock> stock() {
    return stock;
  }

  String stockWords() {
    return stock.map(Stock::title).orElse("no label stock");
  }

  /** The same without the labels' size where their number tells: {@code A4 sheet, 24 labels}. */
  String briefStock() {
    return stockWords().replaceFirst("(\\d (labels|tags)) .*", "$1");
  }

  /** Chooses a stock by its name or the path of the user's own file; says what is wrong with it. */
  void chooseStock(String nameOrFile) {
    StockChoice came = printer.findStock(nameOrFile);
    if (came instanceof StockChoice.Chosen chosen) {
      stock = Optional.of(chosen.stock());
      start = memory.firstFree(chosen.stock());
      trouble = "";
      fresh();
    } else {
      trouble = String.join(" ", ((StockChoice.Refused) came).sentences());
    }
  }

  int start() {
    return start;
  }

  /** The first label to use, from 1; beyond the sheet there is none. */
  void startAt(int label) {
    int most = stock.map(Stock::labelsPerPage).orElse(1);
    start = Math.max(1, Math.min(most, label));
    fresh();
  }

  /** Something else is to be printed: its first page is shown, and no file holds it. */
  private void fresh() {
    page = 1;
    saved = Optional.empty();
    printed = false;
  }

  /** Whether what is chosen is on paper: then something else is the thing to do. */
  boolean isDone() {
    return printed || labels() == 0;
  }

  /** What is to be printed after the parts' tags: the cards that putting together wants. */
  Optional<TagChoice> next() {
    boolean first =
        choice.match(
            this::isForAll,
            cards -> true,
            cards -> true,
            any -> false,
            any -> false,
            any -> false,
            any -> false);
    return printing.cardsLeft().stream()
        .filter(left -> first && isDone() && !left.equals(choice))
        .findFirst();
  }

  private boolean isForAll(TagChoice.OfParts parts) {
    return !(parts instanceof TagChoice.OnePart)
        && printing.faces(new TagChoice.NotYetPrinted()).isEmpty();
  }

  /** The page that is shown, from 1. */
  int page() {
    return page;
  }

  /** Shows the next page; after the last the first again. */
  void turn() {
    page = page >= pages() ? 1 : page + 1;
  }

  /** {@code 1 of 4}; empty where there is one page at most. */
  String pageWords() {
    return pages() > 1 ? page + " of " + pages() : "";
  }

  Nudge nudge() {
    return nudge;
  }

  /** Moves the print by steps of half a millimetre, as far as it goes. */
  void nudge(int right, int down) {
    nudge = new Nudge(clamp(nudge.right() + right), clamp(nudge.down() + down));
  }

  private static int clamp(int steps) {
    return Math.max(-Nudge.MOST, Math.min(Nudge.MOST, steps));
  }

  /** How many labels are to be printed. */
  int labels() {
    return printing.faces(choice).size();
  }

  /** How many pages that makes, the used part of the first one counted. */
  int pages() {
    int perPage = stock.map(Stock::labelsPerPage).orElse(1);
    int cells = labels() == 0 ? 0 : labels() + start - 1;
    return (cells + perPage - 1) / perPage;
  }

  /** {@code 74 labels on 4 pages}. */
  String count() {
    int labels = labels();
    int pages = pages();
    if (labels == 0) {
      return "Nothing to print: all of it is printed already.";
    }
    return words(labels, pages);
  }

  /** {@code 74 labels} or {@code 50 cards}. */
  String many() {
    return many(labels());
  }

  private String many(int labels) {
    return Words.count(labels, ChoiceWords.piece(choice));
  }

  private String words(int labels, int pages) {
    return many(labels) + " on " + Words.count(pages, "page") + ".";
  }

  /** What a file of an order is, for its name. */
  String fileKind(PrintOrder order) {
    return order.testPage() ? "test page" : ChoiceWords.fileKind(choice);
  }

  /** Which names will not print whole, else how far the sheet is used; empty where neither is. */
  String warning() {
    return order(false)
        .flatMap(order -> Unprintable.warning(printer, order))
        .orElse(start == 1 ? "" : "The sheet is used up to label " + (start - 1) + ".");
  }

  /** What is wrong; empty when nothing is. */
  String trouble() {
    return trouble;
  }

  private PrintSetup setup() {
    return PrintSetup.on(stock.orElseThrow().name()).startingAt(start).nudged(nudge);
  }

  /** What to print, or the test page; empty where there is no stock or nothing to print. */
  Optional<PrintOrder> order(boolean testPage) {
    if (stock.isEmpty()) {
      return Optional.empty();
    }
    if (testPage) {
      return Optional.of(PrintOrder.testPage(setup()));
    }
    List<Face> faces = printing.faces(choice);
    String title = job.state().name() + ": " + choiceWords();
    return faces.isEmpty() ? Optional.empty() : Optional.of(PrintOrder.of(title, faces, setup()));
  }

  /** What a file holds that was saved and that nobody has said to be on paper. */
  boolean isSaved() {
    return saved.isPresent();
  }

  /** Says what was saved. A file is not paper: nothing counts as printed. */
  String saved(PrintOrder order, PrintOutcome outcome) {
    if (!(outcome instanceof PrintOutcome.Printed done) || order.testPage()) {
      return printed(order, outcome);
    }
    saved = Optional.of(order);
    return "Saved, not printed yet: " + words(done.labels(), done.pages());
  }

  /** The labels of the saved file are on paper: they are printed. */
  String onPaper() {
    return elsewhere(saved.orElseThrow());
  }

  /** These labels are on paper, wherever they were printed: they are printed. */
  String elsewhere(PrintOrder order) {
    int cells = order.setup().start() - 1 + order.faces().size();
    int perPage = stock.map(Stock::labelsPerPage).orElse(1);
    return printed(
        order, new PrintOutcome.Printed(order.faces().size(), (cells + perPage - 1) / perPage));
  }

  /** Logs what was printed and says so. The next print begins after the last label used. */
  String printed(PrintOrder order, PrintOutcome outcome) {
    return outcome.match(
        done -> printed(order, done),
        cancelled -> "Not printed.",
        refused -> String.join(" ", refused.sentences()));
  }

  private String printed(PrintOrder order, PrintOutcome.Printed done) {
    if (order.testPage()) {
      return "The test page is ready. Hold it against a sheet of the stock.";
    }
    if (!printing.printed(choice, order.faces(), order.setup().stock())) {
      fresh();
      return "Another bench printed these numbers. Throw this sheet away; print again.";
    }
    int perPage = stock.map(Stock::labelsPerPage).orElse(1);
    start = (order.setup().start() - 1 + done.labels()) % perPage + 1;
    stock.ifPresent(of -> memory.goesOnAt(of, start));
    fresh();
    printed = true;
    String full = start == 1 && perPage > 1 ? " The last sheet is full." : "";
    return "Printed: " + words(done.labels(), done.pages()) + full;
  }
}
