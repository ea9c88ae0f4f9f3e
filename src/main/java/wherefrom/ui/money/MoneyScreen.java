package wherefrom.ui.money;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.layout.Region;
import wherefrom.files.FileNames;
import wherefrom.files.Outgoing;
import wherefrom.files.TableFile;
import wherefrom.job.money.CostLine;
import wherefrom.job.money.MoneyCsv;
import wherefrom.quantity.HomeCountry;
import wherefrom.text.Words;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Either;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.files.FilesScreen;
import wherefrom.ui.files.Saving;

/** Money: where the budget stands, and the cost lines. */
public final class MoneyScreen extends Page {
  private final MoneyModel model;
  private final CostLineAsking asking;
  private final FitText total;
  private final Pager<Region> rows;
  private final Either below;
  private Optional<BudgetBar> bar = Optional.empty();

  public MoneyScreen(ScreenContext context) {
    super(context, "Money");
    model =
        new MoneyModel(
            context.getJob(), HomeCountry.of(Locale.getDefault(), context.state().units()));
    asking = new CostLineAsking(context, model);
    total = touch().heading("");
    rows = Pager.list(context.touch(), row -> row);
    below = new Either(room -> below(room.width(), room.height())).needing(rows);
    lay(Panes.column(context.scale(), total, below, foot()));
  }

  private Foot foot() {
    return new Foot(
        context,
        touch().tag("Note a cost", "", asking::ask),
        KeyRow.of(
            context,
            new KeyRow.Act("What if?", this::whatIf),
            new KeyRow.Act("Prices", this::prices),
            new KeyRow.Act("Budget", this::budget),
            new KeyRow.Act("Export table…", this::out),
            new KeyRow.Act("Import table…", this::in)));
  }

  @Override
  protected void refresh() {
    total.setWords(touch().brief(model.sentence(), model.brief()));
    total.setVisible(model.isBegun());
    total.setManaged(model.isBegun());
    bar =
        Optional.of(model.budget())
            .filter(budget -> budget.total().cents() > 0)
            .map(budget -> new BudgetBar(touch(), budget));
    rows.refill(lines());
    below.again();
  }

  /** The bar leaves where the list needs the room. */
  private Region below(double width, double height) {
    double left =
        height - bar.map(drawn -> drawn.minHeight(width) + context.scale().gap()).orElse(0.0);
    return bar.filter(drawn -> left >= rows.minHeight(width))
        .<Region>map(drawn -> Panes.column(context.scale(), drawn, rows))
        .orElse(rows);
  }

  /** What the bar is made of, and what reuse saves; large words have a row for each. */
  private List<Region> sums() {
    List<String> sums =
        new ArrayList<>(
            model.sums().stream()
                .map(sum -> sum.words() + " " + model.tender().figure(sum.money()))
                .toList());
    if (!model.avoided().isEmpty()) {
      sums.add(model.avoided());
    }
    if (touch().isLarge()) {
      return sums.stream()
          .<Region>map(sum -> ListRow.plain(touch(), Words.capital(sum), List.of()))
          .toList();
    }
    return sums.isEmpty()
        ? List.of()
        : List.of(ListRow.told(touch(), "The total", String.join(" · ", sums)));
  }

  /** What has no price yet leads to the prices. */
  private List<Region> unpriced() {
    int many = model.unpriced().size();
    return many == 0
        ? List.of()
        : List.of(
            ListRow.key(
                touch(),
                "Without a price: " + many,
                List.of(touch().brief(model.unpricedWords(), "")),
                this::prices));
  }

  private List<Region> lines() {
    List<Region> lines = new ArrayList<>();
    for (CostLine line : model.lines()) {
      String note = line.note().isEmpty() ? "" : ". " + Words.capital(line.note());
      String plan = line.plan() == 0 ? "" : ", for plan " + line.plan();
      lines.add(
          ListRow.key(
              context.touch(),
              Words.capital(line.what().words()) + ": " + model.text(line.amount()),
              List.of(Words.capital(line.state().words()) + plan + note),
              () -> asking.change(line)));
    }
    if (lines.isEmpty()) {
      lines.add(
          ListRow.told(
              context.touch(),
              "No cost is noted",
              "Type part prices. Note what is quoted and paid."));
    }
    lines.addAll(unpriced());
    lines.addAll(sums());
    return lines;
  }

  private void whatIf() {
    open(() -> new WhatIfScreen(context, model));
  }

  private void prices() {
    open(() -> new PricesScreen(context, model));
  }

  private void budget() {
    open(() -> new BudgetScreen(context, model));
  }

  private void out() {
    byte[] table = new MoneyCsv(context.getJob()).write().getBytes(StandardCharsets.UTF_8);
    new Saving<>(
            context,
            "Where to save the table",
            FileNames.of(context.state().name(), "money", ".csv"),
            out -> write(table, out),
            (file, written) -> context.say("The table is " + file + "."))
        .ask();
  }

  private static byte[] write(byte[] table, Outgoing out) throws IOException {
    out.write(stream -> stream.write(table));
    return table;
  }

  private void in() {
    open(() -> FilesScreen.file(context, "Which table?", List.of(".csv"), this::read));
  }

  private void read(Path file) {
    context.attempt(
        () -> {
          int before = model.lines().size();
          String text = TableFile.read(file);
          context.say(
              new MoneyCsv(context.getJob())
                  .read(text)
                  .orElseGet(() -> "Lines added: " + (model.lines().size() - before) + "."));
        });
    context.navigator().changed();
  }
}
